package facetwright.script.api;

import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.net.Ask;
import java.util.List;

/** The kinds of value that say where: points and directions. */
public final class PointKinds {
  private PointKinds() {}

  /** The number of a corner. */
  public static Kind<Integer> cornerNumber() {
    return Kinds.count(1, 200);
  }

  /** The numbers of some corners. */
  public static Kind<List<Integer>> cornerNumbers() {
    return Kinds.list(cornerNumber(), 1, 200);
  }

  /** The corners of a shape, each a point in the plane. */
  public static Kind<List<Vec2>> corners() {
    return Kinds.list(point(), 3, 200);
  }

  /** A point in the plane: [x, y], each a length. */
  public static Kind<Vec2> point() {
    Kind<List<Double>> two = Kinds.list(Kinds.length(-Ask.LONGEST, Ask.LONGEST), 2, 2);
    return Kinds.of(
        two.counts(),
        Message.text("a point [x, y] of two lengths"),
        (value, session) -> {
          List<Double> xy = two.read(value, session);
          return new Vec2(xy.get(0), xy.get(1));
        });
  }

  /** A point in space: [x, y, z], each a length. */
  public static Kind<Vec3> point3() {
    Kind<List<Double>> three = Kinds.list(Kinds.length(-Ask.LONGEST, Ask.LONGEST), 3, 3);
    return Kinds.of(
        three.counts(),
        Message.text("a point [x, y, z] of three lengths"),
        (value, session) -> {
          List<Double> xyz = three.read(value, session);
          return new Vec3(xyz.get(0), xyz.get(1), xyz.get(2));
        });
  }

  /** A direction in space: [x, y, z], plain numbers, not all 0. */
  public static Kind<Vec3> direction() {
    Kind<List<Double>> three = Kinds.list(Kinds.number(-1e6, 1e6), 3, 3);
    return Kinds.of(
        "a direction [x, y, z] of three numbers, not all 0",
        (value, session) -> {
          List<Double> xyz = three.read(value, session);
          Vec3 v = new Vec3(xyz.get(0), xyz.get(1), xyz.get(2));
          if (v.length() < RoundOff.PART) {
            throw new Kind.Unfit("[0, 0, 0] points nowhere");
          }
          return v.unit();
        });
  }
}
