package facetwright.cli.json;

import facetwright.adjust.sweep.Sweep;
import facetwright.fold.pose.Closure;
import facetwright.json.JsonText;
import facetwright.script.design.Design;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;

/** A dial over its range as one JSON object; lengths in mm. */
public final class SweepJson {
  private SweepJson() {}

  public static String of(Design now, Sweep sweep) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", now.title());
          json.writeStringProperty("unit", sweep.unit().symbol());
          json.writeStringProperty("dial", sweep.dial().name());
          json.writeNumberProperty("now", sweep.dial().value());
          JsonText.objects(
              json,
              "steps",
              sweep.steps(),
              step -> {
                json.writeNumberProperty("value", step.value());
                json.writeStringProperty("typed", step.typed());
                if (step.design().isPresent()) {
                  design(json, step.design().get(), step.measures());
                } else {
                  json.writeStringProperty("refused", step.why());
                }
              });
        });
  }

  private static void design(JsonGenerator json, Design d, int measures) {
    FormJson.verdict(json, d);
    boolean known = d.folded().closure() != Closure.NOT_SOLVED;
    if (known) {
      json.writeNumberProperty("gap_mm", d.folded().apart(d.net()));
      json.writeNumberProperty("strain", d.folded().strain());
      FormJson.size(json, "size_mm", d.folded());
    } else {
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
    JsonText.objects(
        json,
        "findings",
        d.findings(),
        f -> {
          json.writeStringProperty("rule", f.rule());
          json.writeStringProperty("severity", f.severity().name().toLowerCase(Locale.ROOT));
          json.writeStringProperty("message", f.message());
        });
  }
}
