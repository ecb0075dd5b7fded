package facetwright.geom;

import java.io.Serializable;

/**
 * A rigid motion in space: the images of the three axes and of the origin. It never mirrors.
 *
 * @param ex image of the x direction
 * @param ey image of the y direction
 * @param ez image of the z direction
 * @param origin image of the origin, in mm
 */
public record Motion3(Vec3 ex, Vec3 ey, Vec3 ez, Vec3 origin) implements Serializable {
  public static final Motion3 NONE = new Motion3(Vec3.X, Vec3.Y, Vec3.Z, Vec3.ZERO);

  /** The turn about the axis from one point to another, counter-clockwise seen against the axis. */
  public static Motion3 about(Vec3 from, Vec3 to, double radians) {
    Vec3 k = to.minus(from).unit();
    double c = Math.cos(radians);
    double s = Math.sin(radians);
    Motion3 turn =
        new Motion3(
            turned(Vec3.X, k, c, s), turned(Vec3.Y, k, c, s), turned(Vec3.Z, k, c, s), Vec3.ZERO);
    return new Motion3(turn.ex, turn.ey, turn.ez, from.minus(turn.direction(from)));
  }

  /**
   * The motion that carries a frame (point, direction along, normal) onto another. The normals must
   * stand square on their directions.
   */
  public static Motion3 carrying(
      Vec3 point, Vec3 along, Vec3 normal, Vec3 ontoPoint, Vec3 ontoAlong, Vec3 ontoNormal) {
    Vec3 a = along.unit();
    Vec3 n = normal.unit();
    Vec3 s = n.cross(a);
    Vec3 oa = ontoAlong.unit();
    Vec3 on = ontoNormal.unit();
    Vec3 os = on.cross(oa);
    Motion3 turn =
        new Motion3(
            mix(a.x(), oa, s.x(), os, n.x(), on),
            mix(a.y(), oa, s.y(), os, n.y(), on),
            mix(a.z(), oa, s.z(), os, n.z(), on),
            Vec3.ZERO);
    return new Motion3(turn.ex, turn.ey, turn.ez, ontoPoint.minus(turn.direction(point)));
  }

  private static Vec3 mix(double a, Vec3 p, double b, Vec3 q, double c, Vec3 r) {
    return p.times(a).plus(q.times(b)).plus(r.times(c));
  }

  /** Rodrigues' rotation formula. */
  private static Vec3 turned(Vec3 v, Vec3 k, double c, double s) {
    return v.times(c).plus(k.cross(v).times(s)).plus(k.times(k.dot(v) * (1 - c)));
  }

  public Vec3 apply(Vec3 p) {
    return direction(p).plus(origin);
  }

  /** The image of a point of the plane z = 0. */
  public Vec3 apply(Vec2 p) {
    return ex.times(p.x()).plus(ey.times(p.y())).plus(origin);
  }

  /** The image of a direction: turned, not shifted. */
  public Vec3 direction(Vec3 v) {
    return mix(v.x(), ex, v.y(), ey, v.z(), ez);
  }

  /** This motion first, then the other. */
  public Motion3 then(Motion3 next) {
    return new Motion3(
        next.direction(ex), next.direction(ey), next.direction(ez), next.apply(origin));
  }

  /** The motion back. */
  public Motion3 inverse() {
    Vec3 x = new Vec3(ex.x(), ey.x(), ez.x());
    Vec3 y = new Vec3(ex.y(), ey.y(), ez.y());
    Vec3 z = new Vec3(ex.z(), ey.z(), ez.z());
    Motion3 turn = new Motion3(x, y, z, Vec3.ZERO);
    return new Motion3(x, y, z, turn.direction(origin).times(-1));
  }
}
