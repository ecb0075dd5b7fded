package facetwright.papers.cutting;

/**
 * How long to look for a better plan, in tries rather than in time, so that the same question
 * always has the same answer. A try is to cut one part at one place, or to put two built parts
 * together: about a billionth of a second.
 *
 * @param tries at most, over 0; a first plan is always made, with as little as it takes
 */
public record Effort(long tries) {
  /** For a maker who waits: a few seconds where nothing is proved before. */
  public static final Effort USUAL = new Effort(3_000_000_000L);

  /** For a first plan, which is often the best already. */
  static final Effort QUICK = new Effort(150_000_000L);

  /**
   * @throws IllegalArgumentException when it is not over 0
   */
  public Effort {
    if (tries < 1) {
      throw new IllegalArgumentException("a plan takes 1 try or more, not " + tries);
    }
  }

  Effort atMost(Effort other) {
    return tries <= other.tries ? this : other;
  }
}
