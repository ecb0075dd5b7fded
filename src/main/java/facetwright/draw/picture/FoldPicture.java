package facetwright.draw.picture;

import facetwright.draw.CutLines;
import facetwright.draw.FillKind;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.papers.chart.PieceChart;
import java.util.ArrayList;
import java.util.List;

/** A piece when all is scored and cut, its scores by their sense, as the blank lies first. */
public final class FoldPicture {
  private FoldPicture() {}

  /**
   * @param piece index of the piece in the net
   */
  public static Block of(
      Net net, int piece, PieceChart chart, double width, double height, Telling tell) {
    double scale = Scaling.shown(Math.min(width / chart.width(), height / chart.height()));
    int[] pieceOf = net.pieceOfPanel();
    List<Mark> marks = new ArrayList<>();
    for (int p = 0; p < pieceOf.length; p++) {
      if (pieceOf[p] == piece) {
        Panel panel = net.panels().get(p);
        List<Polygon2> rings = new ArrayList<>(List.of(panel.outline()));
        panel.openings().forEach(o -> rings.add(o.outline()));
        marks.add(new Fill(rings, FillKind.CARD));
        panel.openings().forEach(o -> marks.add(around(o)));
      }
    }
    for (Score s : net.scores()) {
      if (pieceOf[s.a().panel()] == piece) {
        Segment2 line = net.segment(s.a());
        marks.add(Stroke.line(line.from(), line.to(), LineKind.of(s)));
      }
    }
    List<Segment2> cuts = CutLines.sides(net, p -> pieceOf[p] == piece);
    marks.addAll(CutLines.of(cuts, LineKind.CUT));
    List<Mark> onBlank = marks.stream().map(m -> m.moved(chart.toBlank())).toList();
    return Scaling.told(
        new Block(chart.width() * scale, chart.height() * scale, new Scaling(scale).of(onBlank)),
        scale,
        tell);
  }

  private static Mark around(Opening opening) {
    return opening instanceof Opening.Hole h
        ? new Circle(h.centre(), h.diameter() / 2, LineKind.CUT)
        : Stroke.around(opening.outline(), LineKind.CUT);
  }
}
