package facetwright.draw;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundSides;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Slit;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/**
 * Straight cuts made into as few strokes as possible. What two cuts share is cut once: a part of a
 * segment that lies on an earlier one, to 1e-6 mm, is left out.
 */
public final class CutLines {
  private static final LengthTolerance TOLERANCE = LengthTolerance.FINE;

  /** Ends of cuts that fall on one place of a grid so fine are one end. */
  private static final LengthTolerance GRID = new LengthTolerance(1e-5);

  private CutLines() {}

  public static List<Mark> of(List<Segment2> cuts, LineKind kind) {
    return of(cuts, List.of(), kind);
  }

  /**
   * The sides along which a net is cut, slits among them.
   *
   * @param isHere which panels count
   */
  public static List<Segment2> sides(Net net, IntPredicate isHere) {
    return Stream.concat(net.boundary().stream(), net.slits().stream().map(Slit::a))
        .filter(side -> isHere.test(side.panel()))
        .map(net::segment)
        .toList();
  }

  /** The cut round an opening, or that is one. */
  public static Mark of(Opening opening) {
    return switch (opening) {
      case Opening.Hole h -> new Mark.Circle(h.centre(), h.diameter() / 2, LineKind.CUT);
      case Opening.Slot s when s.isLine() ->
          Mark.Stroke.line(s.line().from(), s.line().to(), LineKind.CUT);
      case Opening.Slot _, Opening.Window _ ->
          Mark.Stroke.around(opening.outline(), LineKind.CUT).asRound();
    };
  }

  /**
   * @param outlines of which they are sides: those that stand for arcs are told so
   */
  static List<Mark> of(List<Segment2> cuts, List<Polygon2> outlines, LineKind kind) {
    RoundSides round = new RoundSides(outlines);
    return chained(once(cuts), kind).stream()
        .map(
            line ->
                new Mark.Stroke(
                        line.points(),
                        line.closed(),
                        kind,
                        round.along(line.points(), line.closed()))
                    .asRound())
        .toList();
  }

  /** The segments, each place of the plane covered once. */
  public static List<Segment2> once(List<Segment2> cuts) {
    List<Segment2> kept = new ArrayList<>();
    Quadtree byPlace = new Quadtree();
    for (Segment2 cut : cuts) {
      Pace.step();
      List<Segment2> rest = List.of(cut);
      for (int earlier : meeting(cut, byPlace)) {
        List<Segment2> left = new ArrayList<>();
        rest.forEach(part -> left.addAll(without(part, kept.get(earlier))));
        rest = left;
      }
      for (Segment2 part : rest) {
        byPlace.insert(box(part), kept.size());
        kept.add(part);
      }
    }
    return kept;
  }

  /** Which of those kept may lie on a cut, in the order in which they were kept. */
  private static List<Integer> meeting(Segment2 cut, Quadtree byPlace) {
    Envelope near = box(cut);
    List<?> found = byPlace.query(near);
    return found.stream().map(Integer.class::cast).sorted().toList();
  }

  private static Envelope box(Segment2 segment) {
    Envelope box = new Envelope(Planar.coordinate(segment.from()), Planar.coordinate(segment.to()));
    box.expandBy(TOLERANCE.mm());
    return box;
  }

  private static List<Segment2> without(Segment2 part, Segment2 earlier) {
    double length = part.length();
    if (length <= TOLERANCE.mm()) {
      return List.of();
    }
    Vec2 along = part.direction();
    Vec2 a = earlier.from().minus(part.from());
    Vec2 b = earlier.to().minus(part.from());
    if (Math.abs(along.cross(a)) > TOLERANCE.mm() || Math.abs(along.cross(b)) > TOLERANCE.mm()) {
      return List.of(part);
    }
    double from = Math.max(0, Math.min(along.dot(a), along.dot(b)));
    double to = Math.min(length, Math.max(along.dot(a), along.dot(b)));
    if (to - from <= TOLERANCE.mm()) {
      return List.of(part);
    }
    List<Segment2> left = new ArrayList<>();
    if (from > TOLERANCE.mm()) {
      left.add(new Segment2(part.from(), part.from().toward(part.to(), from / length)));
    }
    if (length - to > TOLERANCE.mm()) {
      left.add(new Segment2(part.from().toward(part.to(), to / length), part.to()));
    }
    return left;
  }

  private record Place(long x, long y) {
    static Place of(Vec2 p) {
      return new Place(Math.round(p.x() / GRID.mm()), Math.round(p.y() / GRID.mm()));
    }
  }

  /** Segments that meet two at a place become one stroke. */
  private static List<Mark.Stroke> chained(List<Segment2> segments, LineKind kind) {
    Map<Place, List<Integer>> at = new LinkedHashMap<>();
    for (int i = 0; i < segments.size(); i++) {
      for (Vec2 end : List.of(segments.get(i).from(), segments.get(i).to())) {
        at.computeIfAbsent(Place.of(end), _ -> new ArrayList<>()).add(i);
      }
    }
    boolean[] used = new boolean[segments.size()];
    List<Mark.Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      if (used[i]) {
        continue;
      }
      used[i] = true;
      List<Vec2> points = new ArrayList<>(List.of(segments.get(i).from(), segments.get(i).to()));
      extend(points, segments, at, used);
      List<Vec2> backward = new ArrayList<>(points.reversed());
      extend(backward, segments, at, used);
      points = new ArrayList<>(backward.reversed());
      boolean closed =
          points.size() > 3 && Place.of(points.getFirst()).equals(Place.of(points.getLast()));
      strokes.add(
          new Mark.Stroke(closed ? points.subList(0, points.size() - 1) : points, closed, kind));
    }
    return strokes;
  }

  private static void extend(
      List<Vec2> points, List<Segment2> segments, Map<Place, List<Integer>> at, boolean[] used) {
    while (true) {
      Place end = Place.of(points.getLast());
      List<Integer> here = at.get(end);
      int next = here.stream().filter(i -> !used[i]).findFirst().orElse(-1);
      if (here.size() != 2 || next < 0) {
        return;
      }
      used[next] = true;
      Segment2 s = segments.get(next);
      points.add(Place.of(s.from()).equals(end) ? s.to() : s.from());
    }
  }
}
