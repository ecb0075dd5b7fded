package facetwright.papers.chart;

/** How one coordinate of the blank is told. */
sealed interface Guide {
  /** In words, such as "line B" or "40 mm from the top edge". */
  String text();

  /** As short as it gets, such as "B" or "40 mm from top". */
  String label();

  /** An edge of the blank. */
  record Edge(Side side) implements Guide {
    @Override
    public String text() {
      return "the " + side.word() + " edge";
    }

    @Override
    public String label() {
      return side.word();
    }
  }

  /** A line scored before. */
  record Line(String label) implements Guide {
    @Override
    public String text() {
      return "line " + label;
    }
  }

  /** The middle between two neighbours, each an edge or a line scored before. */
  record Halfway(Guide one, Guide other) implements Guide {
    @Override
    public String text() {
      return "halfway between " + one.text() + " and " + other.text();
    }

    @Override
    public String label() {
      return "mid " + one.label() + "/" + other.label();
    }
  }

  /**
   * A measure from an edge or from a line scored before.
   *
   * @param from where the ruler's 0 lies
   * @param toward the edge toward which one measures
   */
  record Measured(Measure measure, Guide from, Side toward) implements Guide {
    @Override
    public String text() {
      return switch (from) {
        case Edge e -> measure.text() + " from " + e.text();
        case Guide g -> measure.text() + " " + beside() + " " + g.text();
      };
    }

    @Override
    public String label() {
      return switch (from) {
        case Edge(Side side) -> measure.text() + " from " + side.word();
        case Guide g -> measure.text() + " " + beside() + " " + g.label();
      };
    }

    private String beside() {
      return switch (toward) {
        case LEFT -> "left of";
        case RIGHT -> "right of";
        case TOP -> "above";
        case BOTTOM -> "below";
      };
    }
  }
}
