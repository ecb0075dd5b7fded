package facetwright.net;

import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which single number of a call would have to be otherwise for all openings that the call makes to
 * leave enough card round them. A place is moved by the least that does; else the opening becomes
 * smaller, by half at the most. Not looked for: two numbers that must change together.
 *
 * <p>Of panels that are alike as their openings were measured only one is looked at.
 */
public final class OpeningMends {
  /** The farthest a place is moved, in mm: farther, it would be another design. */
  private static final double FARTHEST = 30;

  private static final double STEP = 0.5;

  /** How far past the least change the range goes, in mm: more than a sixteenth of an inch. */
  private static final double LEEWAY = 2;

  private static final double FINE_STEP = 0.1;
  private static final int HALVINGS = 14;

  private final List<OneOpening> members;

  private OpeningMends(List<OneOpening> members) {
    this.members = members;
  }

  /**
   * The mends, the best first; none where no single number is enough or the site is not known.
   *
   * @param fields every panel that may have an opening of this call
   * @param site of the call
   */
  public static List<Mend> of(List<Clearance> fields, Site site) {
    List<OneOpening> members = new ArrayList<>();
    for (Clearance field : fields) {
      for (int i = 0; i < field.openings().size(); i++) {
        if (site.isKnown() && field.openings().get(i).site().equals(site)) {
          members.add(new OneOpening(field, i));
        }
      }
    }
    OpeningMends mends = new OpeningMends(different(members));
    List<Mend> found = new ArrayList<>();
    Optional<Range> across = mends.range(OpeningNumber.AT_X);
    Optional<Range> up = mends.range(OpeningNumber.AT_Y);
    boolean upFirst = up.isPresent() && across.stream().noneMatch(a -> a.by() <= up.get().by());
    for (OpeningNumber place :
        upFirst
            ? List.of(OpeningNumber.AT_Y, OpeningNumber.AT_X)
            : List.of(OpeningNumber.AT_X, OpeningNumber.AT_Y)) {
      (place == OpeningNumber.AT_X ? across : up).ifPresent(r -> found.addAll(written(place, r)));
    }
    for (OpeningNumber size :
        List.of(
            OpeningNumber.ACROSS,
            OpeningNumber.WIDTH,
            OpeningNumber.HEIGHT,
            OpeningNumber.BORDER)) {
      mends.range(size).ifPresent(r -> found.addAll(written(size, r)));
    }
    return List.copyOf(found);
  }

  /** One of each that are alike. */
  private static List<OneOpening> different(List<OneOpening> members) {
    List<OneOpening> different = new ArrayList<>();
    for (OneOpening m : members) {
      if (different.stream().noneMatch(d -> d.isLike(m))) {
        different.add(m);
      }
    }
    return different;
  }

  /** The ways a call writes the number; only one of them stands in it. */
  private static List<Mend> written(OpeningNumber turn, Range r) {
    return switch (turn) {
      case AT_X, AT_Y -> {
        List<Integer> item = List.of(turn == OpeningNumber.AT_X ? 0 : 1);
        yield List.of(
            new Mend.Length("at", 0, item, r.from, r.near, r.far),
            new Mend.Length("", 0, item, r.from, r.near, r.far));
      }
      case ACROSS ->
          List.of(
              new Mend.Length("across", 0, List.of(), r.from, r.near, r.far),
              new Mend.Length("hole", 0, List.of(), r.from, r.near, r.far));
      default ->
          List.of(
              new Mend.Length(
                  turn.name().toLowerCase(Locale.ROOT), 0, List.of(), r.from, r.near, r.far));
    };
  }

  /**
   * @param from the number as it is, in mm
   * @param near the nearest to it that does
   * @param far how far past that one may go
   */
  private record Range(double from, double near, double far) {
    double by() {
      return Math.abs(near - from);
    }
  }

  private Optional<Range> range(OpeningNumber turn) {
    OptionalDouble asked = asked(turn);
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    double from = asked.getAsDouble();
    double most = turn.isPlace() || turn == OpeningNumber.BORDER ? FARTHEST : from / 2;
    List<Integer> ways =
        new ArrayList<>(
            switch (turn) {
              case AT_X, AT_Y -> List.of(1, -1);
              case BORDER -> List.of(1);
              default -> List.of(-1);
            });
    boolean alone = isAlone();
    double[] next = {0, 0};
    for (double by = STEP; by <= most; by += STEP) {
      for (int way : List.copyOf(ways)) {
        int at = way > 0 ? 1 : 0;
        if (by < next[at] - RoundOff.PART) {
          continue;
        }
        double to = from + way * by;
        if (isClear(turn, from, to)) {
          double near = nearest(turn, from, to - way * STEP, to);
          return Optional.of(new Range(from, near, farthest(turn, from, near, way)));
        }
        if (turn == OpeningNumber.BORDER && !isLarge(turn, from, to)) {
          // A wider border leaves still less.
          return Optional.empty();
        }
        if (turn.isPlace() && !alone && isInTheWay(turn, from, to)) {
          ways.remove(Integer.valueOf(way));
        }
        next[at] = by + (alone && turn != OpeningNumber.BORDER ? lack(turn, from, to) : 0);
      }
    }
    return Optional.empty();
  }

  /** Whether each is the only opening of its panel. */
  private boolean isAlone() {
    return members.stream().allMatch(m -> m.field().openings().size() == 1);
  }

  /** By how much more the number must change at least before all of them may be clear. */
  private double lack(OpeningNumber turn, double from, double to) {
    double lack = 0;
    for (OneOpening m : members) {
      Optional<Opening> there = turn.changed(m.opening(), m.field().outline(), from, to);
      if (there.isPresent()) {
        lack = Math.max(lack, m.field().lack(there.get()) / m.opening().datum().scale());
      }
    }
    return lack;
  }

  /** Whether a place moved so far would have gone through another opening. */
  private boolean isInTheWay(OpeningNumber turn, double from, double to) {
    for (OneOpening m : members) {
      Optional<Opening> moved = turn.changed(m.opening(), m.field().outline(), from, to);
      if (moved.isPresent() && m.field().isInTheWay(m.index(), moved.get())) {
        return true;
      }
    }
    return false;
  }

  /** The number all of them were asked for with. */
  private OptionalDouble asked(OpeningNumber turn) {
    OptionalDouble asked = OptionalDouble.empty();
    for (OneOpening m : members) {
      OptionalDouble its = turn.asked(m.opening(), m.field().outline());
      if (its.isEmpty()
          || (asked.isPresent()
              && Math.abs(its.getAsDouble() - asked.getAsDouble()) > RoundOff.SOLVED)) {
        return OptionalDouble.empty();
      }
      asked = its;
    }
    return asked;
  }

  private double nearest(OpeningNumber turn, double from, double no, double yes) {
    double low = no;
    double high = yes;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (isClear(turn, from, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private double farthest(OpeningNumber turn, double from, double near, int way) {
    double most = near;
    while (Math.abs(most - near) < LEEWAY) {
      most += way * FINE_STEP;
    }
    // Alone in a convex panel, what is clear at both ends is clear between.
    if (isAlone()
        && members.stream().allMatch(m -> m.field().outline().isConvex())
        && isClear(turn, from, most)) {
      return most;
    }
    double far = near;
    while (Math.abs(far - near) < LEEWAY && isClear(turn, from, far + way * FINE_STEP)) {
      far += way * FINE_STEP;
    }
    return far;
  }

  private boolean isClear(OpeningNumber turn, double from, double to) {
    if (!turn.isPlace() && to <= 0) {
      return false;
    }
    for (OneOpening m : members) {
      if (!isClear(m, turn, from, to)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isClear(OneOpening m, OpeningNumber turn, double from, double to) {
    Polygon2 panel = m.field().outline();
    return turn.changed(m.opening(), panel, from, to)
        .filter(o -> isLarge(m, o))
        .filter(o -> m.field().allows(m.index(), o))
        .isPresent();
  }

  /** Whether all of them stay large enough. */
  private boolean isLarge(OpeningNumber turn, double from, double to) {
    return members.stream()
        .allMatch(
            m ->
                turn.changed(m.opening(), m.field().outline(), from, to)
                    .filter(o -> isLarge(m, o))
                    .isPresent());
  }

  /** Whether a quarter of its area or more is left. */
  private static boolean isLarge(OneOpening m, Opening instead) {
    return instead.area() >= m.opening().area() / 4 - RoundOff.PART;
  }
}
