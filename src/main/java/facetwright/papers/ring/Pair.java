package facetwright.papers.ring;

import facetwright.geom.Motion3;
import facetwright.geom.RingCount;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * Two seats of a piece and what a ring by them comes to. Seen along the ring axis, u points away
 * from the middle of the ring and v to the neighbour counter-clockwise.
 */
final class Pair {
  /** A wedge under this is none to speak of, in radians. */
  private static final double HAIR = Math.toRadians(0.05);

  /** A smaller part of an axis is rounding. */
  private static final double LEVEL = RoundOff.PART;

  private final List<Integer> body;
  private final List<Vec3> points;
  private final Seat one;
  private final Seat other;
  private final Vec3 axis;
  private final Vec3 u;
  private final Vec3 v;

  /** Half of what the piece takes of the circle, in radians. */
  private final double half;

  private final Geometry contact;

  private Pair(List<Integer> body, List<Vec3> points, Seat a, Seat b, Vec3 axis, Vec3 u) {
    this.body = body;
    this.points = points;
    this.axis = axis;
    this.u = u;
    this.v = axis.cross(u);
    boolean isBAhead = b.normal().dot(v) > 0;
    this.one = isBAhead ? a : b;
    this.other = isBAhead ? b : a;
    this.half = Math.asin(Math.clamp(-other.normal().dot(u), 0, 1));
    double[] near = one.run(along(-half));
    double[] far = other.run(along(half));
    this.contact =
        one.area(along(-half), (near[0] + near[1]) / 2, axis)
            .intersection(other.area(along(half), (far[0] + far[1]) / 2, axis));
  }

  static Pair of(List<Integer> body, List<Vec3> points, Seat a, Seat b) {
    Vec3 cross = a.normal().cross(b.normal());
    if (cross.length() < RoundOff.SOLVED) {
      // Back to back: any axis in their planes would do; the one nearest to upright is taken.
      Vec3 n = b.normal();
      Vec3 up = Math.abs(n.z()) < 1 - RoundOff.SOLVED ? Vec3.Z : Vec3.Y;
      Vec3 axis = up.minus(n.times(n.dot(up))).unit();
      return new Pair(body, points, a, b, axis, n.cross(axis));
    }
    Vec3 axis = upward(cross.unit());
    return new Pair(body, points, a, b, axis, a.normal().plus(b.normal()).times(-1).unit());
  }

  private static Vec3 upward(Vec3 axis) {
    double sign =
        Math.abs(axis.z()) > LEVEL ? axis.z() : Math.abs(axis.y()) > LEVEL ? axis.y() : axis.x();
    return sign < 0 ? axis.times(-1) : axis;
  }

  /** Whether the seats cover at least this part of the smaller of them when they meet. */
  boolean meets(double part) {
    double smaller =
        Math.min(
            one.area(along(-half), 0, axis).getArea(), other.area(along(half), 0, axis).getArea());
    return contact.getArea() >= part * smaller;
  }

  /** What the piece takes of the circle, in radians. */
  double takes() {
    return 2 * half;
  }

  /** Which sides meet, by the names of their panels: the same in designs that differ in size. */
  String name() {
    return one.name() + " | " + other.name();
  }

  /** Whether so many go round, be it that card gives a little. */
  boolean fits(int count) {
    return opening(count) >= -RingCount.FORGIVEN;
  }

  /** Whether so many go round with nothing between that card and glue don't make up. */
  boolean isFlush(int count) {
    return RingCount.isForgiven(opening(count));
  }

  /**
   * What a ring of so many asks of its maker, in radians: nothing where it is flush, else the angle
   * of the wedge that goes between and half of what the piece has to be tipped. A piece tipped far
   * is a poor ring, if its wedges are a little thinner (common practice, no source).
   */
  double burden(int count) {
    return isFlush(count) ? 0 : off(count);
  }

  /** How far it is from a flush ring of so many, in radians: the wedge, and half of the tip. */
  double off(int count) {
    return Math.abs(2 * (Math.PI / count - half)) + tipped() / 2;
  }

  boolean isUpright() {
    return Seating.isUpright(Math.toDegrees(tipped()));
  }

  /** How far two neighbours of so many stand open at the outer end, in mm; below 0 too thick. */
  double opening(int count) {
    double wedge = 2 * (Math.PI / count - half);
    return 2 * length() * Math.sin(wedge / 2);
  }

  /** How long the shorter of the seats is, from the middle of the ring outward, in mm. */
  private double length() {
    double[] a = one.run(along(-half));
    double[] b = other.run(along(half));
    return Math.min(a[1] - a[0], b[1] - b[0]);
  }

  double contact() {
    return contact.getArea();
  }

  double tipped() {
    return Math.acos(Math.clamp(Math.abs(axis.z()), 0, 1));
  }

  private Vec3 along(double angle) {
    return u.times(Math.cos(angle)).plus(v.times(Math.sin(angle)));
  }

  /** A line that holds the piece behind it: its direction from u and how far out it lies. */
  private record Stop(Vec3 along, Vec3 normal, double level) {}

  private Stop stop(double angle, double side) {
    Vec3 normal = along(angle + side * Math.PI / 2);
    double level =
        points.stream().mapToDouble(normal::dot).max().orElseThrow(IllegalStateException::new);
    return new Stop(along(angle), normal, level);
  }

  /**
   * The ring of so many by these seats.
   *
   * @throws IllegalArgumentException where the piece takes more of the circle than there is
   */
  RingPlan plan(int count) {
    double sector = Math.PI / count;
    double wedge = 2 * (sector - half);
    if (!fits(count)) {
      throw new IllegalArgumentException("the piece takes too much of the circle");
    }
    double opening = Math.abs(wedge) <= HAIR && isFlush(count) ? 0 : opening(count);
    Stop near = stop(-sector, -1);
    Stop far = stop(sector, 1);
    // Where the two stops meet: the middle of the ring, but for a shift that brings the middles of
    // unlike seats together.
    double sin = Math.sin(sector);
    double cos = Math.cos(sector);
    double apexU = -(near.level + far.level) / (2 * sin);
    double apexV = (far.level - near.level) / (2 * cos);
    Vec3 apex = u.times(apexU).plus(v.times(apexV));
    double shift = (middle(other, far, apex) - middle(one, near, apex)) / (2 * sin);
    Vec3 middle = apex.plus(v.times(shift));
    Motion3 into = Motion3.carrying(middle, u, axis, Vec3.ZERO, Vec3.X, Vec3.Z);
    double low = points.stream().mapToDouble(p -> into.apply(p).z()).min().orElse(0);
    double high = points.stream().mapToDouble(p -> into.apply(p).z()).max().orElse(0);
    Motion3 onTable = into.then(new Motion3(Vec3.X, Vec3.Y, Vec3.Z, new Vec3(0, 0, -low)));
    List<Motion3> copies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      copies.add(onTable.then(Motion3.about(Vec3.ZERO, Vec3.Z, 2 * Math.PI * i / count)));
    }
    double outer =
        points.stream()
            .map(onTable::apply)
            .mapToDouble(p -> Math.hypot(p.x(), p.y()))
            .max()
            .orElse(0);
    Seating seating =
        new Seating(
            one.panels(),
            other.panels(),
            180 - Math.toDegrees(2 * half),
            Math.toDegrees(tipped()),
            contact(),
            opening,
            isFlush(count) ? Optional.empty() : Optional.of(spacer(near, far, wedge)));
    return new RingPlan(
        seating,
        Math.toDegrees(burden(count)),
        copies,
        2 * Clearance.round(one.net(), one.form(), body, onTable),
        2 * outer,
        high - low);
  }

  /** How far from the apex the middle of a seat lies along its stop. */
  private static double middle(Seat seat, Stop stop, Vec3 apex) {
    double[] run = seat.run(stop.along);
    return (run[0] + run[1]) / 2 - stop.along.dot(apex);
  }

  private Spacer spacer(Stop near, Stop far, double wedge) {
    double length = length();
    double inner = room(one, near) + room(other, far);
    double height = contact.getEnvelopeInternal().getHeight();
    return new Spacer(
        Math.toDegrees(wedge), inner, inner + 2 * length * Math.sin(wedge / 2), length, height);
  }

  /** How far the nearest place of a seat stays behind its stop. */
  private static double room(Seat seat, Stop stop) {
    return Math.max(0, stop.level - seat.run(stop.normal)[1]);
  }
}
