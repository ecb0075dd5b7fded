package facetwright.papers.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.measure.Ruler;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.ScoreChart;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Strips that save setting measures. */
class ScoreStripTest {
  private static ScoreChart chart(String name) throws Exception {
    Design d = LibraryDesigns.design(name);
    return ScoreChart.of(d.net(), Ruler.HALF_MM);
  }

  /** Its script: eight columns of 28 mm and a seam, rows of 28, 60, 60 and 28 mm. */
  @Test
  void theLanternsColumnsAndRows() throws Exception {
    List<ScoreStrip> strips = ScoreStrip.of(chart("harbour-lantern"));
    assertThat(strips).hasSize(2);
    assertThat(strips.getFirst().isAcross()).isTrue();
    assertThat(strips.getFirst().length()).isCloseTo(8 * 28 + 12, within(1e-6));
    assertThat(strips.getFirst().ticks().stream().map(t -> Math.round(t.at())))
        .containsExactly(28L, 56L, 84L, 112L, 140L, 168L, 196L, 224L);
    assertThat(strips.getLast().ticks().stream().map(t -> Math.round(t.at())))
        .containsExactly(28L, 88L, 148L);
  }

  /** A tick lies where a maker who follows the chart scores the line of that name. */
  @Test
  void ticksLieWhereTheChartScores() throws Exception {
    for (String name : List.of("harbour-lantern", "boathouse", "supper-tray")) {
      ScoreChart chart = chart(name);
      List<Replay.Tag> tags =
          Replay.frames(chart.pieces().getFirst().steps()).stream()
              .flatMap(f -> f.tags().stream())
              .filter(Replay.Tag::isLine)
              .toList();
      for (ScoreStrip strip : ScoreStrip.of(chart)) {
        for (ScoreStrip.Tick tick : strip.ticks()) {
          double scored =
              tags.stream()
                  .filter(t -> t.text().equals(tick.label()))
                  .mapToDouble(t -> strip.isAcross() ? t.at().x() : strip.length() - t.at().y())
                  .findFirst()
                  .orElseThrow();
          assertThat(tick.at()).isCloseTo(scored, within(1e-6));
        }
      }
    }
  }

  /** Two lines a side need no strip, and a traced net has none. */
  @Test
  void onlyWhereItSavesWork() throws Exception {
    assertThat(ScoreStrip.of(chart("supper-tray"))).isEmpty();
    assertThat(ScoreStrip.of(chart("beacon-dodecahedron"))).isEmpty();
  }
}
