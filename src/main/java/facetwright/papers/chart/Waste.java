package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundSides;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** What of a blank is no card. */
final class Waste {
  private static final double FINE = LengthTolerance.FINE.mm();
  private static final PrecisionModel GRID = new PrecisionModel(1e6);

  /** From the grid back to the corner that was meant. */
  private static final LengthTolerance NEAR = new LengthTolerance(1e-5);

  /** Thinner than this it is rounding. */
  private static final LengthTolerance THIN = new LengthTolerance(1e-4);

  private Waste() {}

  /**
   * Its areas, row by row from the top, each from the left; corners on corners of the panels,
   * straight sides undivided, arcs kept.
   */
  static List<Polygon2> of(FlatPiece piece) {
    List<Geometry> panels = new ArrayList<>();
    List<Vec2> corners = new ArrayList<>();
    for (Polygon2 p : piece.panels()) {
      panels.add(Planar.polygon(p));
      corners.addAll(p.corners());
    }
    Polygon2 blank = Polygon2.rectangle(0, 0, piece.width(), piece.height());
    corners.addAll(blank.corners());
    Geometry card = UnaryUnionNG.union(Planar.factory().buildGeometry(panels), GRID);
    Geometry rest = OverlayNG.overlay(Planar.polygon(blank), card, OverlayNG.DIFFERENCE, GRID);
    List<Polygon2> areas = new ArrayList<>();
    RoundSides round = new RoundSides(piece.panels());
    for (Polygon2 rough : Planar.outlines(rest)) {
      if (rough.area() > THIN.mm() * length(rough)) {
        List<Vec2> ring =
            straightened(rough.corners().stream().map(c -> snapped(c, corners)).toList());
        areas.add(new Polygon2(ring, round.along(ring, true)));
      }
    }
    areas.sort(
        Comparator.comparingDouble((Polygon2 a) -> -Math.rint(a.box().maxY() * 100))
            .thenComparingDouble(a -> a.box().minX()));
    return areas;
  }

  static List<Segment2> sides(List<Polygon2> areas) {
    List<Segment2> sides = new ArrayList<>();
    for (Polygon2 area : areas) {
      for (int i = 0; i < area.size(); i++) {
        sides.add(area.side(i));
      }
    }
    return sides;
  }

  private static double length(Polygon2 area) {
    double length = 0;
    for (int i = 0; i < area.size(); i++) {
      length += area.side(i).length();
    }
    return length;
  }

  private static Vec2 snapped(Vec2 rough, List<Vec2> corners) {
    Pace.step(1 + corners.size() / 16);
    Vec2 best = rough;
    double least = NEAR.mm();
    for (Vec2 c : corners) {
      double d = c.distance(rough);
      if (d < least) {
        least = d;
        best = c;
      }
    }
    return best;
  }

  private static List<Vec2> straightened(List<Vec2> ring) {
    List<Vec2> corners = new ArrayList<>();
    for (Vec2 c : ring) {
      if (corners.isEmpty() || corners.getLast().distance(c) > NEAR.mm()) {
        corners.add(c);
      }
    }
    for (int i = 0; i < corners.size() && corners.size() > 3; ) {
      Vec2 before = corners.get((i + corners.size() - 1) % corners.size());
      Vec2 after = corners.get((i + 1) % corners.size());
      if (new Segment2(before, after).distance(corners.get(i)) <= FINE) {
        corners.remove(i);
      } else {
        i++;
      }
    }
    return corners;
  }
}
