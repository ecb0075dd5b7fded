package facetwright.papers.handout;

import facetwright.check.fit.ClosingStack;
import facetwright.fold.pose.FoldedForm;
import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Unit;
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
  private static Optional<Picture> made(FoldedForm form) {
    return Handout.isSolved(form)
        ? Optional.of(new Picture.Folded(1, "", "The finished piece."))
        : Optional.empty();
  }

  /** How large it is, what it weighs, and how long it takes. */
  static Section size(Order order, Laid laid, FoldedForm form, Judgement judgement, Works works) {
    Unit unit = order.unit();
    List<String> lines = new ArrayList<>();
    if (Handout.isSolved(form)) {
      lines.add(form.measures().size(mm -> text(mm, unit)) + ".");
    }
    lines.add(judgement.text(unit));
    ClosingStack.of(laid, form).stream()
        .max(Comparator.comparingDouble(ClosingStack::thickness))
        .ifPresent(s -> lines.add(thick(unit, laid.net(), s)));
    lines.add(new WorksText(order).weight(works.materials()));
    lines.add(Level.time(works.materials(), order.telling()));
    lines.add(Level.text(laid.net(), order.telling()));
    return new Section.Facts("Finished size", made(form), lines);
  }

  private static String thick(Unit unit, Net net, ClosingStack stack) {
    boolean tabs =
        stack.panels().stream().allMatch(p -> net.panels().get(p).role() == PanelRole.TAB);
    return String.format(
        "Where %d %s lie on each other the card is %s thick: %s.",
        stack.panels().size(),
        tabs ? "tabs" : "panels",
        text(stack.thickness(), unit),
        tabs ? "press it while the glue grips" : "what closes over it stands off by as much");
  }

  private static String text(double mm, Unit unit) {
    return new Length(mm).read(unit);
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
    return new Section.Facts(
        pieces == 1 ? "You need" : "You need, for " + pieces + " pieces", lines);
  }

  /** What the card is trimmed to, blanks that are alike together. */
  private static String blanks(ScoreChart chart, Telling tell) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (PieceChart piece : chart.pieces()) {
      for (Step step : piece.steps()) {
        if (step instanceof Step.Trim(Measure width, Measure height)) {
          counts.merge(
              width.text(tell)
                  + " × "
                  + height.text(tell)
                  + (piece.isForBoard() ? "" : ", or a little larger"),
              1,
              Integer::sum);
        }
      }
    }
    List<String> all = new ArrayList<>();
    counts.forEach((size, n) -> all.add((n == 1 ? "" : n + " of ") + size));
    return "Cut from the card: " + String.join("; ", all) + ".";
  }
}
