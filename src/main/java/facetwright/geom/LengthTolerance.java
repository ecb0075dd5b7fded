package facetwright.geom;

import java.io.Serializable;

/**
 * How near two lengths or places must be to count as one.
 *
 * @param mm over 0, in millimetres
 */
public record LengthTolerance(double mm) implements Serializable {
  /** What arithmetic with lengths of a sheet leaves over, and no more: 1e-9 mm. */
  public static final LengthTolerance ROUNDING = new LengthTolerance(1e-9);

  /** Far below what a knife can follow, far above rounding: 1e-6 mm. */
  public static final LengthTolerance FINE = new LengthTolerance(1e-6);

  /** A micrometre: what no knife follows, no ruler shows and no eye sees. */
  public static final LengthTolerance UNSEEN = new LengthTolerance(1e-3);

  public LengthTolerance {
    if (!(mm > 0) || Double.isInfinite(mm)) {
      throw new IllegalArgumentException("a length tolerance must be over 0 mm, not " + mm);
    }
  }

  public boolean same(double a, double b) {
    return Math.abs(a - b) <= mm;
  }

  public boolean same(Vec2 a, Vec2 b) {
    // Most that are asked of are far apart, which is told without a root.
    return Math.abs(a.x() - b.x()) <= 2 * mm && a.distance(b) <= mm;
  }

  public boolean same(Vec3 a, Vec3 b) {
    return a.distance(b) <= mm;
  }
}
