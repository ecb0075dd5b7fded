package facetwright.papers.chart;

import java.util.List;

/** One thing to do, in plain data: with the steps before it, all a maker has to know. */
public sealed interface Step {

  /** A line at a measure from the left stop. */
  record Ruled(String label, Measure measure) {}

  /** From one spot straight to another. */
  record Path(Spot from, Spot to) {}

  /**
   * The sheet cut to the blank, before anything is scored.
   *
   * @param width from left to right as it lies first
   * @param height from top to bottom
   */
  record Trim(Measure width, Measure height) implements Step {}

  /**
   * Lines over the whole of the blank.
   *
   * @param isAgain whether the same measures were set before, all of them or these among them
   */
  record FullScores(Placing placing, List<Ruled> lines, boolean isPerforated, boolean isAgain)
      implements Step {
    public FullScores {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Lines that start and stop within the blank.
   *
   * @param from where each starts, told along it
   * @param to where each stops
   */
  record ShortScores(Placing placing, List<Ruled> lines, Guide from, Guide to, boolean isPerforated)
      implements Step {
    public ShortScores {
      lines = List.copyOf(lines);
    }
  }

  /** Scores in any direction, from spot to spot. */
  record SpotScores(List<Path> lines, boolean isPerforated) implements Step {
    public SpotScores {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Points marked lightly and numbered.
   *
   * @param first the number of the first of them
   */
  record Points(int first, List<Spot.At> at) implements Step {
    public Points {
      at = List.copyOf(at);
    }
  }

  /** Round holes of one diameter. */
  record Punch(Measure diameter, List<Spot> centres) implements Step {
    public Punch {
      centres = List.copyOf(centres);
    }
  }

  /** Openings within the card, each by its corners in order. */
  record Windows(List<List<Spot>> outlines) implements Step {
    public Windows {
      outlines = outlines.stream().map(List::copyOf).toList();
    }
  }

  /** Cuts that take nothing away; where they stop at a score, the score stays whole. */
  record Slits(List<Path> cuts) implements Step {
    public Slits {
      cuts = List.copyOf(cuts);
    }
  }

  /** Waste, each area by its corners in order; sides on the edge of the blank need no cut. */
  record CutAway(List<List<Spot>> areas) implements Step {
    public CutAway {
      areas = areas.stream().map(List::copyOf).toList();
    }
  }
}
