package facetwright.papers.cutting;

/** From which edge of a part a cut is measured. */
public enum FromEdge {
  /** The blade runs up the part; the measure is the width cut off. */
  LEFT("from the left"),
  /** The blade runs across the part; the measure is the height cut off. */
  BOTTOM("from the bottom");

  private final String words;

  FromEdge(String words) {
    this.words = words;
  }

  /** Such as "from the left". */
  public String text() {
    return words;
  }
}
