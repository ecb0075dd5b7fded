package facetwright.form.unfold;

/** How a form is laid flat. */
public enum UnfoldStyle {
  /** A belt round the waist as a strip; what lies above and below hangs on it by one edge each. */
  STRIP("a strip with caps"),
  /** Rings of facets spread outward from the base. */
  PETALS("petals round the base"),
  /** Columns from bottom to top that hang together at the waist. */
  GORES("gores"),
  /** The tree of scores is searched: without overlap, all tabs, packed small. */
  SEARCH("a searched tree");

  private final String words;

  UnfoldStyle(String words) {
    this.words = words;
  }

  /** What a maker calls it. */
  String text() {
    return words;
  }
}
