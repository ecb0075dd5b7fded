package facetwright.geom;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Location;

/**
 * A closed outline in the plane, corners counter-clockwise. Corners may lie on a straight side (a
 * side may be divided). Whether the outline crosses itself is asked of {@link #isSimple()}; the
 * constructor checks what is cheap: at least three corners and a positive area.
 *
 * @param corners the corners, in mm
 * @param arcs the parts of circles that some of its sides stand for; often none. What is reckoned
 *     of the outline goes by its straight sides
 */
public record Polygon2(List<Vec2> corners, List<Arc> arcs) implements Serializable {

  /**
   * @throws IllegalArgumentException when there are fewer than three corners, or the area is not
   *     positive (clockwise corners)
   */
  public Polygon2 {
    corners = List.copyOf(corners);
    arcs = List.copyOf(arcs);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("an outline needs at least three corners");
    }
    if (!(signedArea(corners) > 0)) {
      throw new IllegalArgumentException("an outline needs counter-clockwise corners and an area");
    }
  }

  /** One of straight sides alone. */
  public Polygon2(List<Vec2> corners) {
    this(corners, List.of());
  }

  /** The outline through these corners, turned counter-clockwise where they run the other way. */
  public static Polygon2 ofEitherSense(List<Vec2> corners) {
    return new Polygon2(signedArea(corners) < 0 ? corners.reversed() : corners);
  }

  /**
   * The corners without such as lie on the one before, to 1e-6 mm: no side is left that has no
   * length. The first stays first. Fewer than three are no outline.
   */
  public static List<Vec2> distinct(List<Vec2> corners) {
    List<Vec2> kept = new ArrayList<>();
    for (Vec2 corner : corners) {
      if (kept.isEmpty() || !LengthTolerance.FINE.same(kept.getLast(), corner)) {
        kept.add(corner);
      }
    }
    while (kept.size() > 1 && LengthTolerance.FINE.same(kept.getLast(), kept.getFirst())) {
      kept.removeLast();
    }
    return kept;
  }

  /**
   * The outline through these corners as far as it is one: without sides of no length, and none
   * where it is a line in the mean, to 1e-6 mm, or runs clockwise.
   */
  public static Optional<Polygon2> wide(List<Vec2> corners) {
    List<Vec2> apart = distinct(corners);
    return apart.size() >= 3 && signedArea(apart) > 0
        ? Optional.of(new Polygon2(apart)).filter(p -> p.meanWidth() > LengthTolerance.FINE.mm())
        : Optional.empty();
  }

  public static Polygon2 rectangle(double x, double y, double width, double height) {
    return new Polygon2(
        List.of(
            new Vec2(x, y),
            new Vec2(x + width, y),
            new Vec2(x + width, y + height),
            new Vec2(x, y + height)));
  }

  /** Regular polygon about a centre; the first corner stands at the given angle in radians. */
  public static Polygon2 regular(Vec2 centre, int sides, double radius, double firstCorner) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      corners.add(centre.plus(Vec2.polar(radius, firstCorner + 2 * Math.PI * i / sides)));
    }
    return new Polygon2(corners);
  }

  /** Area in mm², below 0 where the corners run clockwise. */
  static double signedArea(List<Vec2> corners) {
    // Shoelace formula about the first corner, which keeps the digits of a small far-off outline.
    double twice = 0;
    Vec2 o = corners.getFirst();
    for (int i = 1; i + 1 < corners.size(); i++) {
      twice += corners.get(i).minus(o).cross(corners.get(i + 1).minus(o));
    }
    return twice / 2;
  }

  public int size() {
    return corners.size();
  }

  /**
   * Each place of it taken to another, arcs with it.
   *
   * @param similar keeps shape and sense, as a shift, a turn and a scale do
   */
  public Polygon2 taken(UnaryOperator<Vec2> similar) {
    return new Polygon2(
        corners.stream().map(similar).toList(),
        arcs.stream().map(a -> new Arc(a.first(), a.sides(), similar.apply(a.centre()))).toList());
  }

  /**
   * As seen in a mirror: left is right, about the line x = 0. Side 0 stays it, and what was corner
   * c is {@link #mirroredCorner}.
   */
  public Polygon2 mirrored() {
    int n = size();
    return new Polygon2(
        IntStream.range(0, n).mapToObj(c -> corner(1 - c).mirrored()).toList(),
        arcs.stream()
            .map(
                a ->
                    new Arc(
                        mirroredCorner(a.first() + a.sides(), n), a.sides(), a.centre().mirrored()))
            .toList());
  }

  /** Which corner of an outline's mirror image a corner is, of so many. */
  public static int mirroredCorner(int corner, int outOf) {
    return Math.floorMod(1 - corner, outOf);
  }

  /** Which side of an outline's mirror image a side is, of so many. */
  public static int mirroredSide(int side, int outOf) {
    return Math.floorMod(-side, outOf);
  }

  /** Whether a side stands for part of an arc. */
  public boolean isRound(int side) {
    return arcs.stream().anyMatch(a -> a.has(Math.floorMod(side, size()), size()));
  }

  /** The corner with this index, counted round and round. */
  public Vec2 corner(int index) {
    return corners.get(Math.floorMod(index, corners.size()));
  }

  /** Side {@code index} runs from corner {@code index} to the next. */
  public Segment2 side(int index) {
    return new Segment2(corner(index), corner(index + 1));
  }

  /** Area in mm², positive. */
  public double area() {
    return signedArea(corners);
  }

  /**
   * How wide it is in the mean, in mm, going by a strip of its area and length of outline: the
   * width of a sliver, to a part in its length; half that of a square.
   */
  public double meanWidth() {
    double outline = 0;
    for (int i = 0; i < size(); i++) {
      outline += corner(i).distance(corner(i + 1));
    }
    return 2 * area() / outline;
  }

  /** Centre of area. */
  public Vec2 centroid() {
    double cx = 0;
    double cy = 0;
    double twice = 0;
    Vec2 o = corners.getFirst();
    for (int i = 1; i + 1 < corners.size(); i++) {
      Vec2 a = corners.get(i).minus(o);
      Vec2 b = corners.get(i + 1).minus(o);
      double cross = a.cross(b);
      twice += cross;
      cx += cross * (a.x() + b.x()) / 3;
      cy += cross * (a.y() + b.y()) / 3;
    }
    return o.plus(new Vec2(cx / twice, cy / twice));
  }

  public Box2 box() {
    return Box2.around(corners);
  }

  /** Interior angle at a corner, in radians, between 0 and 2π. */
  public double angle(int index) {
    Vec2 in = corner(index).minus(corner(index - 1));
    Vec2 out = corner(index + 1).minus(corner(index));
    return Math.PI - Math.atan2(in.cross(out), in.dot(out));
  }

  /** Whether a place lies inside, or on the border; by JTS's ray crossing. */
  public boolean contains(Vec2 place) {
    return RayCrossingCounter.locatePointInRing(Planar.coordinate(place), Planar.closed(this))
        != Location.EXTERIOR;
  }

  /** Whether the outline neither crosses nor touches itself. */
  public boolean isSimple() {
    return runsOnceRoundConvex() || Planar.polygon(this).isValid();
  }

  /**
   * Whether it turns left at every corner and changes from going right to going left no more than
   * twice: once round, that is, and so without crossing itself.
   */
  private boolean runsOnceRoundConvex() {
    int changes = 0;
    for (int i = 0; i < size(); i++) {
      Vec2 before = corner(i - 1);
      Vec2 here = corner(i);
      Vec2 after = corner(i + 1);
      if (Planar.orientation(before, here, after) <= 0) {
        return false;
      }
      changes += here.x() > before.x() == after.x() > here.x() ? 0 : 1;
    }
    return changes <= 2;
  }

  /** Whether no interior angle is over a straight one, by the sure orientation test. */
  public boolean isConvex() {
    for (int i = 0; i < size(); i++) {
      if (Planar.orientation(corner(i - 1), corner(i), corner(i + 1)) < 0) {
        return false;
      }
    }
    return true;
  }
}
