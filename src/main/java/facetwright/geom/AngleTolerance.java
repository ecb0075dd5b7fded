package facetwright.geom;

import java.io.Serializable;

/**
 * How near two angles must be to count as one.
 *
 * @param radians over 0
 */
public record AngleTolerance(double radians) implements Serializable {
  /** 1e-9 radians: 0.0000001 mm over a 100 mm panel. */
  public static final AngleTolerance FINE = new AngleTolerance(1e-9);

  /** 0.1 µm over a 100 mm panel: no fold shows it, and steps of a search leave no more over. */
  public static final AngleTolerance UNSEEN = new AngleTolerance(1e-6);

  public AngleTolerance {
    if (!(radians > 0) || !(radians < Math.PI)) {
      throw new IllegalArgumentException("an angle tolerance must lie in 0 to π, not " + radians);
    }
  }

  /** Whether two angles in radians differ by no more, whole turns aside. */
  public boolean same(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, 2 * Math.PI)) <= radians;
  }
}
