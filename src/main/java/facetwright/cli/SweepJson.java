package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.check.Finding;
import facetwright.check.Verdict;
import facetwright.fold.Closure;
import facetwright.script.Design;
import facetwright.turn.sweep.Sweep;
import java.io.IOException;
import java.util.Locale;

/** A dial over its range as one JSON object; lengths in mm. */
final class SweepJson {
  private SweepJson() {}

  static String of(Design now, Sweep sweep) {
    return Json.object(
        json -> {
          json.writeStringField("title", now.title());
          json.writeStringField("unit", sweep.unit().symbol());
          json.writeStringField("dial", sweep.dial().name());
          json.writeNumberField("now", sweep.dial().value());
          json.writeArrayFieldStart("steps");
          for (Sweep.Step step : sweep.steps()) {
            json.writeStartObject();
            json.writeNumberField("value", step.value());
            json.writeStringField("typed", step.typed());
            if (step.design().isPresent()) {
              design(json, step.design().get(), step.measures());
            } else {
              json.writeStringField("refused", step.why());
            }
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static void design(JsonGenerator json, Design d, int measures) throws IOException {
    json.writeStringField("verdict", Verdict.of(d.laid(), d.folded(), d.unit()));
    boolean known = d.folded().closure() != Closure.NOT_SOLVED;
    if (known) {
      json.writeBooleanField("closed", d.folded().canBeMade(d.net()));
      json.writeNumberField("gap_mm", d.folded().apart(d.net()));
      json.writeNumberField("strain", d.folded().strain());
      json.writeArrayFieldStart("size_mm");
      json.writeNumber(d.folded().measures().width());
      json.writeNumber(d.folded().measures().depth());
      json.writeNumber(d.folded().measures().height());
      json.writeEndArray();
    } else {
      json.writeNullField("closed");
      json.writeNullField("gap_mm");
      json.writeNullField("strain");
      json.writeNullField("size_mm");
    }
    json.writeObjectFieldStart("sheet");
    json.writeStringField("name", d.laid().stock().name());
    json.writeBooleanField("fits", d.laid().fits());
    json.writeNumberField("count", d.laid().sheets());
    json.writeEndObject();
    json.writeNumberField("different_measures", measures);
    json.writeArrayFieldStart("findings");
    for (Finding f : d.findings()) {
      json.writeStartObject();
      json.writeStringField("rule", f.rule());
      json.writeStringField("severity", f.severity().name().toLowerCase(Locale.ROOT));
      json.writeStringField("message", f.message());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
