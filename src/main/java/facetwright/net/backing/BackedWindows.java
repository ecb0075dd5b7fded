package facetwright.net.backing;

import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundCorners;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Backing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Windows of one panel behind which one piece goes.
 *
 * @param panel the outline of the panel
 */
record BackedWindows(Polygon2 panel, List<Polygon2> windows, Backing asked) {
  /** How far a corner of a window may reach, in overlaps, before it is cut off. */
  private static final double MITRE_LIMIT = 20;

  /** A rectangle that runs along the panel is taken though another is smaller by this part. */
  private static final double AS_SMALL = 1e-3;

  BackedWindows and(BackedWindows other) {
    return new BackedWindows(
        panel, Stream.concat(windows.stream(), other.windows.stream()).toList(), asked);
  }

  /** In mm². */
  double area() {
    return windows.stream().mapToDouble(Polygon2::area).sum();
  }

  /** The shapes a piece with this overlap may have, the best first. */
  List<Polygon2> outlines(double overlap) {
    return switch (asked.cut()) {
      case RECTANGLE -> List.of(rectangle(overlap));
      case OUTLINE -> own(overlap);
      case EITHER -> Stream.concat(Stream.of(rectangle(overlap)), own(overlap).stream()).toList();
    };
  }

  /** The windows' own shape, larger; none where it falls apart. */
  private List<Polygon2> own(double overlap) {
    if (windows.size() == 1) {
      return largerBy(windows.getFirst(), overlap);
    }
    List<Geometry> larger = windows.stream().map(w -> larger(w, overlap)).toList();
    List<Polygon2> whole = Planar.outlines(UnaryUnionOp.union(larger));
    return whole.size() == 1 ? whole : List.of();
  }

  private static Geometry larger(Polygon2 window, double by) {
    BufferParameters sharp = new BufferParameters();
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    sharp.setMitreLimit(MITRE_LIMIT);
    sharp.setSimplifyFactor(0);
    return BufferOp.bufferOp(Planar.polygon(window), by, sharp);
  }

  /** A window's outline set off outward, its arcs kept as arcs; none where it falls apart. */
  static List<Polygon2> largerBy(Polygon2 window, double by) {
    if (!window.arcs().isEmpty()) {
      Optional<Polygon2> round = RoundCorners.setOff(window, by);
      if (round.isPresent()) {
        return List.of(round.get());
      }
    }
    List<Polygon2> whole = Planar.outlines(larger(window, by));
    return whole.size() == 1 ? whole : List.of();
  }

  /** The smallest rectangle along a side of the panel or of a window. */
  private Polygon2 rectangle(double overlap) {
    Polygon2 best = null;
    for (Segment2 side : sides()) {
      Polygon2 one = along(side.direction(), overlap);
      if (best == null || one.area() < best.area() * (1 - AS_SMALL)) {
        best = one;
      }
    }
    return best;
  }

  private List<Segment2> sides() {
    List<Segment2> sides = new ArrayList<>();
    Stream.concat(Stream.of(panel), windows.stream())
        .forEach(
            outline -> {
              for (int i = 0; i < outline.size(); i++) {
                if (!outline.isRound(i)) {
                  sides.add(outline.side(i));
                }
              }
            });
    return sides.isEmpty() ? List.of(panel.side(0)) : sides;
  }

  private Polygon2 along(Vec2 direction, double overlap) {
    Motion2 level = Motion2.carrying(Vec2.ZERO, direction, Vec2.ZERO, new Vec2(1, 0));
    List<Vec2> corners = windows.stream().flatMap(w -> w.corners().stream()).toList();
    var box = level.boxOf(corners).grown(overlap);
    Motion2 back = Motion2.carrying(Vec2.ZERO, new Vec2(1, 0), Vec2.ZERO, direction);
    return back.apply(Polygon2.rectangle(box.minX(), box.minY(), box.width(), box.height()));
  }
}
