package facetwright.check;

import facetwright.fold.Closure;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Tabs folded over an opening that stick out past its rim, as where they are deeper than the
 * opening is wide or where its corners are sharper than theirs.
 *
 * <p>What it does not detect: tabs that lie aslant to the opening, which pass through panels or
 * hang free; and tabs that are folded outward, as a brim is.
 */
final class TabSticksOutRule implements Rule {
  /** Of a tab that lies over an opening at least so much does, as part of its area. */
  private static final double OVER = 0.1;

  /** A tab's end is at least this part of its foot in what is proposed. */
  private static final double LEAST_END = 0.1;

  private static final int HALVINGS = 30;

  /**
   * A tab and the opening it lies over, in the tab's own plane, its foot from one end to the other.
   */
  private record Folded(int tab, Segment2 foot, Polygon2 outline, Polygon opening) {}

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    Map<EdgeRef, List<FreeSides.Side>> ringOf = new HashMap<>();
    boolean looked = false;
    for (Score score : subject.net().scores()) {
      boolean first = subject.panel(score.a().panel()).role() == PanelRole.TAB;
      EdgeRef foot = first ? score.a() : score.b();
      if (subject.panel(foot.panel()).role() != PanelRole.TAB) {
        continue;
      }
      if (!looked) {
        ringOf = rings(subject);
        looked = true;
      }
      List<FreeSides.Side> ring = ringOf.get(first ? score.b() : score.a());
      if (ring != null) {
        look(subject, foot, ring, found);
      }
    }
    return found;
  }

  private static Map<EdgeRef, List<FreeSides.Side>> rings(Subject subject) {
    Map<EdgeRef, List<FreeSides.Side>> ringOf = new HashMap<>();
    for (List<Integer> body : Bodies.of(subject.net())) {
      for (List<FreeSides.Side> ring : FreeSides.rings(FreeSides.of(subject, body))) {
        ring.forEach(side -> ringOf.put(side.ref(), ring));
      }
    }
    return ringOf;
  }

  private static void look(
      Subject subject, EdgeRef foot, List<FreeSides.Side> ring, List<Finding> found) {
    Motion3 back = subject.folded().poses().get(foot.panel()).inverse();
    List<Vec2> corners = new ArrayList<>();
    for (FreeSides.Side side : ring) {
      Vec3 at = back.apply(side.from());
      if (Math.abs(at.z()) > Mm.HAIR) {
        return;
      }
      corners.add(new Vec2(at.x(), at.y()));
    }
    if (corners.size() < 3) {
      return;
    }
    corners.add(corners.getFirst());
    Polygon opening =
        Planar.factory()
            .createPolygon(corners.stream().map(Planar::coordinate).toArray(Coordinate[]::new));
    Polygon2 outline = subject.panel(foot.panel()).outline();
    if (!opening.isValid()
        || Planar.sharedArea(Planar.polygon(outline), opening) < OVER * outline.area()) {
      return;
    }
    double past = past(outline, opening);
    if (past > Mm.HAIR) {
      Folded folded = new Folded(foot.panel(), subject.net().segment(foot), outline, opening);
      found.add(finding(subject, folded, past));
    }
  }

  /** How far a tab reaches past the opening, in mm. */
  private static double past(Polygon2 tab, Polygon opening) {
    Geometry past = OverlayNGRobust.overlay(Planar.polygon(tab), opening, OverlayNG.DIFFERENCE);
    double most = 0;
    for (Coordinate c : past.getCoordinates()) {
      most = Math.max(most, opening.distance(Planar.factory().createPoint(c)));
    }
    return most;
  }

  private static Finding finding(Subject subject, Folded folded, double past) {
    String tab = subject.name(folded.tab());
    return new Finding(
        "tab-sticks-out",
        Finding.Severity.WARNING,
        String.format(
            "%s, folded over the opening it stands at, sticks out %s past the rim.",
            tab, Mm.text(past)),
        mend(tab, folded),
        new Place.AtPanel(folded.tab()),
        subject.panel(folded.tab()).site());
  }

  private static String mend(String tab, Folded folded) {
    double depth = depth(folded);
    for (int bevel = bevel(folded); bevel < 90; bevel++) {
      double deep = deepest(folded, bevel, depth);
      if (deep > 0) {
        String shallower = deep < depth ? " and make it at most " + Mm.atMost(deep) + " deep" : "";
        return "Bevel the ends of " + tab + " by " + bevel + "°" + shallower + ".";
      }
    }
    return "Make " + tab + " shallower.";
  }

  private static double depth(Folded folded) {
    return folded.outline().corners().stream()
        .mapToDouble(c -> off(folded.foot(), c))
        .max()
        .orElse(0);
  }

  private static double off(Segment2 foot, Vec2 place) {
    return foot.direction().cross(place.minus(foot.from()));
  }

  /** The bevel the tab has now, at its less beveled end, in whole degrees. */
  private static int bevel(Folded folded) {
    Vec2 along = folded.foot().direction();
    double least = 90;
    int n = folded.outline().size();
    for (int i = 0; i < n; i++) {
      Segment2 side = folded.outline().side(i);
      if (side.from().distance(folded.foot().to()) < Mm.HAIR) {
        least = Math.min(least, lean(side.direction(), along.times(-1)));
      }
      if (side.to().distance(folded.foot().from()) < Mm.HAIR) {
        least = Math.min(least, lean(side.direction().times(-1), along));
      }
    }
    return (int) Math.max(0, Math.floor(least + 1e-6));
  }

  /** How far a tab's end leans from square toward its middle, in degrees. */
  private static double lean(Vec2 end, Vec2 inward) {
    return Math.toDegrees(Math.asin(Math.clamp(end.dot(inward), -1, 1)));
  }

  /** How deep a tab so beveled may be and stay within the opening; 0 where none does. */
  private static double deepest(Folded folded, int bevel, double depth) {
    double width = folded.foot().length();
    double slope = Math.tan(Math.toRadians(bevel));
    double most = slope == 0 ? depth : Math.min(depth, width * (1 - LEAST_END) / 2 / slope);
    if (!stays(folded, slope, Mm.HAIR)) {
      return 0;
    }
    if (stays(folded, slope, most)) {
      return most;
    }
    double in = Mm.HAIR;
    double out = most;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (in + out) / 2;
      if (stays(folded, slope, middle)) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  private static boolean stays(Folded folded, double slope, double depth) {
    Vec2 from = folded.foot().from();
    Vec2 to = folded.foot().to();
    Vec2 along = folded.foot().direction();
    Vec2 up = along.left().times(depth);
    Vec2 in = along.times(depth * slope);
    Polygon2 tab =
        Polygon2.ofEitherSense(List.of(from, to, to.plus(up).minus(in), from.plus(up).plus(in)));
    return past(tab, folded.opening()) <= 1e-3;
  }
}
