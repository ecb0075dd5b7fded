package facetwright.cli;

import facetwright.check.Finding;
import facetwright.check.Verdict;
import facetwright.fold.Closure;
import facetwright.json.JsonText;
import facetwright.script.Design;
import facetwright.turn.sweep.Sweep;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;

/** A dial over its range as one JSON object; lengths in mm. */
final class SweepJson {
  private SweepJson() {}

  static String of(Design now, Sweep sweep) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", now.title());
          json.writeStringProperty("unit", sweep.unit().symbol());
          json.writeStringProperty("dial", sweep.dial().name());
          json.writeNumberProperty("now", sweep.dial().value());
          json.writeArrayPropertyStart("steps");
          for (Sweep.Step step : sweep.steps()) {
            json.writeStartObject();
            json.writeNumberProperty("value", step.value());
            json.writeStringProperty("typed", step.typed());
            if (step.design().isPresent()) {
              design(json, step.design().get(), step.measures());
            } else {
              json.writeStringProperty("refused", step.why());
            }
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static void design(JsonGenerator json, Design d, int measures) {
    json.writeStringProperty("verdict", Verdict.of(d.laid(), d.folded(), d.unit()));
    boolean known = d.folded().closure() != Closure.NOT_SOLVED;
    if (known) {
      json.writeBooleanProperty("closed", d.folded().canBeMade(d.net()));
      json.writeNumberProperty("gap_mm", d.folded().apart(d.net()));
      json.writeNumberProperty("strain", d.folded().strain());
      json.writeArrayPropertyStart("size_mm");
      json.writeNumber(d.folded().measures().width());
      json.writeNumber(d.folded().measures().depth());
      json.writeNumber(d.folded().measures().height());
      json.writeEndArray();
    } else {
      json.writeNullProperty("closed");
      json.writeNullProperty("gap_mm");
      json.writeNullProperty("strain");
      json.writeNullProperty("size_mm");
    }
    json.writeObjectPropertyStart("sheet");
    json.writeStringProperty("name", d.laid().stock().name());
    json.writeBooleanProperty("fits", d.laid().fits());
    json.writeNumberProperty("count", d.laid().sheets());
    json.writeEndObject();
    json.writeNumberProperty("different_measures", measures);
    json.writeArrayPropertyStart("findings");
    for (Finding f : d.findings()) {
      json.writeStartObject();
      json.writeStringProperty("rule", f.rule());
      json.writeStringProperty("severity", f.severity().name().toLowerCase(Locale.ROOT));
      json.writeStringProperty("message", f.message());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
