package facetwright.papers.guide;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.List;

/**
 * Where equal holes go, measured from one edge of the panel and from the nearer end of that edge.
 * Turned over, the same guide serves the other end.
 *
 * @param diameter of the hole, in mm
 * @param along from the end of the edge, in mm
 * @param up from the edge, in mm
 * @param edge length of the edge, in mm
 * @param centred whether the hole stands over the middle of the edge; the guide is then as long as
 *     it
 * @param panels the panels with such a hole, a panel with two named twice
 */
public record PunchGuide(
    double diameter, double along, double up, double edge, boolean centred, List<String> panels) {
  private static final LengthTolerance SAME = new LengthTolerance(0.01);

  /** Card kept beyond the hole. */
  private static final double BEYOND = 8;

  public PunchGuide {
    panels = List.copyOf(panels);
  }

  /** How long the guide is along the edge, in mm. */
  public double width() {
    return centred ? edge : along + diameter / 2 + BEYOND;
  }

  /** How far it reaches from the edge, in mm. */
  public double height() {
    return up + diameter / 2 + BEYOND;
  }

  /** A guide for every kind of hole that occurs at least twice, in panel order. */
  public static List<PunchGuide> of(Net net) {
    List<Draft> drafts = new ArrayList<>();
    for (Panel panel : net.panels()) {
      for (Opening opening : panel.openings()) {
        if (opening instanceof Opening.Hole hole) {
          sort(drafts, place(panel, hole));
        }
      }
    }
    return drafts.stream().filter(d -> d.panels.size() > 1).map(Draft::guide).toList();
  }

  private record Draft(double diameter, double along, double up, double edge, List<String> panels) {
    boolean like(Draft other) {
      return SAME.same(diameter, other.diameter)
          && SAME.same(along, other.along)
          && SAME.same(up, other.up)
          && (SAME.same(edge, other.edge) || !(isCentred() || other.isCentred()));
    }

    /**
     * The middle of a side is found more surely than a place on it; then the nearer the better, and
     * of two as near the longer.
     */
    boolean betterThan(Draft other) {
      if (isCentred() != other.isCentred()) {
        return isCentred();
      }
      return SAME.same(up, other.up) ? edge > other.edge + SAME.mm() : up < other.up;
    }

    boolean isCentred() {
      return SAME.same(2 * along, edge);
    }

    PunchGuide guide() {
      return new PunchGuide(diameter, along, up, edge, isCentred(), panels);
    }
  }

  private static void sort(List<Draft> drafts, Draft hole) {
    for (Draft draft : drafts) {
      if (draft.like(hole)) {
        draft.panels.addAll(hole.panels);
        return;
      }
    }
    drafts.add(hole);
  }

  /** From the side over whose middle the hole stands, or else the nearest; the first of equals. */
  private static Draft place(Panel panel, Opening.Hole hole) {
    Polygon2 ring = panel.outline();
    Draft best = null;
    for (int i = 0; i < ring.size(); i++) {
      Segment2 side = ring.side(i);
      Vec2 to = hole.centre().minus(side.from());
      double from = side.direction().dot(to);
      double up = side.direction().cross(to);
      double along = Math.min(from, side.length() - from);
      if (along > -SAME.mm() && up > 0) {
        Draft draft =
            new Draft(
                hole.diameter(), along, up, side.length(), new ArrayList<>(List.of(panel.name())));
        best = best == null || draft.betterThan(best) ? draft : best;
      }
    }
    return best;
  }
}
