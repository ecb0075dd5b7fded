package facetwright.draw;

import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.papers.chart.PieceChart;
import java.util.ArrayList;
import java.util.List;

/** A piece when all is scored and cut, its scores by their sense, as the blank lies first. */
final class FoldPicture {
  private FoldPicture() {}

  /**
   * @param piece index of the piece in the net
   */
  static Block of(Net net, int piece, PieceChart chart, double width, double height) {
    double scale = Math.min(1, Math.min(width / chart.width(), height / chart.height()));
    int[] pieceOf = net.pieceOfPanel();
    List<Mark> marks = new ArrayList<>();
    for (int p = 0; p < pieceOf.length; p++) {
      if (pieceOf[p] == piece) {
        Panel panel = net.panels().get(p);
        List<Polygon2> rings = new ArrayList<>();
        rings.add(at(panel.outline(), chart, scale));
        panel.openings().forEach(o -> rings.add(at(o.outline(), chart, scale)));
        marks.add(new Fill(rings, FillKind.CARD));
        panel
            .openings()
            .forEach(o -> marks.add(Stroke.around(at(o.outline(), chart, scale), LineKind.CUT)));
      }
    }
    for (Score s : net.scores()) {
      if (pieceOf[s.a().panel()] == piece) {
        Segment2 line = net.segment(s.a());
        LineKind kind =
            s.perforated()
                ? LineKind.PERFORATION
                : s.sense() == Sense.MOUNTAIN ? LineKind.MOUNTAIN : LineKind.VALLEY;
        marks.add(Stroke.line(at(line.from(), chart, scale), at(line.to(), chart, scale), kind));
      }
    }
    List<Segment2> cuts = new ArrayList<>();
    net.boundary().stream()
        .filter(e -> pieceOf[e.panel()] == piece)
        .map(net::segment)
        .forEach(s -> cuts.add(new Segment2(at(s.from(), chart, scale), at(s.to(), chart, scale))));
    net.slits().stream()
        .filter(s -> pieceOf[s.a().panel()] == piece)
        .map(s -> net.segment(s.a()))
        .forEach(s -> cuts.add(new Segment2(at(s.from(), chart, scale), at(s.to(), chart, scale))));
    marks.addAll(CutLines.of(cuts, LineKind.CUT));
    return new Block(chart.width() * scale, chart.height() * scale, marks);
  }

  private static Vec2 at(Vec2 place, PieceChart chart, double scale) {
    return chart.toBlank().apply(place).times(scale);
  }

  private static Polygon2 at(Polygon2 area, PieceChart chart, double scale) {
    return Polygon2.ofEitherSense(area.corners().stream().map(c -> at(c, chart, scale)).toList());
  }
}
