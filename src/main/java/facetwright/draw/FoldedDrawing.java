package facetwright.draw;

import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * A picture of a folded net, part of the way or made: patches that hide each other in their order.
 * It serves the screen, pages and files alike. Light falls from the upper left; the inside of the
 * card is a little darker than its outside.
 */
public final class FoldedDrawing {
  private static final double ON_SIDE = 1e-4;
  private static final Ink OUTSIDE = new Ink(0xFCFAF5);
  private static final Ink INSIDE = new Ink(0xDDD3BE);
  private static final double AMBIENT = 0.74;
  private static final Vec3 LIGHT_SEEN = new Vec3(-0.45, 0.65, 0.61);
  private static final double TINT = 0.22;

  private final Net net;
  private final List<Motion3> poses;
  private final Hiding hiding;
  private final Map<Hiding.Shard, List<Polygon>> layers = new HashMap<>();
  private final Map<Hiding.Shard, List<Edge>> edges = new HashMap<>();
  private final Set<EdgeRef> scored = new HashSet<>();

  /** An edge of the card, in the plane of the net. */
  private record Edge(Vec2 from, Vec2 to, LineKind kind) {}

  /**
   * The panels where the poses put them.
   *
   * @param poses for each panel, from its place in the net
   * @param withLayers whether decorative layers show
   */
  public FoldedDrawing(Net net, List<Motion3> poses, boolean withLayers) {
    this.net = net;
    this.poses = List.copyOf(poses);
    this.hiding = Hiding.of(net, poses);
    net.scores()
        .forEach(
            s -> {
              scored.add(s.a());
              scored.add(s.b());
            });
    Map<Integer, Geometry> layered = new HashMap<>();
    for (Layer layer : withLayers ? net.layers() : List.<Layer>of()) {
      layered.put(layer.panel(), Areas.layer(net, layer));
    }
    Map<Integer, STRtree> borders = new HashMap<>();
    for (Hiding.Shard shard : hiding.seenFrom(Vec3.Z)) {
      edges.put(
          shard, edges(shard, borders.computeIfAbsent(shard.panel(), panel -> borders(panel))));
      if (layered.containsKey(shard.panel())) {
        layers.put(shard, parts(layered.get(shard.panel()).intersection(shard.region())));
      }
    }
  }

  /** The least box round all that is seen, in mm. */
  public Box2 bounds(Viewpoint from) {
    List<Vec2> seen = new ArrayList<>();
    for (int p = 0; p < poses.size(); p++) {
      for (Vec2 c : net.panels().get(p).outline().corners()) {
        seen.add(from.seen(poses.get(p).apply(c)));
      }
    }
    return Box2.around(seen);
  }

  public Net net() {
    return net;
  }

  /** The farthest that two corners are apart, in mm, but for a little. */
  public double reach() {
    Vec3 low = new Vec3(Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE);
    Vec3 high = low.times(-1);
    for (int p = 0; p < poses.size(); p++) {
      for (Vec2 corner : net.panels().get(p).outline().corners()) {
        Vec3 c = poses.get(p).apply(corner);
        low =
            new Vec3(Math.min(low.x(), c.x()), Math.min(low.y(), c.y()), Math.min(low.z(), c.z()));
        high =
            new Vec3(
                Math.max(high.x(), c.x()), Math.max(high.y(), c.y()), Math.max(high.z(), c.z()));
      }
    }
    return high.minus(low).length();
  }

  /** Whether the outside of a panel is turned to the viewer; it may still be hidden. */
  public boolean isOutsideSeen(int panel, Viewpoint from) {
    return poses.get(panel).ez().dot(from.toward()) > 0;
  }

  /** The outline of a panel as seen. */
  public List<Vec2> outline(int panel, Viewpoint from) {
    return net.panels().get(panel).outline().corners().stream()
        .map(c -> seen(panel, c, from))
        .toList();
  }

  /** The two ends of a side as seen. */
  public List<Vec2> side(EdgeRef side, Viewpoint from) {
    Segment2 line = net.segment(side);
    return List.of(seen(side.panel(), line.from(), from), seen(side.panel(), line.to(), from));
  }

  /** The patches as seen, in mm, from the farthest to the nearest. */
  public List<Mark.Patch> seen(Viewpoint from) {
    List<Mark.Patch> patches = new ArrayList<>();
    Vec3 toward = from.toward();
    for (Hiding.Shard shard : hiding.seenFrom(toward)) {
      Vec3 normal = poses.get(shard.panel()).ez();
      double facing = normal.dot(toward);
      if (Math.abs(facing) < 1e-6) {
        continue;
      }
      Ink ink = lit(facing > 0 ? OUTSIDE : INSIDE, facing > 0 ? normal : normal.times(-1), from);
      List<Mark.Stroke> lines = new ArrayList<>();
      for (Edge e : edges.get(shard)) {
        Vec2 p = seen(shard.panel(), e.from, from);
        Vec2 q = seen(shard.panel(), e.to, from);
        if (p.distance(q) > ON_SIDE) {
          lines.add(Mark.Stroke.line(p, q, e.kind));
        }
      }
      patches.add(patch(shard.panel(), shard.region(), ink, lines, from));
      if (facing > 0) {
        layers
            .getOrDefault(shard, List.of())
            .forEach(p -> patches.add(patch(shard.panel(), p, tinted(ink), List.of(), from)));
      }
    }
    return patches;
  }

  private Mark.Patch patch(
      int panel, Polygon region, Ink ink, List<Mark.Stroke> edges, Viewpoint from) {
    List<Polygon2> rings = new ArrayList<>();
    ring(panel, region.getExteriorRing(), from, rings);
    for (int h = 0; h < region.getNumInteriorRing(); h++) {
      ring(panel, region.getInteriorRingN(h), from, rings);
    }
    return new Mark.Patch(rings, ink, edges, panel);
  }

  private void ring(int panel, LineString line, Viewpoint from, List<Polygon2> rings) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i + 1 < line.getNumPoints(); i++) {
      points.add(seen(panel, place(line.getCoordinateN(i)), from));
    }
    if (points.size() >= 3) {
      rings.add(Polygon2.ofEitherSense(points));
    }
  }

  private Vec2 seen(int panel, Vec2 place, Viewpoint from) {
    return from.seen(poses.get(panel).apply(place));
  }

  private static Vec2 place(Coordinate c) {
    return new Vec2(c.x, c.y);
  }

  private static List<Polygon> parts(Geometry geometry) {
    List<Polygon> parts = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && p.getArea() > 0) {
        parts.add(p);
      }
    }
    return parts;
  }

  /** Those sides of a shard that are sides of its panel or of an opening. */
  private static List<Edge> edges(Hiding.Shard shard, STRtree borders) {
    List<Edge> found = new ArrayList<>();
    edges(shard.region().getExteriorRing(), borders, found);
    for (int h = 0; h < shard.region().getNumInteriorRing(); h++) {
      edges(shard.region().getInteriorRingN(h), borders, found);
    }
    return found;
  }

  private static void edges(LineString ring, STRtree borders, List<Edge> found) {
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      Vec2 a = place(ring.getCoordinateN(i));
      Vec2 b = place(ring.getCoordinateN(i + 1));
      Pace.step();
      List<?> near = borders.query(new Envelope(ring.getCoordinateN(i)));
      near.stream()
          .map(Border.class::cast)
          .filter(border -> border.holds(a, b))
          .min(Comparator.comparingInt(Border::number))
          .ifPresent(border -> found.add(new Edge(a, b, border.kind)));
    }
  }

  /** A side of a panel or of one of its openings; the one with the lower number goes first. */
  private record Border(int number, Segment2 side, LineKind kind) {
    boolean holds(Vec2 a, Vec2 b) {
      return side.distance(a) < ON_SIDE && side.distance(b) < ON_SIDE;
    }

    Envelope about() {
      Envelope about = new Envelope(Planar.coordinate(side.from()), Planar.coordinate(side.to()));
      about.expandBy(ON_SIDE);
      return about;
    }
  }

  /** The sides of a panel by where they lie: one with many holes has thousands. */
  private STRtree borders(int panel) {
    List<Border> all = new ArrayList<>();
    Polygon2 outline = net.panels().get(panel).outline();
    for (int i = 0; i < outline.size(); i++) {
      boolean folded = scored.contains(new EdgeRef(panel, i));
      all.add(new Border(all.size(), outline.side(i), folded ? LineKind.FOLDED : LineKind.CUT));
    }
    for (Opening opening : net.panels().get(panel).openings()) {
      Polygon2 cut = opening.outline();
      for (int i = 0; i < cut.size(); i++) {
        all.add(new Border(all.size(), cut.side(i), LineKind.CUT));
      }
    }
    STRtree byPlace = new STRtree();
    all.forEach(border -> byPlace.insert(border.about(), border));
    return byPlace;
  }

  private static Ink lit(Ink ink, Vec3 normal, Viewpoint from) {
    Vec3 light =
        from.right()
            .times(LIGHT_SEEN.x())
            .plus(from.up().times(LIGHT_SEEN.y()))
            .plus(from.toward().times(LIGHT_SEEN.z()));
    double bright = AMBIENT + (1 - AMBIENT) * Math.max(0, normal.dot(light.unit()));
    return mixed(ink, new Ink(0), 1 - bright);
  }

  private static Ink tinted(Ink ink) {
    return mixed(ink, Ink.RUST, TINT);
  }

  private static Ink mixed(Ink ink, Ink with, double part) {
    return new Ink(
        part(ink.red(), with.red(), part) << 16
            | part(ink.green(), with.green(), part) << 8
            | part(ink.blue(), with.blue(), part));
  }

  private static int part(int one, int other, double part) {
    return (int) Math.round(one + (other - one) * part);
  }
}
