package facetwright.papers.cutting;

/**
 * How long to look for a better plan, in steps rather than in time, so that the same question
 * always has the same answer.
 *
 * @param points places along a side where a cut may lie; above it only sums of a few different
 *     lengths are tried
 * @param nodes parts built up in the search for limited copies
 */
public record Effort(int points, int nodes) {
  /** For a maker who waits: well under a second a sheet. */
  public static final Effort USUAL = new Effort(320, 2500);

  /** For a plan worth waiting for. */
  public static final Effort THOROUGH = new Effort(4000, 60_000);
}
