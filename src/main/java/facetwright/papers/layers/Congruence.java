package facetwright.papers.layers;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Whether two shapes are one shape, lying elsewhere. Sides are compared by their lengths first,
 * then the one is laid on the other, side on side; corners and windows must then meet to within the
 * tolerance. A mirrored shape is not the same.
 *
 * @param tolerance how far corners may miss
 */
record Congruence(LengthTolerance tolerance) {
  /** Finer than a knife follows: 0.01 mm. */
  public static final Congruence USUAL = new Congruence(new LengthTolerance(0.01));

  /** Whether the one may be turned and shifted onto the other. */
  boolean turned(Inset a, Inset b) {
    if (!alike(a, b)) {
      return false;
    }
    Segment2 side = longest(a.outline());
    return IntStream.range(0, b.outline().size())
        .mapToObj(b.outline()::side)
        .filter(onto -> Math.abs(onto.length() - side.length()) <= 2 * tolerance.mm())
        .anyMatch(onto -> meet(a.moved(laid(side, onto)), b));
  }

  /** Whether the one may be shifted onto the other, without a turn. */
  boolean shifted(Inset a, Inset b) {
    Vec2 shift = b.outline().box().centre().minus(a.outline().box().centre());
    return alike(a, b) && meet(a.moved(Motion2.shift(shift)), b);
  }

  private boolean alike(Inset a, Inset b) {
    if (a.windows().size() != b.windows().size() || a.outline().size() != b.outline().size()) {
      return false;
    }
    List<Double> one = lengths(a.outline());
    List<Double> other = lengths(b.outline());
    return IntStream.range(0, one.size())
        .allMatch(i -> Math.abs(one.get(i) - other.get(i)) <= 2 * tolerance.mm());
  }

  private static List<Double> lengths(Polygon2 ring) {
    return IntStream.range(0, ring.size()).mapToObj(i -> ring.side(i).length()).sorted().toList();
  }

  private static Segment2 longest(Polygon2 ring) {
    Segment2 longest = ring.side(0);
    for (int i = 1; i < ring.size(); i++) {
      longest = ring.side(i).length() > longest.length() ? ring.side(i) : longest;
    }
    return longest;
  }

  /** Middle on middle: what one side is longer by is shared by both ends. */
  private static Motion2 laid(Segment2 side, Segment2 onto) {
    return Motion2.carrying(side.middle(), side.to(), onto.middle(), onto.to());
  }

  private boolean meet(Inset a, Inset b) {
    return meet(a.outline(), b.outline())
        && a.windows().stream().allMatch(w -> b.windows().stream().anyMatch(o -> meet(w, o)));
  }

  private boolean meet(Polygon2 a, Polygon2 b) {
    return a.size() == b.size() && IntStream.range(0, a.size()).anyMatch(from -> meet(a, b, from));
  }

  private boolean meet(Polygon2 a, Polygon2 b, int from) {
    return IntStream.range(0, a.size())
        .allMatch(i -> tolerance.same(a.corner(i), b.corner(i + from)));
  }
}
