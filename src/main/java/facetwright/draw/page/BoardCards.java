package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.LineKinds;
import facetwright.draw.Mark;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.BoardPicture;
import facetwright.draw.picture.FoldPicture;
import facetwright.draw.picture.Legend;
import facetwright.geom.Box2;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.List;

/**
 * Cards to prop beside the board, one a piece: all its measures on one picture. A card is a quarter
 * of the printer's page, or half of it where a quarter has no room for them.
 */
public final class BoardCards {
  private static final double EDGE = 6;
  private static final double GAP = 2;

  private BoardCards() {}

  /** A card, and whether all its measures have room on it. */
  private record Card(Drawing page, boolean isWhole) {}

  /**
   * @param title of the design
   */
  public static List<Drawing> of(String title, Order order, Net net, ScoreChart chart) {
    Telling tell = order.telling();
    List<Drawing> cards = new ArrayList<>();
    double low = Math.min(order.page().width(), order.page().height());
    double high = Math.max(order.page().width(), order.page().height());
    for (int i = 0; i < chart.pieces().size(); i++) {
      Card quarter = card(title, tell, net, chart, i, high / 2, low / 2);
      Card fit = quarter.isWhole ? quarter : card(title, tell, net, chart, i, low, high / 2);
      cards.add(fit.page.headed(name(title, tell, chart, i)));
    }
    return cards;
  }

  private static String name(String title, Telling tell, ScoreChart chart, int piece) {
    String design = Lettering.title(title);
    return chart.pieces().size() == 1
        ? design
        : tell.say("chart.card", "design", design, "piece", chart.pieces().get(piece).name());
  }

  private static Card card(
      String title, Telling tell, Net net, ScoreChart all, int piece, double width, double height) {
    PieceChart chart = all.pieces().get(piece);
    double wide = width - 2 * EDGE;
    Block head = Block.text(name(title, tell, all, piece), List.of(words(chart, tell)), wide);
    List<Mark> marks = new ArrayList<>();
    double y = height - EDGE - head.height();
    marks.addAll(at(head, EDGE, y));
    Block card = FoldPicture.of(net, piece, chart, chart.width(), chart.height(), tell);
    List<LineKind> kinds =
        LineKinds.used(card.marks()).stream()
            .filter(
                k -> k == LineKind.MOUNTAIN || k == LineKind.VALLEY || k == LineKind.PERFORATION)
            .toList();
    Block legend = Legend.within(kinds, wide > 130 ? 2 : 1, wide, tell);
    marks.addAll(at(legend, EDGE, EDGE));
    double foot = EDGE + legend.height() + GAP;
    BoardPicture picture = BoardPicture.of(net, piece, chart, wide, y - GAP - foot, tell);
    double x = (width - picture.block().width()) / 2;
    double mid = foot + (y - GAP - foot - picture.block().height()) / 2;
    marks.addAll(at(picture.block(), x, mid));
    return new Card(new Drawing(width, height, marks), picture.isWhole());
  }

  private static List<Mark> at(Block block, double x, double y) {
    return block.at(new Box2(x, y, x + block.width(), y + block.height()), false);
  }

  private static String words(PieceChart chart, Telling tell) {
    return tell.say(
        "chart.card-words",
        "width",
        Measure.of(chart.width(), chart.ruler()).text(tell),
        "height",
        Measure.of(chart.height(), chart.ruler()).text(tell),
        "ruler",
        tell.figures(chart.ruler().name()),
        "template",
        String.valueOf(chart.isByTemplate()));
  }
}
