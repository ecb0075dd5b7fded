package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.aim.Outcome;
import facetwright.fold.Closure;
import facetwright.geom.Motion2;
import facetwright.script.Design;
import facetwright.turn.fit.Fitting;
import java.io.IOException;

/** What a fitting came to as one JSON object; lengths in mm. */
final class FitJson {
  private FitJson() {}

  static String of(Design design, Fitting fitting, String command) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeStringField("unit", design.unit().symbol());
          json.writeStringField("sheet", fitting.sheet().name());
          json.writeNumberField("wanted", fitting.copies());
          json.writeBooleanField("met", fitting.isMet());
          json.writeArrayFieldStart("dials");
          for (Outcome.Turn turn : fitting.outcome().turns()) {
            json.writeStartObject();
            json.writeStringField("name", turn.knob().name());
            json.writeNumberField("now", turn.knob().now());
            json.writeNumberField("set", turn.value());
            json.writeStringField("typed", turn.typed());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeNumberField("per_sheet_now", fitting.before().count());
          json.writeNumberField("per_sheet", fitting.after().count());
          size(json, "size_now_mm", design);
          size(json, "size_mm", fitting.design());
          copies(json, fitting);
          json.writeNumberField("trials", fitting.outcome().trials());
          json.writeStringField("make", command);
        });
  }

  private static void size(JsonGenerator json, String name, Design design) throws IOException {
    if (design.folded().closure() == Closure.NOT_SOLVED) {
      json.writeNullField(name);
      return;
    }
    json.writeArrayFieldStart(name);
    json.writeNumber(design.folded().measures().width());
    json.writeNumber(design.folded().measures().depth());
    json.writeNumber(design.folded().measures().height());
    json.writeEndArray();
  }

  /** Where each copy lies: a turn in degrees about the net's origin, then a shift. */
  private static void copies(JsonGenerator json, Fitting fitting) throws IOException {
    json.writeArrayFieldStart("copies");
    for (Motion2 m : fitting.after().plan().copies()) {
      json.writeStartObject();
      json.writeNumberField("turn", Math.toDegrees(Math.atan2(m.sin(), m.cos())));
      json.writeNumberField("x_mm", m.shift().x());
      json.writeNumberField("y_mm", m.shift().y());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
