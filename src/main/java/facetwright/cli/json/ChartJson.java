package facetwright.cli.json;

import facetwright.json.JsonText;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.chart.StepText;
import facetwright.papers.chart.StepWords;
import facetwright.script.design.Design;
import java.util.Iterator;
import tools.jackson.core.JsonGenerator;

/** A score chart as one JSON object. */
public final class ChartJson {
  private ChartJson() {}

  public static String of(Design design, Ruler ruler, ScoreChart chart) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", design.unit().symbol());
          json.writeStringProperty("ruler", ruler.name());
          json.writeNumberProperty("different_measures", chart.distinctMeasures());
          FormJson.form(
              json, "as_set", design.net(), AsSet.of(design.laid(), chart).map(AsSet.Result::form));
          JsonText.objects(
              json, "pieces", chart.pieces(), piece -> piece(json, piece, design.unit()));
        });
  }

  private static void piece(JsonGenerator json, PieceChart piece, Unit unit) {
    Telling tell = Telling.english(unit, piece.ruler());
    json.writeStringProperty("with", piece.name());
    json.writeStringProperty("for", piece.isForBoard() ? "board" : "tracing");
    json.writeNumberProperty("width_mm", piece.width());
    json.writeNumberProperty("height_mm", piece.height());
    json.writeNumberProperty("parallel_part", piece.parallelPart());
    FormJson.measures(json, "score_measures", piece.scoreMeasures());
    FormJson.measures(json, "cut_measures", piece.cutMeasures());
    JsonText.strings(json, "notes", ChartNotes.of(piece, tell));
    Iterator<StepWords> words = StepText.of(piece, tell).iterator();
    JsonText.objects(
        json,
        "steps",
        piece.steps(),
        step -> {
          json.writeStringProperty("does", does(step));
          json.writeStringProperty("words", words.next().text());
        });
  }

  private static String does(Step step) {
    return switch (step) {
      case Step.Trim _ -> "trim";
      case Step.FullScores _ -> "full scores";
      case Step.ShortScores _ -> "short scores";
      case Step.SpotScores _ -> "scores from point to point";
      case Step.Points _ -> "points";
      case Step.Punch _ -> "punch";
      case Step.Windows _ -> "windows";
      case Step.Slits s -> s.isForTongues() ? "cuts for tongues" : "slits";
      case Step.CutAway _ -> "cut away";
    };
  }
}
