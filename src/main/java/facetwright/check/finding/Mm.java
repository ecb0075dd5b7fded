package facetwright.check.finding;

import facetwright.fold.touch.Collision;

/** What counts as a miss. */
public final class Mm {
  /** What a steady hand holds when cutting and scoring, in mm. */
  public static final double HAIR = Collision.HELD;

  /** A thickness of card that no pressing makes up, in mm; common practice, no source. */
  public static final double MISFIT = 2;

  /** What reads as 0 with two decimals. */
  public static final double LEAST = 0.005;

  private Mm() {}
}
