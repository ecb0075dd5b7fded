package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.chart.StepWords;
import facetwright.script.Design;
import java.io.IOException;
import java.util.List;

/** A score chart as one JSON object. */
final class ChartJson {
  private ChartJson() {}

  static String of(Design design, Ruler ruler, ScoreChart chart) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeStringField("unit", design.unit().symbol());
          json.writeStringField("ruler", ruler.name());
          json.writeNumberField("different_measures", chart.distinctMeasures());
          RoundJson.form(json, "as_set", design.net(), AsSet.form(design.laid(), chart));
          json.writeArrayFieldStart("pieces");
          for (PieceChart piece : chart.pieces()) {
            piece(json, piece, design.unit());
          }
          json.writeEndArray();
        });
  }

  private static void piece(JsonGenerator json, PieceChart piece, Unit unit) throws IOException {
    json.writeStartObject();
    json.writeStringField("with", piece.name());
    json.writeStringField("for", piece.isForBoard() ? "board" : "tracing");
    json.writeNumberField("width_mm", piece.width());
    json.writeNumberField("height_mm", piece.height());
    json.writeNumberField("parallel_part", piece.parallelPart());
    measures(json, "score_measures", piece.scoreMeasures());
    measures(json, "cut_measures", piece.cutMeasures());
    json.writeArrayFieldStart("notes");
    for (String note : ChartNotes.of(piece, unit)) {
      json.writeString(note);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("steps");
    List<String> words = StepWords.of(piece);
    for (int i = 0; i < words.size(); i++) {
      json.writeStartObject();
      json.writeStringField("does", does(piece.steps().get(i)));
      json.writeStringField("words", words.get(i));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void measures(JsonGenerator json, String name, List<Measure> measures)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (Measure m : measures) {
      json.writeStartObject();
      json.writeNumberField("mm", m.mm());
      json.writeStringField("reads", m.reading().text());
      json.writeNumberField("off_mm", m.isOnRuler() ? 0 : m.reading().errorMm());
      json.writeEndObject();
    }
    json.writeEndArray();
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
      case Step.Slits _ -> "slits";
      case Step.CutAway _ -> "cut away";
    };
  }
}
