package facetwright.draw.picture;

import facetwright.draw.Viewpoint;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of a panel shows of a folded net, reckoned by some points of it: a point shows where
 * nothing lies between it and the viewer. What lies right on it hides nothing.
 */
final class Sight {
  /** About so many points of a panel are asked for. */
  private static final int POINTS = 40;

  /** What lies nearer to a point than this lies on it, in mm. */
  private static final double ON = 0.1;

  private final Net net;
  private final List<Motion3> poses;
  private final List<Motion3> back = new ArrayList<>();
  private final List<Box2> boxes = new ArrayList<>();
  private final Map<Integer, List<Vec2>> asked = new HashMap<>();
  private final Map<Look, Double> shares = new HashMap<>();

  private record Look(int panel, Viewpoint from) {}

  /**
   * @param poses for each panel, from its place in the net
   */
  Sight(Net net, List<Motion3> poses) {
    this.net = net;
    this.poses = List.copyOf(poses);
    poses.forEach(p -> back.add(p.inverse()));
    net.panels().forEach(p -> boxes.add(p.outline().box()));
  }

  /** What of a panel shows, as seen, as part of its true area: 0 to 1. */
  double share(int panel, Viewpoint from) {
    return shares.computeIfAbsent(new Look(panel, from), l -> reckoned(l.panel, l.from));
  }

  private double reckoned(int panel, Viewpoint from) {
    Vec3 toward = from.toward();
    List<Vec2> points = asked.computeIfAbsent(panel, p -> points(net.panels().get(p)));
    long shown =
        points.stream().filter(p -> isOpen(panel, poses.get(panel).apply(p), toward)).count();
    double facing = Math.abs(poses.get(panel).ez().dot(toward));
    return points.isEmpty() ? 0 : facing * shown / points.size();
  }

  private static List<Vec2> points(Panel panel) {
    Polygon2 outline = panel.outline();
    Box2 box = outline.box();
    double step = Math.sqrt(outline.area() / POINTS);
    List<Vec2> points = new ArrayList<>();
    for (double x = box.minX() + step / 2; x < box.maxX(); x += step) {
      for (double y = box.minY() + step / 2; y < box.maxY(); y += step) {
        Vec2 p = new Vec2(x, y);
        if (outline.contains(p) && isCard(panel, p)) {
          points.add(p);
        }
      }
    }
    return points;
  }

  /** Whether a place of a panel is none of its openings, or has something behind it. */
  private static boolean isCard(Panel panel, Vec2 p) {
    return panel.openings().stream()
        .filter(o -> o.behind().isEmpty())
        .map(Opening::outline)
        .noneMatch(o -> o.contains(p));
  }

  private boolean isOpen(int own, Vec3 place, Vec3 toward) {
    for (int p = 0; p < poses.size(); p++) {
      if (p == own) {
        continue;
      }
      Vec3 from = back.get(p).apply(place);
      Vec3 way = back.get(p).direction(toward);
      double far = -from.z() / way.z();
      if (!(far > ON) || Double.isInfinite(far)) {
        continue;
      }
      Vec2 hit = new Vec2(from.x() + far * way.x(), from.y() + far * way.y());
      Box2 box = boxes.get(p);
      if (hit.x() > box.minX()
          && hit.x() < box.maxX()
          && hit.y() > box.minY()
          && hit.y() < box.maxY()
          && net.panels().get(p).outline().contains(hit)
          && isCard(net.panels().get(p), hit)) {
        return false;
      }
    }
    return true;
  }
}
