package facetwright.net.blank;

/** What a line of a blank is. */
public enum LineKind {
  SCORE,
  /** A score that is perforated rather than pressed. */
  PERFORATED,
  CUT
}
