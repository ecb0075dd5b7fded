package facetwright.cli;

import facetwright.aim.Outcome;
import facetwright.fold.Closure;
import facetwright.geom.Motion2;
import facetwright.json.JsonText;
import facetwright.script.Design;
import facetwright.turn.fit.Fitting;
import tools.jackson.core.JsonGenerator;

/** What a fitting came to as one JSON object; lengths in mm. */
final class FitJson {
  private FitJson() {}

  static String of(Design design, Fitting fitting, String command) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", design.unit().symbol());
          json.writeStringProperty("sheet", fitting.sheet().name());
          json.writeNumberProperty("wanted", fitting.copies());
          json.writeBooleanProperty("met", fitting.isMet());
          json.writeArrayPropertyStart("dials");
          for (Outcome.Turn turn : fitting.outcome().turns()) {
            json.writeStartObject();
            json.writeStringProperty("name", turn.knob().name());
            json.writeNumberProperty("now", turn.knob().now());
            json.writeNumberProperty("set", turn.value());
            json.writeStringProperty("typed", turn.typed());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeNumberProperty("per_sheet_now", fitting.before().count());
          json.writeNumberProperty("per_sheet", fitting.after().count());
          size(json, "size_now_mm", design);
          size(json, "size_mm", fitting.design());
          copies(json, fitting);
          json.writeNumberProperty("trials", fitting.outcome().trials());
          json.writeStringProperty("make", command);
        });
  }

  private static void size(JsonGenerator json, String name, Design design) {
    if (design.folded().closure() == Closure.NOT_SOLVED) {
      json.writeNullProperty(name);
      return;
    }
    json.writeArrayPropertyStart(name);
    json.writeNumber(design.folded().measures().width());
    json.writeNumber(design.folded().measures().depth());
    json.writeNumber(design.folded().measures().height());
    json.writeEndArray();
  }

  /** Where each copy lies: a turn in degrees about the net's origin, then a shift. */
  private static void copies(JsonGenerator json, Fitting fitting) {
    json.writeArrayPropertyStart("copies");
    for (Motion2 m : fitting.after().plan().copies()) {
      json.writeStartObject();
      json.writeNumberProperty("turn", Math.toDegrees(Math.atan2(m.sin(), m.cos())));
      json.writeNumberProperty("x_mm", m.shift().x());
      json.writeNumberProperty("y_mm", m.shift().y());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
