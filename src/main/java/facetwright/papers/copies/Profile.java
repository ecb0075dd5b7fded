package facetwright.papers.copies;

import facetwright.geom.LengthTolerance;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * How far an outline goes to either side, along one way, at every place of the other way. Between
 * two neighbouring corners each side is straight; at a corner it may jump.
 */
final class Profile {
  /** Places that differ by no more are one. */
  private static final LengthTolerance SAME = LengthTolerance.ROUNDING;

  /** The places of corners, rising. */
  private final double[] at;

  /** At the start and the end of each span between two places, the least coordinate. */
  private final double[] leastFrom;

  private final double[] leastTo;

  /** The greatest; less than any number where nothing lies there. */
  private final double[] mostFrom;

  private final double[] mostTo;

  private Profile(double[] at) {
    this.at = at;
    this.leastFrom = new double[at.length - 1];
    this.leastTo = new double[at.length - 1];
    this.mostFrom = new double[at.length - 1];
    this.mostTo = new double[at.length - 1];
    Arrays.fill(mostFrom, Double.NEGATIVE_INFINITY);
  }

  /** How far it goes to the left and to the right at every height. */
  static Profile across(Geometry shape) {
    return of(shape, true);
  }

  /** How far it goes down and up at every x. */
  static Profile up(Geometry shape) {
    return of(shape, false);
  }

  private static Profile of(Geometry shape, boolean isAcross) {
    double[] places =
        Arrays.stream(shape.getCoordinates())
            .mapToDouble(c -> isAcross ? c.y : c.x)
            .sorted()
            .toArray();
    int count = 0;
    for (double place : places) {
      if (count == 0 || place - places[count - 1] > SAME.mm()) {
        places[count++] = place;
      }
    }
    double[] at = Arrays.copyOf(places, count);
    int spans = count - 1;
    Profile profile = new Profile(at);
    double[] least = new double[spans];
    double[] most = new double[spans];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    for (List<Coordinate> side : Sides.of(shape)) {
      profile.add(side.getFirst(), side.getLast(), isAcross, least, most);
    }
    return profile;
  }

  /** A side counts in each span that it crosses, where it lies farther out there than others. */
  private void add(Coordinate a, Coordinate b, boolean isAcross, double[] least, double[] most) {
    double a0 = isAcross ? a.y : a.x;
    double b0 = isAcross ? b.y : b.x;
    double a1 = isAcross ? a.x : a.y;
    double b1 = isAcross ? b.x : b.y;
    for (int i = 0; i < least.length; i++) {
      double middle = (at[i] + at[i + 1]) / 2;
      if (Math.min(a0, b0) < middle && Math.max(a0, b0) > middle) {
        double slope = (b1 - a1) / (b0 - a0);
        double here = a1 + (middle - a0) * slope;
        double from = a1 + (at[i] - a0) * slope;
        double to = a1 + (at[i + 1] - a0) * slope;
        if (here < least[i]) {
          least[i] = here;
          leastFrom[i] = from;
          leastTo[i] = to;
        }
        if (here > most[i]) {
          most[i] = here;
          mostFrom[i] = from;
          mostTo[i] = to;
        }
      }
    }
  }

  /**
   * How far the other one has to be shifted along this way so that all of it lies beyond this one,
   * place by place, when it is shifted by {@code aside} the other way.
   *
   * @return less than any number where they never lie side by side
   */
  double clear(Profile other, double aside) {
    double worst = Double.NEGATIVE_INFINITY;
    int i = 0;
    int j = 0;
    while (i < mostFrom.length && j < other.leastFrom.length) {
      double from = Math.max(at[i], other.at[j] + aside);
      double to = Math.min(at[i + 1], other.at[j + 1] + aside);
      if (to - from > SAME.mm() && isThere(i) && other.isThere(j)) {
        double start = most(i, from) - other.least(j, from - aside);
        double end = most(i, to) - other.least(j, to - aside);
        worst = Math.max(worst, Math.max(start, end));
      }
      if (at[i + 1] < other.at[j + 1] + aside) {
        i++;
      } else {
        j++;
      }
    }
    return worst;
  }

  private boolean isThere(int span) {
    return mostFrom[span] > Double.NEGATIVE_INFINITY;
  }

  private double most(int span, double place) {
    return along(at[span], at[span + 1], mostFrom[span], mostTo[span], place);
  }

  private double least(int span, double place) {
    return along(at[span], at[span + 1], leastFrom[span], leastTo[span], place);
  }

  private static double along(double from, double to, double start, double end, double place) {
    return start + (end - start) * (place - from) / (to - from);
  }
}
