package facetwright.papers.handout;

import facetwright.check.fit.ClosingStack;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.materials.LayersText;
import facetwright.papers.materials.Level;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one wants to know before one begins: what it will be, and what has to lie ready. */
final class FirstPage {
  private FirstPage() {}

  /** The finished piece, as it stands in use. */
  private static Optional<Picture> made(FoldedForm form, Telling tell) {
    return Handout.isSolved(form)
        ? Optional.of(new Picture.Folded(1, "", tell.say("handout.alt-made")))
        : Optional.empty();
  }

  /** How large it is, what it weighs, and how long it takes. */
  static Section size(Order order, Laid laid, FoldedForm form, Judgement judgement, Works works) {
    Telling tell = order.telling();
    List<String> lines = new ArrayList<>();
    if (Handout.isSolved(form)) {
      Measures measures = form.measures();
      lines.add(
          tell.say(
              "handout.size",
              "height",
              tell.read(measures.height()),
              "width",
              tell.read(measures.width()),
              "depth",
              tell.read(measures.depth())));
    }
    lines.add(judgement.text(tell));
    ClosingStack.of(laid, form).stream()
        .max(Comparator.comparingDouble(ClosingStack::thickness))
        .ifPresent(s -> lines.add(thick(tell, laid.net(), s)));
    lines.add(new WorksText(order).weight(works.materials()));
    lines.add(Level.time(works.materials(), tell));
    lines.add(Level.text(laid.net(), tell));
    return new Section.Facts(tell.say("handout.size-heading"), made(form, tell), lines);
  }

  private static String thick(Telling tell, Net net, ClosingStack stack) {
    boolean tabs =
        stack.panels().stream().allMatch(p -> net.panels().get(p).role() == PanelRole.TAB);
    return tell.say(
        "handout.thick",
        "panels",
        stack.panels().size(),
        "tabs",
        String.valueOf(tabs),
        "thickness",
        tell.read(stack.thickness()));
  }

  /** What has to lie ready. */
  static Section needs(Order order, Net net, Works works, ScoreChart chart) {
    int pieces = works.materials().pieces();
    boolean isForBoard = chart.pieces().stream().anyMatch(p -> p.isForBoard());
    WorksText words = new WorksText(order);
    List<String> lines = new ArrayList<>(words.shopping(works.materials(), Prices.NONE));
    lines.add(blanks(chart, order.telling()));
    lines.addAll(new LayersText(order).backings(works));
    String papers = new LayerText(net, works, order).needs();
    if (!papers.isEmpty()) {
      lines.add(papers);
    }
    lines.add(words.tools(works, isForBoard));
    return new Section.Facts(order.telling().say("handout.needs-heading", "pieces", pieces), lines);
  }

  /** What card is trimmed to, in words; exactly where it is for a board. */
  private record Blank(String width, String height, boolean isForBoard) {}

  /** What the card is trimmed to, blanks that are alike together. */
  private static String blanks(ScoreChart chart, Telling tell) {
    Map<Blank, Integer> counts = new LinkedHashMap<>();
    for (PieceChart piece : chart.pieces()) {
      for (Step step : piece.steps()) {
        if (step instanceof Step.Trim(Measure width, Measure height)) {
          counts.merge(
              new Blank(width.text(tell), height.text(tell), piece.isForBoard()), 1, Integer::sum);
        }
      }
    }
    List<String> all = new ArrayList<>();
    counts.forEach(
        (blank, n) ->
            all.add(
                tell.say(
                    "handout.blank",
                    "count",
                    n,
                    "width",
                    blank.width(),
                    "height",
                    blank.height(),
                    "board",
                    String.valueOf(blank.isForBoard()))));
    return tell.say("handout.blanks", "blanks", tell.apart(all));
  }
}
