package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.aim.Goal;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.script.Design;
import java.io.IOException;
import java.util.Locale;

/** What an aim came to as one JSON object. */
final class AimJson {
  private AimJson() {}

  static String of(Design design, Outcome outcome, String command) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeStringField("unit", design.unit().symbol());
          json.writeBooleanField("met", outcome.isMet());
          json.writeArrayFieldStart("dials");
          for (Outcome.Turn turn : outcome.turns()) {
            turn(json, turn);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("goals");
          for (int g = 0; g < outcome.goals().size(); g++) {
            goal(json, outcome, outcome.goals().get(g), OutcomeText.goals(outcome).get(g));
          }
          json.writeEndArray();
          json.writeArrayFieldStart("stops");
          for (Outcome.Stop stop : outcome.stops()) {
            json.writeStartObject();
            json.writeStringField("dial", stop.knob().name());
            json.writeNumberField("value", stop.value());
            json.writeStringField("end", stop.isUpper() ? "greatest" : "least");
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeStringField("hurdle", outcome.hurdle());
          json.writeNumberField("trials", outcome.trials());
          json.writeBooleanField("gave_up", outcome.spent());
          json.writeStringField("make", command);
        });
  }

  private static void turn(JsonGenerator json, Outcome.Turn turn) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", turn.knob().name());
    json.writeNumberField("now", turn.knob().now());
    json.writeNumberField("exact", turn.exact());
    json.writeNumberField("set", turn.value());
    json.writeStringField("typed", turn.typed());
    json.writeEndObject();
  }

  private static void goal(
      JsonGenerator json, Outcome outcome, Outcome.Reached reached, String message)
      throws IOException {
    json.writeStartObject();
    switch (reached.goal()) {
      case Goal.Reach reach -> {
        int power = reach.measure().power();
        json.writeStringField("goal", reach.measure().word());
        json.writeStringField("unit", power == 1 ? "mm" : "mm" + power);
        json.writeNumberField("wanted", reach.wanted());
        if (outcome.set().knows(reach.measure())) {
          json.writeNumberField("exact", outcome.exact().get(reach.measure()));
          json.writeNumberField("set", outcome.set().get(reach.measure()));
          json.writeNumberField("miss", outcome.miss(reach));
        }
      }
      case Goal.Fit fit -> {
        json.writeStringField("goal", "fits");
        json.writeStringField("wanted", fit.sheet().name());
        json.writeBooleanField("exact", outcome.exact().lie().apply(fit.sheet()).fits());
        json.writeBooleanField("set", outcome.set().lie().apply(fit.sheet()).fits());
      }
    }
    json.writeStringField(
        "status", reached.status().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    json.writeStringField("message", message);
    json.writeEndObject();
  }
}
