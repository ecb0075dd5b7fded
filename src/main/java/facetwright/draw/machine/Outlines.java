package facetwright.draw.machine;

import facetwright.draw.Areas;
import facetwright.draw.CutLines;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundSides;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.union.UnionStrategy;

/**
 * The cuts along the sides of panels: round each piece of card one closed line, and what lies
 * within. Corners nearer to each other than {@value #NEAR_MM} mm are one, so that neighbours share
 * theirs.
 *
 * @param around the outer lines, closed
 * @param within closed lines round what falls out, and single cuts
 */
record Outlines(List<Mark> around, List<Mark> within) {
  private static final double NEAR_MM = 1e-4;

  /** Cuts so near a closed line are part of it, in mm. */
  private static final double ON_LINE = 2 * NEAR_MM;

  private static final UnionStrategy SNAPPED =
      new UnionStrategy() {
        @Override
        public Geometry union(Geometry a, Geometry b) {
          return OverlayNG.overlay(a, b, OverlayNG.UNION, null, new SnappingNoder(NEAR_MM));
        }

        @Override
        public boolean isFloatingPrecision() {
          return false;
        }
      };

  /**
   * @param panels the outlines of panels, holes left out
   * @param cuts their sides that are cut
   */
  static Outlines of(List<Polygon2> panels, List<Segment2> cuts) {
    if (panels.isEmpty()) {
      return new Outlines(List.of(), List.of());
    }
    RoundSides round = new RoundSides(panels);
    UnaryUnionOp union =
        new UnaryUnionOp(panels.stream().map(Planar::polygon).toList(), Planar.factory());
    union.setUnionFunction(SNAPPED);
    Geometry all = union.union();
    List<Mark> around = new ArrayList<>();
    List<Mark> within = new ArrayList<>();
    for (List<Polygon2> rings : Areas.rings(all)) {
      around.add(closed(rings.getFirst(), round));
      rings.subList(1, rings.size()).forEach(r -> within.add(closed(r, round)));
    }
    for (Segment2 cut : left(cuts, all)) {
      within.add(Stroke.line(cut.from(), cut.to(), LineKind.CUT));
    }
    return new Outlines(around, within);
  }

  private static Mark closed(Polygon2 ring, RoundSides round) {
    List<Vec2> corners = new ArrayList<>(ring.corners());
    for (int i = 0; i < corners.size() && corners.size() > 3; ) {
      int n = corners.size();
      Segment2 past = new Segment2(corners.get((i + n - 1) % n), corners.get((i + 1) % n));
      if (past.distance(corners.get(i)) > NEAR_MM / 2) {
        i++;
      } else {
        corners.remove(i);
      }
    }
    return new Stroke(corners, true, LineKind.CUT, round.along(corners, true)).asRound();
  }

  /** What of the cuts is on no closed line, each once and joined where it runs straight on. */
  private static List<Segment2> left(List<Segment2> cuts, Geometry card) {
    Geometry lines = card.getBoundary();
    IndexedFacetDistance toLines = new IndexedFacetDistance(lines);
    STRtree corners = new STRtree();
    for (Coordinate c : lines.getCoordinates()) {
      corners.insert(new Envelope(c), c);
    }
    List<Segment2> left = new ArrayList<>();
    for (Segment2 cut : CutLines.once(cuts)) {
      Pace.step();
      List<Double> ends = ends(cut, corners);
      for (int i = 0; i + 1 < ends.size(); i++) {
        Segment2 part =
            new Segment2(
                cut.from().toward(cut.to(), ends.get(i)),
                cut.from().toward(cut.to(), ends.get(i + 1)));
        Point middle = Planar.factory().createPoint(Planar.coordinate(part.middle()));
        if (part.length() > ON_LINE && toLines.distance(middle) > ON_LINE) {
          left.add(part);
        }
      }
    }
    return Straight.joined(left);
  }

  /** Where a cut begins, passes a corner of the closed lines, and ends, as parts of its length. */
  private static List<Double> ends(Segment2 cut, STRtree corners) {
    Envelope about = new Envelope(Planar.coordinate(cut.from()), Planar.coordinate(cut.to()));
    about.expandBy(ON_LINE);
    List<Double> ends = new ArrayList<>(List.of(0.0, 1.0));
    for (Object found : corners.query(about)) {
      Coordinate c = (Coordinate) found;
      Vec2 corner = new Vec2(c.x, c.y);
      if (cut.distance(corner) < ON_LINE) {
        double at = cut.direction().dot(corner.minus(cut.from())) / cut.length();
        ends.add(Math.clamp(at, 0, 1));
      }
    }
    Collections.sort(ends);
    return ends;
  }
}
