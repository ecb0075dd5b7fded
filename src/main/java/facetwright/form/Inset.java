package facetwright.form;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** An outline drawn inward by an even border. */
final class Inset {
  private static final double MITRE_LIMIT = 10;

  private Inset() {}

  static Polygon2 of(Polygon2 outline, double border, String facet) {
    FormCheck.require(
        border > 0 && border <= 10_000,
        "a window's border is over 0 and up to 10 000 mm, not " + border);
    List<Polygon2> left = outline.isConvex() ? convex(outline, border) : hollow(outline, border);
    FormCheck.require(
        !left.isEmpty(),
        "a border of " + border + " mm leaves no window in facet \"" + facet + "\": take less");
    FormCheck.require(
        left.size() == 1,
        "a border of "
            + border
            + " mm parts the window in facet \""
            + facet
            + "\" in two: take less, or give the windows one by one");
    return left.getFirst();
  }

  /** Exact: the outline cut along each of its sides moved inward. */
  private static List<Polygon2> convex(Polygon2 outline, double border) {
    List<Vec2> rest = outline.corners();
    for (int i = 0; i < outline.size() && rest.size() >= 3; i++) {
      Segment2 side = outline.side(i);
      Vec2 inward = side.direction().left();
      rest = kept(rest, side.from().plus(inward.times(border)), inward);
    }
    if (rest.size() < 3) {
      return List.of();
    }
    try {
      return List.of(new Polygon2(rest));
    } catch (IllegalArgumentException noArea) {
      return List.of();
    }
  }

  private static List<Vec2> kept(List<Vec2> corners, Vec2 on, Vec2 inward) {
    List<Vec2> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vec2 a = corners.get(i);
      Vec2 b = corners.get((i + 1) % corners.size());
      double da = a.minus(on).dot(inward);
      double db = b.minus(on).dot(inward);
      if (da > 0) {
        kept.add(a);
      }
      if ((da > 0) != (db > 0)) {
        kept.add(a.toward(b, da / (da - db)));
      }
    }
    return kept;
  }

  private static List<Polygon2> hollow(Polygon2 outline, double border) {
    BufferParameters mitred =
        new BufferParameters(
            8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
    return Planar.outlines(
        BufferOp.bufferOp(Planar.polygon(outline), /* distance= */ -border, mitred));
  }
}
