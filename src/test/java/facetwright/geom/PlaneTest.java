package facetwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class PlaneTest {
  private static int exactSide(Vec2 a, Vec2 b, Vec2 c) {
    BigDecimal abx = new BigDecimal(b.x()).subtract(new BigDecimal(a.x()));
    BigDecimal aby = new BigDecimal(b.y()).subtract(new BigDecimal(a.y()));
    BigDecimal acx = new BigDecimal(c.x()).subtract(new BigDecimal(a.x()));
    BigDecimal acy = new BigDecimal(c.y()).subtract(new BigDecimal(a.y()));
    return abx.multiply(acy).subtract(aby.multiply(acx)).signum();
  }

  /** The grid of near-collinear points on which a plain determinant is known to fail. */
  @Property(seed = "20261125")
  void orientationIsSureNearALine(
      @ForAll @IntRange(min = 0, max = 255) int i, @ForAll @IntRange(min = 0, max = 255) int j) {
    double ulp = Math.ulp(0.5);
    Vec2 a = new Vec2(0.5 + i * ulp, 0.5 + j * ulp);
    Vec2 b = new Vec2(12, 12);
    Vec2 c = new Vec2(24, 24);
    assertThat(Planar.orientation(a, b, c)).isEqualTo(exactSide(a, b, c));
    assertThat(Planar.orientation(b, a, c)).isEqualTo(-exactSide(a, b, c));
  }

  /** Regular polygon: n·r²·sin(2π/n)/2, interior angle π − 2π/n (handbook). */
  @Property(seed = "20261125")
  void regularPolygons(
      @ForAll @IntRange(min = 3, max = 48) int n,
      @ForAll @DoubleRange(min = 1, max = 500) double r,
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double far) {
    Polygon2 p = Polygon2.regular(new Vec2(far, -far), n, r, 0.3);
    assertThat(p.area()).isCloseTo(n * r * r * Math.sin(2 * Math.PI / n) / 2, within(1e-7 * r * r));
    assertThat(p.angle(2)).isCloseTo(Math.PI - 2 * Math.PI / n, within(1e-6));
    assertThat(p.centroid().distance(new Vec2(far, -far))).isLessThan(1e-6);
    assertThat(p.isConvex()).isTrue();
    assertThat(p.isSimple()).isTrue();
  }

  @Test
  void outlinesAreCounterClockwise() {
    List<Vec2> clockwise = List.of(Vec2.ZERO, new Vec2(0, 5), new Vec2(5, 0));
    assertThatThrownBy(() -> new Polygon2(clockwise)).hasMessageContaining("counter-clockwise");
    assertThat(Polygon2.ofEitherSense(clockwise).area()).isEqualTo(12.5);
    assertThatThrownBy(() -> new Polygon2(clockwise.subList(0, 2))).hasMessageContaining("three");
  }

  @Test
  void dentsAndCrossingsAreSeen() {
    Polygon2 dent =
        new Polygon2(List.of(Vec2.ZERO, new Vec2(10, 0), new Vec2(5, 2), new Vec2(5, 9)));
    assertThat(dent.isConvex()).isFalse();
    assertThat(dent.angle(2)).isGreaterThan(Math.PI);
    Polygon2 crossed =
        new Polygon2(List.of(Vec2.ZERO, new Vec2(10, 0), new Vec2(2, 9), new Vec2(8, 10)));
    assertThat(crossed.isSimple()).isFalse();
  }

  /**
   * The quick signs agree with the plane-geometry library's own answers (JTS: OGC validity and the
   * DE-9IM relation "disjoint").
   */
  @Property(seed = "20261125")
  void quickSignsAgreeWithTheLibrary(
      @ForAll @IntRange(min = 3, max = 9) int n,
      @ForAll @IntRange(min = 1, max = 4) int stride,
      @ForAll @DoubleRange(min = 0, max = 6) double turned,
      @ForAll @DoubleRange(min = 0, max = 25) double away) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      corners.add(Vec2.polar(10, 2 * Math.PI * i * stride / n));
    }
    double area = 0;
    for (int i = 0; i < n; i++) {
      area += corners.get(i).cross(corners.get((i + 1) % n)) / 2;
    }
    if (area > 1) {
      // A star turns left everywhere and still crosses itself.
      Polygon2 star = new Polygon2(corners);
      assertThat(star.isSimple()).isEqualTo(Planar.polygon(star).isValid());
    }
    Polygon2 one = Polygon2.regular(Vec2.ZERO, n, 10, turned);
    Polygon2 other = Polygon2.regular(new Vec2(away, away / 3), 3 + stride, 4, -turned);
    boolean disjoint = Planar.polygon(one).disjoint(Planar.polygon(other));
    assertThat(PartingSides.meet(one, other)).isEqualTo(!disjoint);
    assertThat(PartingSides.isInConvex(other, one))
        .isEqualTo(Planar.polygon(one).covers(Planar.polygon(other)));
    Motion2 motion = Motion2.turn(turned).then(Motion2.shift(new Vec2(away, -away)));
    assertThat(motion.boxOf(other.corners())).isEqualTo(motion.apply(other).box());
  }

  /** The border of a convex outline, beside the plane-geometry library's (JTS buffer, mitred). */
  @Property(seed = "20261125")
  void convexInsetsAgreeWithTheLibrary(
      @ForAll @IntRange(min = 3, max = 12) int n,
      @ForAll @DoubleRange(min = 0, max = 6) double turned,
      @ForAll @DoubleRange(min = 0.2, max = 1) double flat,
      @ForAll @DoubleRange(min = 0, max = 12) double by) {
    Polygon2 outline =
        new Polygon2(
            Polygon2.regular(Vec2.ZERO, n, 10, turned).corners().stream()
                .map(c -> new Vec2(c.x() + 100, c.y() * flat))
                .toList());
    BufferParameters sharp = new BufferParameters();
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    sharp.setMitreLimit(100);
    Geometry expected = BufferOp.bufferOp(Planar.polygon(outline), -by, sharp);
    List<Polygon2> left = Planar.inset(outline, by);
    if (left.isEmpty()) {
      assertThat(expected.getArea()).isLessThan(1e-6);
      return;
    }
    assertThat(left).hasSize(1);
    assertThat(left.getFirst().area()).isCloseTo(expected.getArea(), within(1e-6));
    assertThat(Planar.polygon(left.getFirst()).buffer(1e-6).covers(expected)).isTrue();
  }

  /**
   * The place with the most room: beside the plane-geometry library's largest inscribed circle, and
   * in a triangle beside the incircle, whose radius is the area by half the way round (handbook;
   * from memory).
   */
  @Property(seed = "20261125")
  void theInmostPlaceHasTheMostRoom(
      @ForAll @IntRange(min = 3, max = 12) int n,
      @ForAll @DoubleRange(min = 0, max = 6) double turned,
      @ForAll @DoubleRange(min = 0.2, max = 1) double flat) {
    Polygon2 outline =
        new Polygon2(
            Polygon2.regular(Vec2.ZERO, n, 30, turned).corners().stream()
                .map(c -> new Vec2(c.x() - 50 - 0.4 * c.y(), c.y() * flat + 7))
                .toList());
    double room = room(outline, Planar.inmost(outline, List.of(), 0.01));
    double most =
        n == 3
            ? outline.area()
                / IntStream.range(0, n).mapToDouble(i -> outline.side(i).length() / 2).sum()
            : MaximumInscribedCircle.getRadiusLine(Planar.polygon(outline), 0.05).getLength();
    assertThat(room).isBetween(most - 0.011, most + 0.051);
  }

  @Test
  void theInmostPlaceBetweenParallelSidesIsInTheMiddle() {
    Vec2 found = Planar.inmost(Polygon2.rectangle(10, 20, 90, 6), List.of(), 0.01);
    assertThat(found.distance(new Vec2(55, 23))).isLessThan(1e-9);
  }

  private static double room(Polygon2 outline, Vec2 place) {
    return IntStream.range(0, outline.size())
        .mapToObj(outline::side)
        .mapToDouble(s -> place.minus(s.from()).dot(s.direction().left()))
        .min()
        .orElseThrow();
  }

  /** Corners and sides that touch are met; a bay is not, though no side parts it. */
  @Test
  void outlinesThatTouchMeet() {
    Polygon2 card = Polygon2.rectangle(0, 0, 40, 30);
    assertThat(PartingSides.meet(card, Polygon2.rectangle(40, 30, 5, 5))).isTrue();
    assertThat(PartingSides.meet(card, Polygon2.rectangle(10, 30, 5, 5))).isTrue();
    assertThat(PartingSides.meet(card, Polygon2.rectangle(10, 10, 5, 5))).isTrue();
    Polygon2 bay =
        new Polygon2(
            List.of(
                new Vec2(-10, -10),
                new Vec2(50, -10),
                new Vec2(50, 40),
                new Vec2(45, 40),
                new Vec2(45, -5),
                new Vec2(-10, -5)));
    assertThat(PartingSides.meet(card, bay)).isFalse();
    assertThat(PartingSides.meet(bay, card)).isFalse();
  }

  @Test
  void insetTakesABorder() {
    Polygon2 card = Polygon2.rectangle(0, 0, 40, 30);
    assertThat(Planar.inset(card, 5).getFirst().area()).isCloseTo(30 * 20, within(1e-9));
    assertThat(Planar.inset(card, 15)).isEmpty();
    assertThat(Planar.sharedArea(card, Polygon2.rectangle(30, 20, 40, 40)))
        .isCloseTo(100, within(1e-9));
    assertThat(Planar.sharedArea(card, Polygon2.rectangle(50, 0, 1, 1))).isZero();
  }

  @Property(seed = "20261125")
  void planeMotionsKeepDistances(
      @ForAll @DoubleRange(min = -7, max = 7) double turn,
      @ForAll @DoubleRange(min = -500, max = 500) double x,
      @ForAll @DoubleRange(min = -500, max = 500) double y) {
    Vec2 p = new Vec2(x, y);
    Vec2 q = new Vec2(y, -3 * x);
    Motion2 m = Motion2.turn(turn).then(Motion2.shift(new Vec2(y, x)));
    assertThat(m.apply(p).distance(m.apply(q))).isCloseTo(p.distance(q), within(1e-9));
    Motion2 back = Motion2.shift(new Vec2(-y, -x)).then(Motion2.turn(-turn));
    assertThat(m.then(back).apply(p).distance(p)).isLessThan(1e-9);
    Polygon2 box = Polygon2.rectangle(x, y, 3, 4);
    assertThat(m.apply(box).area()).isCloseTo(12, within(1e-7));
  }

  @Test
  void carryingLaysStartOnStart() {
    Motion2 m = Motion2.carrying(new Vec2(1, 1), new Vec2(2, 1), new Vec2(5, 5), new Vec2(5, 9));
    assertThat(m.apply(new Vec2(1, 1)).distance(new Vec2(5, 5))).isLessThan(1e-12);
    assertThat(m.apply(new Vec2(3, 1)).distance(new Vec2(5, 7))).isLessThan(1e-12);
    assertThat(Motion2.turn(Math.PI / 2).apply(new Vec2(1, 0))).isEqualTo(new Vec2(0, 1));
    assertThat(Motion2.turn(Math.PI).cos()).isEqualTo(-1);
    assertThat(Motion2.turn(-Math.PI / 2).sin()).isEqualTo(-1);
    assertThatThrownBy(() -> new Motion2(1, 1, Vec2.ZERO)).hasMessageContaining("one angle");
    assertThatThrownBy(() -> Motion2.carrying(Vec2.ZERO, Vec2.ZERO, Vec2.ZERO, new Vec2(1, 0)))
        .isInstanceOf(ArithmeticException.class);
  }

  @Test
  void segmentsAndBoxes() {
    Segment2 s = new Segment2(Vec2.ZERO, new Vec2(10, 0));
    assertThat(s.distance(new Vec2(5, 3))).isEqualTo(3);
    assertThat(s.distance(new Vec2(13, 4))).isEqualTo(5);
    assertThat(s.reversed().direction()).isEqualTo(new Vec2(-1, 0));
    assertThat(s.middle()).isEqualTo(new Vec2(5, 0));
    assertThat(new Segment2(Vec2.ZERO, Vec2.ZERO).distance(new Vec2(3, 4))).isEqualTo(5);
    Box2 box = Box2.around(List.of(Vec2.ZERO, new Vec2(4, 2)));
    assertThat(box.centre()).isEqualTo(new Vec2(2, 1));
    assertThat(box.grown(1)).isEqualTo(new Box2(-1, -1, 5, 3));
    assertThat(box.grown(1).holds(box, LengthTolerance.FINE)).isTrue();
    assertThat(box.holds(box.grown(1), LengthTolerance.FINE)).isFalse();
    assertThat(box.meets(new Box2(4, 2, 5, 5))).isTrue();
    assertThat(box.union(new Box2(-1, 0, 0, 9))).isEqualTo(new Box2(-1, 0, 4, 9));
    assertThatThrownBy(() -> Box2.around(List.of())).hasMessageContaining("no points");
    assertThatThrownBy(() -> new Vec2(Double.NaN, 0)).hasMessageContaining("finite");
  }

  @Test
  void tolerancesAreHandedIn() {
    assertThat(LengthTolerance.FINE.same(1, 1 + 9e-7)).isTrue();
    assertThat(LengthTolerance.FINE.same(Vec2.ZERO, new Vec2(2e-6, 0))).isFalse();
    assertThat(LengthTolerance.FINE.same(Vec3.ZERO, new Vec3(0, 0, 5e-7))).isTrue();
    assertThat(AngleTolerance.FINE.same(0, 2 * Math.PI)).isTrue();
    assertThat(AngleTolerance.FINE.same(0, 1e-8)).isFalse();
    assertThatThrownBy(() -> new LengthTolerance(0)).hasMessageContaining("over 0");
    assertThatThrownBy(() -> new AngleTolerance(4)).hasMessageContaining("0 to π");
  }
}
