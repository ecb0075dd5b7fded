package facetwright.papers.layers;

import facetwright.geom.AngleTolerance;
import facetwright.geom.Apart;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundCorners;
import facetwright.geom.Vec2;
import facetwright.net.Layer;
import facetwright.net.Opening;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A shape to cut from layer paper.
 *
 * @param outline its edge; no corner lies on a straight side
 * @param windows what is cut out of it
 */
public record Inset(Polygon2 outline, List<Polygon2> windows) {
  /** A corner that turns by no more is none. */
  private static final AngleTolerance STRAIGHT = AngleTolerance.UNSEEN;

  /** How far a corner of a window may reach, in reveals, before it is cut off. */
  private static final double MITRE_LIMIT = 20;

  public Inset {
    windows = List.copyOf(windows);
  }

  /**
   * What is left of a panel when the reveal is taken off all round, and windows and holes are made
   * larger by it. Corners are mitred. None where the reveal takes all, or all but strips too narrow
   * to be cut; several where it takes a neck.
   *
   * @param reveal 0 or more, in mm
   */
  static List<Inset> of(Panel panel, double reveal) {
    if (panel.openings().isEmpty()
        && panel.outline().arcs().isEmpty()
        && panel.outline().isConvex()) {
      return Polygon2.wide(pulledIn(panel.outline(), reveal)).stream()
          .map(left -> new Inset(tidy(left), List.of()))
          .filter(Inset::isWide)
          .toList();
    }
    Optional<Inset> round = round(panel, reveal);
    if (round.isPresent()) {
      return round.filter(Inset::isWide).stream().toList();
    }
    BufferParameters sharp = new BufferParameters();
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    sharp.setMitreLimit(MITRE_LIMIT);
    sharp.setSimplifyFactor(0);
    Geometry left = BufferOp.bufferOp(panel.region(), -reveal, sharp);
    List<Inset> all = new ArrayList<>();
    for (int i = 0; i < left.getNumGeometries(); i++) {
      if (left.getGeometryN(i) instanceof Polygon p && p.getArea() > 0) {
        List<Polygon2> windows = new ArrayList<>();
        for (int w = 0; w < p.getNumInteriorRing(); w++) {
          wide(p.getInteriorRingN(w)).ifPresent(windows::add);
        }
        wide(p.getExteriorRing()).ifPresent(edge -> all.add(new Inset(edge, windows)));
      }
    }
    return all.stream().filter(Inset::isWide).toList();
  }

  /**
   * Of a panel with arcs, kept as arcs; empty where a side or an arc is lost, or all is straight.
   */
  private static Optional<Inset> round(Panel panel, double reveal) {
    List<Polygon2> cut = new ArrayList<>();
    for (Opening o : panel.openings()) {
      if (o instanceof Opening.Hole h) {
        cut.add(new Opening.Hole(h.centre(), h.diameter() + 2 * reveal, h.site()).outline());
      } else {
        RoundCorners.setOff(o.outline(), reveal).ifPresent(cut::add);
      }
    }
    boolean hasArcs =
        !panel.outline().arcs().isEmpty()
            || panel.openings().stream().anyMatch(o -> !o.outline().arcs().isEmpty());
    if (!hasArcs || cut.size() < panel.openings().size()) {
      return Optional.empty();
    }
    return RoundCorners.setOff(panel.outline(), -reveal)
        .map(left -> new Inset(left, cut))
        .filter(Inset::isApart);
  }

  private boolean isApart() {
    PreparedGeometry paper = PreparedGeometryFactory.prepare(Planar.polygon(outline));
    Apart apart = new Apart();
    return windows.stream()
        .map(Planar::polygon)
        .allMatch(w -> paper.containsProperly(w) && apart.takes(w));
  }

  private boolean isWide() {
    return Layer.isWide(outline, windows);
  }

  /** A convex outline cut by the line of each side, moved inward: exact, corner by corner. */
  private static List<Vec2> pulledIn(Polygon2 outline, double by) {
    List<Vec2> left = outline.corners();
    for (int side = 0; side < outline.size() && !left.isEmpty(); side++) {
      Vec2 from = outline.corner(side);
      Vec2 along = outline.corner(side + 1).minus(from).unit();
      List<Vec2> next = new ArrayList<>();
      for (int i = 0; i < left.size(); i++) {
        Vec2 a = left.get(i);
        Vec2 b = left.get((i + 1) % left.size());
        double insideA = along.cross(a.minus(from)) - by;
        double insideB = along.cross(b.minus(from)) - by;
        if (insideA >= 0) {
          next.add(a);
        }
        if (insideA < 0 != insideB < 0) {
          next.add(a.toward(b, insideA / (insideA - insideB)));
        }
      }
      left = next;
    }
    return left;
  }

  private static Optional<Polygon2> wide(LinearRing ring) {
    return Polygon2.wide(Planar.outline(ring).corners()).map(Inset::tidy);
  }

  /** Without corners on straight sides. */
  private static Polygon2 tidy(Polygon2 outline) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      if (!STRAIGHT.same(outline.angle(i), Math.PI)) {
        corners.add(outline.corner(i));
      }
    }
    return corners.size() < 3 ? outline : new Polygon2(corners);
  }

  /** Paper it uses, in mm². */
  public double area() {
    return outline.area() - windows.stream().mapToDouble(Polygon2::area).sum();
  }

  /** Turned and shifted. */
  Inset moved(Motion2 motion) {
    return new Inset(motion.apply(outline), windows.stream().map(motion::apply).toList());
  }

  /** As seen in a mirror. */
  Inset mirrored() {
    return new Inset(outline.mirrored(), windows.stream().map(Polygon2::mirrored).toList());
  }
}
