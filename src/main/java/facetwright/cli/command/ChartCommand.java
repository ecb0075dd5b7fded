package facetwright.cli.command;

import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.RulerOption;
import facetwright.cli.json.ChartJson;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.StepText;
import facetwright.papers.chart.StepWords;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Tells how to score and cut a design, step by step. */
@Command(
    name = "chart",
    mixinStandardHelpOptions = true,
    description = "Tells how to score and cut a design, step by step, for the ruler you own.")
public final class ChartCommand implements Callable<Integer> {
  @Mixin private Asked asked;

  @Mixin private RulerOption ruler;

  @Override
  public Integer call() throws Exception {
    Design made = asked.design().evaluate();
    Ruler marks = ruler.of(made.unit());
    ScoreChart chart = ScoreChart.of(made.net(), marks);
    asked.answer(() -> ChartJson.of(made, marks, chart), () -> lines(made, marks, chart));
    return Exit.of(made.isSound());
  }

  private static List<String> lines(Design made, Ruler ruler, ScoreChart chart) {
    Telling tell = Telling.english(made.unit(), ruler);
    List<String> lines = new ArrayList<>();
    lines.add(made.title() + ": score chart for a ruler of " + ruler.name());
    for (int i = 0; i < chart.pieces().size(); i++) {
      PieceChart piece = chart.pieces().get(i);
      if (chart.pieces().size() > 1) {
        lines.add("Piece " + (i + 1) + ", with " + piece.name());
      }
      ChartNotes.of(piece, tell).forEach(n -> lines.add("  " + n));
      if (piece.isByTemplate()) {
        continue;
      }
      List<String> words = StepWords.texts(StepText.of(piece, tell));
      for (int k = 0; k < words.size(); k++) {
        lines.add("  " + (k + 1) + ". " + words.get(k).replace("\n", "\n     "));
      }
      lines.add("  " + (words.size() + 1) + ". " + ChartNotes.folding(made.net(), i, tell));
    }
    AsSet.text(made.laid(), made.folded(), chart, tell).ifPresent(w -> lines.add("  " + w));
    ChartNotes.cautions(tell).forEach(c -> lines.add("  " + c));
    return lines;
  }
}
