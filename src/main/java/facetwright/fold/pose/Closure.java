package facetwright.fold.pose;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.net.Net;

/** Whether a folded form closes. */
public enum Closure {
  /** Every join meets within the tolerance. */
  CLOSES,
  /** Every join meets, but panels have to bend a little. */
  CLOSES_WITH_STRAIN,
  /** Some joins miss, by no more than a steady hand does when cutting and scoring. */
  FORGIVEN,
  /** Every join meets, but panels are where others are, or lock where they fold flat. */
  IN_ITSELF,
  /** At least one join misses by more than that. */
  OPEN,
  /** Some fold angles are not known, so closing can't be told. */
  NOT_SOLVED;

  /** A join meets when it misses by no more than this part of the net's longer side. */
  public static final double CLOSE_ENOUGH = 1e-6;

  /** {@link #CLOSE_ENOUGH} for this net, in mm. */
  public static LengthTolerance within(Net net) {
    Box2 box = net.box();
    return new LengthTolerance(CLOSE_ENOUGH * Math.max(box.width(), box.height()));
  }
}
