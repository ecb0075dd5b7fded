package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.LineKinds;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.FoldPicture;
import facetwright.draw.picture.Legend;
import facetwright.draw.picture.StepPicture;
import facetwright.fold.Folding;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.chart.StepText;
import facetwright.papers.chart.StepWords;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import java.util.List;

/** The pages of a score chart: what to know, then each step with its picture. */
public final class ChartPages {
  /** How much of the width a picture takes that has its words beside it, in mm. */
  static final double PICTURE = 80;

  /** The most that such a picture takes of the height, in mm. */
  static final double LOW = 50;

  /** A picture of points has to be larger, in mm. */
  private static final double HIGH = 104;

  private final Flow flow;
  private final Telling tell;

  private ChartPages(Flow flow, Telling tell) {
    this.flow = flow;
    this.tell = tell;
  }

  /**
   * @param title of the design
   */
  public static List<Drawing> of(String title, Order order, Laid laid) {
    ScoreChart chart = ScoreChart.of(laid.net(), order.ruler());
    Telling tell = order.telling();
    Flow flow = new Flow(order.page(), title, Named.paper("chart", tell), tell);
    ChartPages pages = new ChartPages(flow, tell);
    flow.title(title, summary(chart, tell));
    AsSet.text(laid, Folding.fold(laid), chart, tell).ifPresent(flow::words);
    ChartNotes.cautions(tell).forEach(flow::words);
    for (int i = 0; i < chart.pieces().size(); i++) {
      pages.piece(laid.net(), i, chart);
    }
    return flow.pages();
  }

  private static String summary(ScoreChart chart, Telling tell) {
    return tell.say(
        "chart.summary",
        "pieces",
        chart.pieces().size(),
        "ruler",
        tell.figures(tell.ruler().name()),
        "measures",
        chart.distinctMeasures());
  }

  private void piece(Net net, int index, ScoreChart all) {
    PieceChart chart = all.pieces().get(index);
    if (all.pieces().size() > 1) {
      flow.heading(tell.say("chart.piece", "number", index + 1, "name", chart.name()), LOW);
    }
    ChartNotes.of(chart, tell).forEach(n -> flow.item("–", n));
    flow.gap(3);
    List<Replay.Frame> frames = Replay.frames(chart.steps());
    List<String> words =
        StepWords.texts(
            chart.isByTemplate()
                ? chart.steps().stream().map(s -> StepText.byTemplate(s, tell)).toList()
                : StepText.of(chart, tell));
    // Who pricks the points through cuts no blank to size first.
    int first = chart.isByTemplate() ? 1 : 0;
    for (int i = first; i < words.size(); i++) {
      Step step = chart.steps().get(i);
      String lead = i + 1 - first + ".";
      if (chart.isByTemplate()) {
        Beside.under(flow, picture(chart, frames, i, flow.width(), HIGH), lead, words.get(i));
      } else if (step instanceof Step.Points points) {
        Beside.under(
            flow, picture(chart, frames, i, flow.width(), 150), lead, StepText.introToPoints(tell));
        PointColumns.set(flow, StepText.points(points, tell));
        flow.gap(3);
      } else if (step instanceof Step.Trim) {
        Beside.set(
            flow, picture(chart, frames, i, PICTURE, LOW * 0.7), PICTURE, lead, words.get(i));
      } else if (chart.isForBoard()) {
        Beside.set(flow, picture(chart, frames, i, PICTURE, LOW), PICTURE, lead, words.get(i));
      } else {
        Beside.under(flow, picture(chart, frames, i, flow.width(), HIGH), lead, words.get(i));
      }
    }
    Block folds = FoldPicture.of(net, index, chart, PICTURE - 12, LOW - 12, tell);
    Beside.set(
        flow, folds, PICTURE, words.size() + 1 - first + ".", ChartNotes.folding(net, index, tell));
    flow.put(Legend.of(LineKinds.used(folds.marks()), 1, tell));
    flow.gap(3);
  }

  private Block picture(
      PieceChart chart, List<Replay.Frame> frames, int step, double width, double height) {
    return StepPicture.of(chart, frames, step, width, height, tell);
  }
}
