package facetwright.fold.touch;

import facetwright.geom.AngleTolerance;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * Whether two panels pass through each other: each is cut by two planes, the tolerance above and
 * below the other's, and what all four cuts have in common along the line of both planes is where
 * they do. Panels that are parallel, or slant so little that they part nowhere by more than the
 * tolerance, have no such cut.
 */
final class Passing {
  /** Planes that turn less than this from each other have no line in common to speak of. */
  private static final AngleTolerance PARALLEL = AngleTolerance.FINE;

  private Passing() {}

  static Optional<Collision> between(
      int a, PosedPanel one, int b, PosedPanel two, LengthTolerance slack) {
    double by = slack.mm();
    if (!one.straddles(two, by) || !two.straddles(one, by)) {
      return Optional.empty();
    }
    Vec3 cross = one.normal().cross(two.normal());
    if (cross.length() < PARALLEL.radians()) {
      return Optional.empty();
    }
    Vec3 along = cross.unit();
    Vec3 o = one.anchor();
    Spans common =
        one.section(two, by, o, along)
            .and(one.section(two, -by, o, along))
            .and(two.section(one, by, o, along))
            .and(two.section(one, -by, o, along));
    if (common.length() <= by) {
      return Optional.empty();
    }
    double depth = 0;
    for (int i = 0; i < common.size(); i++) {
      double start = common.start(i);
      double end = common.end(i);
      depth =
          Math.max(
              depth,
              Math.min(one.reach(two, start, end, o, along), two.reach(one, start, end, o, along)));
    }
    int longest = common.longest();
    double middle = (common.start(longest) + common.end(longest)) / 2;
    return Optional.of(
        new Collision(
            Collision.Kind.PASSING,
            a,
            b,
            depth,
            common.length(),
            place(one, two, cross, o, middle),
            List.of()));
  }

  /** The point of both planes that lies so far along their line, counted from {@code o}. */
  private static Vec3 place(PosedPanel one, PosedPanel two, Vec3 cross, Vec3 o, double middle) {
    // From o, in the plane of the one, square to the line, until the plane of the other is met.
    Vec3 aside = cross.unit().cross(one.normal());
    double off = -two.above(o) / aside.dot(two.normal());
    return o.plus(aside.times(off)).plus(cross.unit().times(middle));
  }
}
