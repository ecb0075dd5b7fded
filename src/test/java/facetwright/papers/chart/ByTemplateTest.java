package facetwright.papers.chart;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What slants everywhere is pricked through its template, unless its points take few measures. */
class ByTemplateTest {
  private static ScoreChart chart(String script) throws Exception {
    Net net = Facetwright.evaluate("t.js", script, Map.of(), Budget.USUAL).net();
    return ScoreChart.of(net, Ruler.HALF_MM);
  }

  @Test
  void aTubOfEqualTrapezoids() throws Exception {
    ScoreChart chart =
        chart(
            """
            design("Tub");
            wrap({ columns: 6, width: [40, 60], rows: [70], seam: 10 });
            """);
    PieceChart tub = chart.pieces().getFirst();
    assertThat(tub.isForBoard()).isFalse();
    assertThat(tub.measures()).isGreaterThan(PieceChart.MOST_MARKED);
    assertThat(chart.isOfUse()).isFalse();
    assertThat(ChartNotes.of(tub, Telling.english(Unit.MM, tub.ruler())))
        .singleElement()
        .asString()
        .contains(tub.measures() + " different measures", "printed template");
  }

  @Test
  void fewMeasuresAreMarked() throws Exception {
    ScoreChart chart =
        chart(
            "design(\"Spire\"); pyramid({ sides: 3, side: 50, height: 60 }).unfold({ tabs: false"
                + " });");
    PieceChart piece = chart.pieces().getFirst();
    assertThat(piece.measures()).isLessThanOrEqualTo(PieceChart.MOST_MARKED);
    assertThat(chart.isOfUse()).isTrue();
  }

  @Test
  void whatABoardScoresIsNeverTooMuch() throws Exception {
    ScoreChart chart =
        chart(
            "design(\"Carton\"); wrap({ widths: [31, 33, 35, 37, 39, 41], rows: [11, 13, 50, 17]"
                + " });");
    assertThat(chart.pieces()).noneMatch(PieceChart::isByTemplate);
  }

  /** Three millimetres are under half of half an inch: no mark is left of them. */
  @Test
  void whatIsGoneOnTheRulerIsPricked() throws Exception {
    Net net =
        Facetwright.evaluate(
                "t.js",
                "design(\"Band\"); wrap({ columns: 4, width: 50, rows: [3, 60], seam: 12 });",
                Map.of(),
                Budget.USUAL)
            .net();
    assertThat(ScoreChart.of(net, Ruler.HALF_MM).pieces()).allMatch(PieceChart::isForBoard);
    ScoreChart chart = ScoreChart.of(net, new Ruler(Unit.INCH, 2));
    assertThat(chart.pieces()).noneMatch(PieceChart::isForBoard);
    assertThat(
            ChartNotes.of(
                    chart.pieces().getFirst(),
                    Telling.english(Unit.INCH, chart.pieces().getFirst().ruler()))
                .getFirst())
        .startsWith("For tracing: the marks of your ruler, 1/2 in apart, are too coarse")
        .contains("prick them through the template");
  }
}
