package facetwright.form.unfold;

import facetwright.geom.AngleTolerance;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.List;

/** The room for a tab beside the ends of its side. */
final class FreeAngle {
  /** The part of a free angle that a tab may fill. */
  private static final double CLEAR = 0.95;

  /** Where two tabs would share a free angle narrower than twice this, the first takes it all. */
  private static final double SHARED = Math.toRadians(15);

  private FreeAngle() {}

  /** The angle free for a tab at one end of a side, between the side and the next panel there. */
  static double at(Layout layout, int edge, int carrier, boolean atFrom) {
    FlatForm flat = layout.flat();
    Segment2 side = layout.outline(carrier).side(flat.sideOf(edge, carrier));
    Vec2 end = atFrom ? side.from() : side.to();
    Vec2 along = atFrom ? side.direction() : side.direction().times(-1);
    double free = 2 * Math.PI;
    boolean mate = false;
    Box2 near = Box2.around(List.of(end)).grown(LengthTolerance.FINE.mm());
    for (int f : layout.order()) {
      if (layout.piece(f) != layout.piece(carrier) || !layout.box(f).meets(near)) {
        continue;
      }
      Polygon2 panel = layout.outline(f);
      for (int c = 0; c < panel.size(); c++) {
        if (!LengthTolerance.FINE.same(panel.corner(c), end)) {
          continue;
        }
        // At the start of a side the free angle lies clockwise from it, at its end the other way.
        int s = atFrom ? c - 1 : c;
        Vec2 ray = panel.corner(atFrom ? c - 1 : c + 1).minus(end).unit();
        double turn = Math.atan2(along.cross(ray), along.dot(ray));
        double angle = atFrom ? positive(-turn) : positive(turn);
        if (angle < free) {
          free = angle;
          mate =
              f == flat.across(edge, carrier)
                  && Math.floorMod(s, panel.size()) == flat.sideOf(edge, f);
        }
      }
    }
    double share = mate || free / 2 < SHARED ? free : free / 2;
    return CLEAR * share;
  }

  private static double positive(double angle) {
    return angle < AngleTolerance.FINE.radians() ? angle + 2 * Math.PI : angle;
  }
}
