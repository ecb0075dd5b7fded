package facetwright.papers.chart;

import facetwright.language.Telling;

/** A short way of telling a place or a measure, as it was met, which has to be explained. */
public sealed interface Sign {
  /** What it means, in a sentence. */
  String meaning(Telling tell);

  /** In which order signs are explained. */
  int rank();

  /** A measure off the ruler's marks, told by the nearest. */
  record About() implements Sign {
    @Override
    public String meaning(Telling tell) {
      return tell.say("chart.sign-about");
    }

    @Override
    public int rank() {
      return 0;
    }
  }

  /** Where two lines cross: "B2". */
  record Crossing(String column, String row) implements Sign {
    @Override
    public String meaning(Telling tell) {
      return tell.say("chart.sign-crossing", "column", column, "row", row);
    }

    @Override
    public int rank() {
      return 1;
    }
  }

  /** Where a line meets an edge: "B top". */
  record AtEdge(String line, Side side) implements Sign {
    @Override
    public String meaning(Telling tell) {
      return tell.say(
          "chart.sign-edge",
          "place",
          tell.say("chart.spot-edge", "line", line, "side", side.word()),
          "line",
          line,
          "side",
          side.word());
    }

    @Override
    public int rank() {
      return 2;
    }
  }

  /** A place told twice, in brackets. */
  record InBrackets() implements Sign {
    @Override
    public String meaning(Telling tell) {
      return tell.say("chart.sign-brackets");
    }

    @Override
    public int rank() {
      return 3;
    }
  }

  /**
   * A measure from a line: "40 mm right of B".
   *
   * @param measure as the ruler reads it
   */
  record FromLine(String measure, Side toward, String line) implements Sign {
    @Override
    public String meaning(Telling tell) {
      return tell.say(
          "chart.sign-line",
          "place",
          tell.say("chart.label-line", "measure", measure, "toward", toward.word(), "line", line),
          "line",
          line);
    }

    @Override
    public int rank() {
      return 4;
    }
  }

  /** Halfway between two neighbours: "mid A/B". */
  record Midway() implements Sign {
    @Override
    public String meaning(Telling tell) {
      return tell.say("chart.sign-mid");
    }

    @Override
    public int rank() {
      return 5;
    }
  }
}
