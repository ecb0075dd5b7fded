package facetwright.papers.handout;

import facetwright.papers.chart.StepWords;

/** What a picture shows; it is drawn from the net, its chart and the way it folds. */
public sealed interface Picture {
  /** What to do, in a sentence or more. */
  String words();

  /** What is to be seen, for who can't see it. */
  String alt();

  /**
   * One step of a score chart.
   *
   * @param piece index of the piece in the chart
   * @param step index of the step in the piece's chart
   * @param words what to do, beside a picture that bears every measure
   * @param full the same with every measure, for a picture that has no room for them
   */
  record Scored(int piece, int step, String words, StepWords full, String alt) implements Picture {}

  /** A piece, scored and cut, its scores by their sense. */
  record Senses(int piece, String words, String alt) implements Picture {}

  /** A sheet's part of the net, flat, with its decorative layers. */
  record Layered(int sheet, String words, String alt) implements Picture {}

  /** A sheet's part of the net, flat, its inside up, with what goes behind its windows. */
  record Backed(int sheet, String words, String alt) implements Picture {}

  /**
   * A piece as it lies before an action of making it up, what moves and where it goes marked.
   *
   * @param making index of the making
   * @param at index of its action; as many as there are when all is made
   */
  record Midway(int making, int at, String words, String alt) implements Picture {}

  /**
   * The net part of its way.
   *
   * @param t 0 flat to 1 made
   * @param part index of the part that is shown alone, or {@link #ALL}
   */
  record Folded(double t, int part, String words, String alt) implements Picture {
    public static final int ALL = -1;

    /** All that there is. */
    public Folded(double t, String words, String alt) {
      this(t, ALL, words, alt);
    }
  }
}
