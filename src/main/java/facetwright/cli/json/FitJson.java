package facetwright.cli.json;

import facetwright.adjust.fit.Fitting;
import facetwright.json.JsonText;
import facetwright.script.design.Design;
import tools.jackson.core.JsonGenerator;

/** What a fitting came to as one JSON object; lengths in mm. */
public final class FitJson {
  private FitJson() {}

  public static String of(Design design, Fitting fitting, String command) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", design.unit().symbol());
          json.writeStringProperty("sheet", fitting.sheet().name());
          json.writeNumberProperty("wanted", fitting.copies());
          json.writeBooleanProperty("met", fitting.isMet());
          JsonText.objects(
              json,
              "dials",
              fitting.outcome().turns(),
              turn -> {
                json.writeStringProperty("name", turn.knob().name());
                json.writeNumberProperty("now", turn.knob().now());
                json.writeNumberProperty("set", turn.value());
                json.writeStringProperty("typed", turn.typed());
              });
          json.writeNumberProperty("per_sheet_now", fitting.before().count());
          json.writeNumberProperty("per_sheet", fitting.after().count());
          FormJson.size(json, "size_now_mm", design.folded());
          FormJson.size(json, "size_mm", fitting.design().folded());
          copies(json, fitting);
          json.writeNumberProperty("trials", fitting.outcome().trials());
          json.writeStringProperty("make", command);
        });
  }

  /** Where each copy lies: a turn in degrees about the net's origin, then a shift. */
  private static void copies(JsonGenerator json, Fitting fitting) {
    JsonText.objects(
        json,
        "copies",
        fitting.after().plan().copies(),
        m -> {
          json.writeNumberProperty("turn", Math.toDegrees(Math.atan2(m.sin(), m.cos())));
          json.writeNumberProperty("x_mm", m.shift().x());
          json.writeNumberProperty("y_mm", m.shift().y());
        });
  }
}
