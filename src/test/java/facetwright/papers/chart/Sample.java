package facetwright.papers.chart;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Arc;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds what a chart leads to against the net it was made for, place by place. An arc is told by
 * its ends and its radius; the sides that stand for it in the net and on the table may be others,
 * as far off it as {@link Arc#CHORD} allows.
 */
final class Sample {
  private static final double APART = 0.5;

  private Sample() {}

  static void holdsToItsNet(Net net, ScoreChart chart, boolean isByRuler) {
    assertThat(chart.pieces()).hasSize(net.pieces());
    int[] pieceOf = net.pieceOfPanel();
    for (int i = 0; i < net.pieces(); i++) {
      PieceChart piece = chart.pieces().get(i);
      double near = 1e-6 * 3;
      if (isByRuler) {
        // A coordinate comes from one measure, or from one measure and a side of the blank; a point
        // from two coordinates.
        near += 2 * Math.sqrt(2) * piece.mostOff();
      }
      int at = i;
      Motion2 m = piece.toBlank();
      List<Segment2> pressed = new ArrayList<>();
      List<Segment2> perforated = new ArrayList<>();
      for (Score s : net.scores()) {
        if (pieceOf[s.a().panel()] == at) {
          (s.perforated() ? perforated : pressed).add(moved(net, s.a(), m));
        }
      }
      List<Segment2> cuts = new ArrayList<>();
      net.boundary().stream()
          .filter(e -> pieceOf[e.panel()] == at)
          .forEach(e -> cuts.add(moved(net, e, m)));
      net.slits().stream()
          .flatMap(s -> List.of(s.a(), s.b()).stream())
          .filter(e -> pieceOf[e.panel()] == at)
          .forEach(e -> cuts.add(moved(net, e, m)));
      List<Opening.Hole> holes = new ArrayList<>();
      List<Polygon2> rounded = new ArrayList<>();
      for (int p = 0; p < pieceOf.length; p++) {
        if (pieceOf[p] == at) {
          Panel panel = net.panels().get(p);
          rounded.add(m.apply(panel.outline()));
          panel.openings().forEach(o -> rounded.add(m.apply(o.outline())));
        }
        for (Opening o : net.panels().get(p).openings()) {
          if (pieceOf[p] != at) {
            continue;
          }
          switch (o) {
            case Opening.Hole h -> holes.add(h);
            case Opening.Slot t when t.isLine() -> cuts.add(t.moved(m).line());
            case Opening.Window _, Opening.Slot _ -> {
              for (int k = 0; k < o.outline().size(); k++) {
                Segment2 s = o.outline().side(k);
                cuts.add(new Segment2(m.apply(s.from()), m.apply(s.to())));
              }
            }
          }
        }
      }
      Followed made = Followed.of(piece.steps(), isByRuler);
      same("pressed scores", made.pressed(), pressed, near, List.of());
      same("perforated scores", made.perforated(), perforated, near, List.of());
      same("cuts", made.cuts(), cuts, near, rounded);
      assertThat(made.holes()).hasSize(holes.size());
      for (Opening.Hole h : holes) {
        Vec2 centre = m.apply(h.centre());
        double reach = near;
        assertThat(made.holes())
            .anyMatch(d -> d.diameter() == h.diameter() && d.centre().distance(centre) <= reach);
      }
    }
  }

  private static Segment2 moved(Net net, EdgeRef side, Motion2 m) {
    Segment2 s = net.segment(side);
    return new Segment2(m.apply(s.from()), m.apply(s.to()));
  }

  private static void same(
      String what, List<Segment2> made, List<Segment2> meant, double near, List<Polygon2> rounded) {
    lieOn(what + " too many", made, meant, near, rounded);
    lieOn(what + " missing", meant, made, near, rounded);
  }

  /** Whether a place is as near to an arc as its sides are. */
  private static boolean isOnArc(Vec2 place, List<Polygon2> rounded, double near) {
    return rounded.stream()
        .anyMatch(
            o ->
                o.arcs().stream()
                    .anyMatch(
                        a -> {
                          double radius = a.centre().distance(o.corner(a.first()));
                          double off = Math.abs(a.centre().distance(place) - radius);
                          return off <= Arc.CHORD.mm() + near;
                        }));
  }

  private static void lieOn(
      String what, List<Segment2> lines, List<Segment2> on, double near, List<Polygon2> rounded) {
    for (Segment2 s : lines) {
      int parts = (int) Math.ceil(s.length() / APART);
      for (int k = 0; k <= parts; k++) {
        Vec2 p = s.from().toward(s.to(), (double) k / Math.max(1, parts));
        double off = on.stream().mapToDouble(o -> o.distance(p)).min().orElse(1e9);
        if (off > near && !(off <= near + Arc.CHORD.mm() && isOnArc(p, rounded, near))) {
          throw new AssertionError(what + ": at " + p + ", off by " + off + ", allowed " + near);
        }
      }
    }
  }
}
