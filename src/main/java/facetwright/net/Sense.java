package facetwright.net;

/** Which way a score's crest points, seen on the outside of the form. */
public enum Sense {
  /** The crest points at you: both panels fall away. */
  MOUNTAIN,
  /** The crest points away: both panels rise toward you. */
  VALLEY;

  public Sense other() {
    return this == MOUNTAIN ? VALLEY : MOUNTAIN;
  }
}
