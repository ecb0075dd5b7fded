package facetwright.papers.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A chart asks for no more different measures than a skilled maker would. */
class ShortChartTest {
  static Net lantern(int columns, double width, double rim, double wall, double seam) {
    WrapDraft wrap =
        WrapDraft.of(
                Collections.nCopies(columns, width),
                WrapRow.usual(List.of(rim, wall, wall, rim)),
                Site.NONE)
            .seam(seam, Site.NONE);
    wrap.all().columns("even", Site.NONE).rows("rim", Site.NONE).remove(Site.NONE);
    wrap.all().columns("even", Site.NONE).rows("wall", Site.NONE).gusset(Pinch.IN, null, Site.NONE);
    wrap.all().columns("odd", Site.NONE).rows("rim", Site.NONE).tabs(Site.NONE).hole(3, Site.NONE);
    return wrap.build();
  }

  /**
   * Counted from the symmetry of the piece. Its columns are alike, so that the lines between them
   * stand at 1, 2, … times the width from the plain edge: as many measures as columns, the last one
   * where the seam flap begins. (The flap is narrower than a column, so that turning the sheet end
   * for end maps no line on another.) Top and bottom are mirror images: the two rim lines need one
   * measure, nothing new where the rim is as high as a column is wide, and the waist lies in the
   * middle, so that it needs one more. Gussets run between crossings and middles: none. For the
   * cuts, all tabs have the same bevel, both ends of the flap too, and all holes lie alike: three.
   */
  @Test
  void eightColumnsWithRimAsHighAsAColumnIsWide() {
    PieceChart chart = chart(lantern(8, 28, 28, 60, 12));
    assertThat(chart.scoreMeasures()).hasSizeLessThanOrEqualTo(8 + 1);
    assertThat(chart.cutMeasures()).hasSizeLessThanOrEqualTo(3);
    assertThat(chart.steps().stream().filter(s -> s instanceof Step.FullScores)).hasSize(3);
  }

  @Property(seed = "20261125", tries = 40)
  void anyLantern(
      @ForAll @IntRange(min = 3, max = 6) int half,
      @ForAll @IntRange(min = 20, max = 40) int width,
      @ForAll @IntRange(min = 12, max = 30) int rim,
      @ForAll @IntRange(min = 45, max = 80) int wall) {
    PieceChart chart = chart(lantern(2 * half, width, rim, wall, 10));
    // As above, with one measure more for a rim of its own height.
    assertThat(chart.scoreMeasures()).hasSizeLessThanOrEqualTo(2 * half + 2);
    assertThat(chart.cutMeasures()).hasSizeLessThanOrEqualTo(3);
  }

  /** A plain wrap without a flap is its own mirror image: half of its measures will do. */
  @Test
  void aPlainWrapNeedsHalfOfItsColumns() {
    Net net =
        WrapDraft.of(Collections.nCopies(8, 25.0), WrapRow.usual(List.of(60.0)), Site.NONE).build();
    PieceChart chart = chart(net);
    // Lines at 25, 50, 75, the middle 100; the others by turning end for end.
    assertThat(chart.scoreMeasures().stream().map(Measure::mm))
        .containsExactlyInAnyOrder(25.0, 50.0, 75.0, 100.0);
    assertThat(chart.steps())
        .anyMatch(s -> s instanceof Step.FullScores f && f.isAgain() && f.lines().size() == 3);
  }

  /** Every step counts: with any one left out, what is made is another net or can't be made. */
  @Test
  void noStepIsIdle() {
    Net net = lantern(8, 28, 20, 60, 12);
    PieceChart whole = chart(net);
    Sample.holdsToItsNet(net, new ScoreChart(List.of(whole)), false);
    for (int i = 1; i < whole.steps().size(); i++) {
      List<Step> steps = new ArrayList<>(whole.steps());
      steps.remove(i);
      PieceChart less =
          new PieceChart(
              whole.name(),
              true,
              whole.parallelPart(),
              whole.width(),
              whole.height(),
              whole.ruler(),
              whole.scoreMeasures(),
              whole.cutMeasures(),
              steps,
              whole.toBlank());
      assertThatThrownBy(() -> Sample.holdsToItsNet(net, new ScoreChart(List.of(less)), false))
          .isInstanceOfAny(AssertionError.class, IllegalArgumentException.class);
    }
  }

  @Test
  void offItsMarksAMeasureIsFlagged() {
    PieceChart chart = chart(lantern(8, 28.3, 20, 60, 12));
    Telling tell = Telling.english(Unit.MM, chart.ruler());
    assertThat(chart.offRuler()).isNotEmpty();
    // 28.3 lies 0.2 from 28.5.
    assertThat(String.join(" ", ChartNotes.of(chart, tell)))
        .contains("28.3 mm lies between two marks; the nearest, 28.5 mm, is 0.2 mm too much");
    assertThat(String.join(" ", StepWords.texts(StepText.of(chart, tell)))).contains("about 28.5");
  }

  private static PieceChart chart(Net net) {
    ScoreChart chart = ScoreChart.of(net, Ruler.HALF_MM);
    assertThat(chart.pieces()).hasSize(1);
    return chart.pieces().getFirst();
  }
}
