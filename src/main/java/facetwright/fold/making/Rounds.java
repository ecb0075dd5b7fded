package facetwright.fold.making;

import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Places of gluing by height, and those of one height in opposite pairs. */
final class Rounds {
  /** Heights that differ by less part of the whole count as one. */
  private static final double LEVEL = 0.08;

  /** How far from right opposite the other of a pair may lie, in radians; the nearest first. */
  private static final List<Double> OPPOSITE = List.of(Math.PI / 18, Math.PI / 3);

  private Rounds() {}

  /** Where something is glued in the made form. */
  record Located(Bond bond, Vec3 place, boolean upright) {}

  /** Joins by height from the table up, uprights apart from the others. */
  static List<List<Located>> levels(List<Located> joins) {
    double low = joins.stream().mapToDouble(j -> j.place.z()).min().orElse(0);
    double high = joins.stream().mapToDouble(j -> j.place.z()).max().orElse(0);
    double step = Math.max(LEVEL * (high - low), 0.5);
    List<Located> rising = new ArrayList<>(joins);
    rising.sort(Comparator.comparingDouble(j -> j.place.z()));
    List<List<Located>> levels = new ArrayList<>();
    for (boolean upright : new boolean[] {true, false}) {
      double last = Double.NEGATIVE_INFINITY;
      for (Located join : rising) {
        if (join.upright == upright) {
          if (join.place.z() > last + step) {
            levels.add(new ArrayList<>());
          }
          levels.getLast().add(join);
          last = join.place.z();
        }
      }
    }
    levels.sort(Comparator.comparingDouble(l -> l.getFirst().place.z()));
    return levels;
  }

  /** Opposite pairs, that with the join nearest to the seam last. */
  static List<Gluing.Stage> round(List<Located> level, Vec3 middle, double late) {
    record Two(List<Located> pair, double fromSeam) {}
    List<Located> left = new ArrayList<>(level);
    left.sort(
        Comparator.<Located>comparingDouble(j -> apart(azimuth(j.place, middle), late))
            .thenComparingInt(level::indexOf));
    List<Two> pairs = new ArrayList<>();
    // What lies right opposite is paired first, so that it is not taken by a neighbour's partner.
    for (double slack : OPPOSITE) {
      for (Located one : List.copyOf(left)) {
        double opposite = azimuth(one.place, middle) + Math.PI;
        left.stream()
            .filter(j -> left.contains(one) && apart(azimuth(j.place, middle), opposite) < slack)
            .min(Comparator.comparingDouble(j -> apart(azimuth(j.place, middle), opposite)))
            .ifPresent(
                other -> {
                  left.removeAll(List.of(one, other));
                  pairs.add(new Two(List.of(other, one), apart(azimuth(one.place, middle), late)));
                });
      }
    }
    for (Located one : left) {
      pairs.add(new Two(List.of(one), apart(azimuth(one.place, middle), late)));
    }
    pairs.sort(Comparator.comparingDouble(Two::fromSeam));
    return pairs.reversed().stream()
        .map(t -> new Gluing.Stage(t.pair.stream().map(Located::bond).toList()))
        .toList();
  }

  static double azimuth(Vec3 place, Vec3 middle) {
    return Math.atan2(place.y() - middle.y(), place.x() - middle.x());
  }

  private static double apart(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, 2 * Math.PI));
  }
}
