package facetwright.draw;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A picture of a folded net, part of the way or made: patches that hide each other in their order.
 * It serves the screen, pages and files alike. Light falls from the upper left; the inside of the
 * card is a little darker than its outside.
 */
public final class FoldedDrawing {
  /** Places of a folded form that lie nearer are one, whatever its joins miss each other by. */
  static final LengthTolerance ON_SIDE = new LengthTolerance(1e-4);

  private static final Ink INSIDE = new Ink(0xDDD3BE);
  private static final Ink PANE = new Ink(0xEAF0EA);
  private static final double AMBIENT = 0.74;
  private static final Vec3 LIGHT_SEEN = new Vec3(-0.45, 0.65, 0.61);
  private static final double TINT = 0.22;
  private static final double WORDS = 0.85;
  private static final Ink PAPER = new Ink(0xFFFEFA);

  private final Net net;
  private final List<Motion3> poses;
  private final Hiding hiding;
  private final Map<Hiding.Shard, List<Inlays.Inlay>> inlays = new HashMap<>();
  private final Map<Hiding.Shard, List<CardEdges.Line>> edges = new HashMap<>();

  /**
   * The panels where the poses put them.
   *
   * @param poses for each panel, from its place in the net
   * @param withLayers whether decorative layers and labels show
   */
  public FoldedDrawing(Net net, List<Motion3> poses, boolean withLayers) {
    this.net = net;
    this.poses = List.copyOf(poses);
    this.hiding = Hiding.of(net, poses);
    Set<EdgeRef> scored = new HashSet<>();
    net.scores()
        .forEach(
            s -> {
              scored.add(s.a());
              scored.add(s.b());
            });
    Optional<Inlays> all = withLayers ? Optional.of(new Inlays(net)) : Optional.empty();
    Map<Integer, CardEdges> borders = new HashMap<>();
    for (Hiding.Shard shard : hiding.seenFrom(Vec3.Z)) {
      CardEdges border = borders.computeIfAbsent(shard.panel(), p -> new CardEdges(net, p, scored));
      edges.put(shard, border.of(shard.region()));
      if (all.isPresent() && !shard.isPane()) {
        inlays.put(
            shard,
            all.get().on(shard.panel()).stream()
                .flatMap(inlay -> inlay.within(shard.region()).stream())
                .toList());
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
      if (Math.abs(facing) < RoundOff.SOLVED) {
        continue;
      }
      Ink ink =
          lit(
              shard.isPane() ? PANE : facing > 0 ? Ink.CARD : INSIDE,
              facing > 0 ? normal : normal.times(-1),
              from);
      List<Mark.Stroke> lines = new ArrayList<>();
      for (CardEdges.Line line : edges.get(shard)) {
        List<Vec2> points = apart(line.points().stream().map(p -> seen(shard.panel(), p, from)));
        if (points.size() > 1) {
          lines.add(new Mark.Stroke(points, line.closed(), line.kind()));
        }
      }
      patches.add(patch(shard.panel(), shard.region(), ink, lines, from));
      if (facing > 0) {
        inlays
            .getOrDefault(shard, List.of())
            .forEach(inlay -> patches.add(patch(shard.panel(), inlay, ink, from)));
      }
    }
    return patches;
  }

  /** The points but those that lie where the one before them does. */
  private static List<Vec2> apart(Stream<Vec2> points) {
    List<Vec2> apart = new ArrayList<>();
    points
        .filter(p -> apart.isEmpty() || apart.getLast().distance(p) > ON_SIDE.mm())
        .forEachOrdered(apart::add);
    return apart;
  }

  private Mark.Patch patch(int panel, Inlays.Inlay inlay, Ink card, Viewpoint from) {
    return switch (inlay.kind()) {
      case LAYER -> patch(panel, inlay.area(), tinted(card), List.of(), from);
      case WORDS -> patch(panel, inlay.area(), mixed(card, Ink.BLACK, WORDS), List.of(), from);
      case PAPER -> {
        Ink paper = lit(PAPER, poses.get(panel).ez(), from);
        Mark.Patch plain = patch(panel, inlay.area(), paper, List.of(), from);
        List<Mark.Stroke> edges =
            plain.rings().stream().map(r -> Mark.Stroke.around(r, LineKind.LAYER)).toList();
        yield new Mark.Patch(plain.rings(), paper, edges, panel);
      }
    };
  }

  private Mark.Patch patch(
      int panel, Geometry area, Ink ink, List<Mark.Stroke> edges, Viewpoint from) {
    List<Polygon2> rings = new ArrayList<>();
    for (int i = 0; i < area.getNumGeometries(); i++) {
      Polygon part = (Polygon) area.getGeometryN(i);
      ring(panel, part.getExteriorRing(), from, rings);
      for (int h = 0; h < part.getNumInteriorRing(); h++) {
        ring(panel, part.getInteriorRingN(h), from, rings);
      }
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
