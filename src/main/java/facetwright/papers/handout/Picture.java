package facetwright.papers.handout;

/** What a picture shows; it is drawn from the net and the way it folds. */
public sealed interface Picture {
  /** What to do, in a sentence. */
  String words();

  /** What is to be seen, for who can't see it. */
  String alt();

  /** The net on one of its sheets, flat. */
  record Flat(int sheet, String words, String alt) implements Picture {}

  /**
   * The net part of its way.
   *
   * @param t 0 flat to 1 made
   */
  record Folded(double t, String words, String alt) implements Picture {}
}
