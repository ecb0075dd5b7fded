package facetwright.geom;

import java.util.Arrays;
import java.util.List;

/**
 * The polygon with given sides whose corners lie on one circle: how a wrap of unequal columns
 * stands open. Equal sides give the regular polygon, a rectangle's sides the rectangle.
 */
public final class CyclicPolygon {
  private static final int HALVINGS = 200;

  private CyclicPolygon() {}

  /**
   * The turn in degrees from each side to the next: half the sum of the two sides' angles at the
   * centre, each 2·asin(w/2R) (elementary), with R found by halving so that they sum to a full
   * turn. Where the centre lies beyond the longest side, that side's angle is the rest of the turn.
   *
   * @param sides the longest shorter than all others together
   */
  public static double[] turns(List<Double> sides) {
    double[] centre = centre(sides).angles();
    double[] turns = new double[centre.length];
    for (int i = 0; i < turns.length; i++) {
      turns[i] = Math.toDegrees((centre[i] + centre[(i + 1) % turns.length]) / 2);
    }
    return turns;
  }

  /**
   * How far each side lies from the centre, below 0 where the centre lies beyond it: R·cos of half
   * its angle there (elementary).
   *
   * @param sides the longest shorter than all others together
   */
  public static double[] reaches(List<Double> sides) {
    Centre centre = centre(sides);
    return Arrays.stream(centre.angles()).map(a -> centre.radius() * Math.cos(a / 2)).toArray();
  }

  /** The radius, and each side's angle at the centre in radians. */
  @SuppressWarnings("ArrayRecordComponent") // Read alone, and never compared.
  private record Centre(double radius, double[] angles) {}

  private static Centre centre(List<Double> sides) {
    double longest = sides.stream().mapToDouble(w -> w).max().orElseThrow();
    int longAt = sides.indexOf(longest);
    boolean inside = sum(sides, longest / 2, -1) >= 2 * Math.PI;
    double low = longest / 2;
    double high = sides.stream().mapToDouble(w -> w).sum() * 1e6;
    for (int i = 0; i < HALVINGS; i++) {
      double radius = (low + high) / 2;
      // Inside: the sum falls as the radius grows. Outside: the longest side's angle falls faster
      // than those of all others, until the others' exceed it.
      boolean tooSmall =
          inside
              ? sum(sides, radius, -1) > 2 * Math.PI
              : sum(sides, radius, longAt) < angle(longest, radius);
      low = tooSmall ? radius : low;
      high = tooSmall ? high : radius;
    }
    double[] centre = new double[sides.size()];
    for (int i = 0; i < centre.length; i++) {
      double angle = angle(sides.get(i), high);
      centre[i] = i == longAt && !inside ? 2 * Math.PI - angle : angle;
    }
    return new Centre(high, centre);
  }

  /** Whether there is one: no side as long as all others together. */
  public static boolean exists(List<Double> sides) {
    double all = sides.stream().mapToDouble(w -> w).sum();
    return sides.size() >= 3 && sides.stream().allMatch(w -> w > 0 && 2 * w < all);
  }

  private static double angle(double side, double radius) {
    return 2 * Math.asin(Math.min(1, side / 2 / radius));
  }

  private static double sum(List<Double> sides, double radius, int without) {
    double sum = 0;
    for (int i = 0; i < sides.size(); i++) {
      sum += i == without ? 0 : angle(sides.get(i), radius);
    }
    return sum;
  }
}
