package facetwright.fold.place;

import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a part goes into an opening of another, both as they stand by themselves.
 *
 * @param room how the one's outline lies in the other's
 * @param open the outline of the opening
 * @param full the outline of what goes in
 * @param inner the inner part looked at along the way it goes
 * @param outer the outer part looked at along the same way
 * @param mouth where it goes in
 * @param isTube whether the outer part is open at the other end, too
 */
record Nesting(
    Room room,
    Polygon2 open,
    Polygon2 full,
    Frame inner,
    Frame outer,
    Mouth mouth,
    boolean isTube) {
  /** Openings that face apart to within this are the ends of a tube. */
  private static final double FACING = 0.99;

  /**
   * Halvings by which a part too wide is taken as narrow as its opening, to see how deep it goes.
   */
  private static final int HALVINGS = 14;

  /** What is not half as wide as what is to go in does not go round it at all. */
  private static final double HALF = 0.5;

  /** Room that what goes in is taken to have at least, in mm, so that its walls don't touch. */
  private static final double CLEAR = 0.02;

  /**
   * The way in which it goes best: with as little room as may be, or where there is none, standing
   * over least. Empty where the outer part has no opening.
   *
   * @param isTopFirst whether it goes into an upright opening with its top, as a box into its lid
   * @param isOfSeveral whether it is of several parts side by side, of which no end goes in alone
   */
  static Optional<Nesting> of(Skin outer, Skin inner, boolean isTopFirst, boolean isOfSeveral) {
    Nesting best = null;
    double spare = 0;
    Optional<Polygon2> none = Optional.empty();
    boolean isTube = isTube(outer);
    for (Mouth mouth : isTube ? outer.mouths().subList(0, 1) : outer.mouths()) {
      Frame about = Frame.along(mouth.out().times(-1));
      Optional<Polygon2> open = new Skin(List.of(mouth.ring()), List.of()).outline(about);
      if (open.isEmpty()) {
        continue;
      }
      for (Vec3 way : ways(about, isTube, isTopFirst)) {
        Frame along = Frame.along(way);
        for (Polygon2 full :
            Stream.of(inner.outline(along), isOfSeveral ? none : inner.end(along))
                .flatMap(Optional::stream)
                .toList()) {
          Room room = Room.of(open.get(), full, isTube || about.isUpright());
          double left = open.get().area() - full.area();
          boolean isIn = room.mm() >= -Room.LEAST.mm();
          boolean wasIn = best != null && best.room.mm() >= -Room.LEAST.mm();
          boolean isBetter =
              best == null
                  || (isIn == wasIn
                      ? isIn ? left < spare - Room.LEAST.mm() : room.mm() > best.room.mm()
                      : isIn);
          if (isBetter) {
            best = new Nesting(room, open.get(), full, along, about, mouth, isTube);
            spare = left;
          }
          if (isIn) {
            break;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  static boolean isTube(Skin skin) {
    return skin.mouths().size() == 2
        && skin.mouths().get(0).out().dot(skin.mouths().get(1).out()) < -FACING;
  }

  /** The directions in which the inner part may go in. */
  private static List<Vec3> ways(Frame about, boolean isTube, boolean isTopFirst) {
    Vec3 z = isTopFirst ? Vec3.Z : Vec3.Z.times(-1);
    if (isTube) {
      return List.of(Vec3.X, Vec3.Y, z);
    }
    return about.isUpright()
        ? List.of(z)
        : List.of(Vec3.X, Vec3.Y, Vec3.X.times(-1), Vec3.Y.times(-1));
  }

  /** How much narrower the inner part has to be taken for its opening; empty where by half. */
  Optional<Double> narrowed() {
    if (room.mm() >= CLEAR) {
      return Optional.of(1.0);
    }
    double low = HALF;
    double high = 1;
    if (roomFor(low) < CLEAR) {
      return Optional.empty();
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (roomFor(middle) >= CLEAR) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(low);
  }

  private double roomFor(double times) {
    List<Vec2> laid =
        full.corners().stream()
            .map(c -> room.apply(room.from().plus(c.minus(room.from()).times(times))))
            .toList();
    return Room.least(open.corners(), laid);
  }

  /** Where the inner part goes, its foremost end in the plane of the mouth, and then so much in. */
  Motion3 motion(Skin innerSkin, double depth) {
    double foremost = innerSkin.reach(inner.axis());
    return inner.onto(
        outer,
        room.turn(),
        inner.place(room.from(), foremost),
        outer.place(room.to(), -mouth.at() + depth));
  }

  /** A face of the inner part as it lies in the outer's frame, drawn together about its middle. */
  List<Vec3> drawn(List<Vec3> face, Motion3 motion, double times) {
    List<Vec3> drawn = new ArrayList<>();
    for (Vec3 corner : face) {
      Vec3 at = outer.in(motion.apply(corner));
      Vec2 flat = room.to().plus(new Vec2(at.x(), at.y()).minus(room.to()).times(times));
      drawn.add(new Vec3(flat.x(), flat.y(), at.z()));
    }
    return drawn;
  }
}
