package facetwright.cli.json;

import facetwright.aim.Goal;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.json.JsonText;
import facetwright.script.design.Design;
import java.util.Iterator;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;

/** What an aim came to as one JSON object. */
public final class AimJson {
  private AimJson() {}

  public static String of(Design design, Outcome outcome, String command) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", design.unit().symbol());
          json.writeBooleanProperty("met", outcome.isMet());
          JsonText.objects(json, "dials", outcome.turns(), turn -> turn(json, turn));
          Iterator<String> words = OutcomeText.goals(outcome).iterator();
          JsonText.objects(
              json, "goals", outcome.goals(), goal -> goal(json, outcome, goal, words.next()));
          JsonText.objects(
              json,
              "stops",
              outcome.stops(),
              stop -> {
                json.writeStringProperty("dial", stop.knob().name());
                json.writeNumberProperty("value", stop.value());
                json.writeStringProperty("end", stop.isUpper() ? "greatest" : "least");
              });
          json.writeStringProperty("hurdle", outcome.hurdle());
          json.writeNumberProperty("trials", outcome.trials());
          json.writeBooleanProperty("gave_up", outcome.spent());
          json.writeStringProperty("make", command);
        });
  }

  private static void turn(JsonGenerator json, Outcome.Turn turn) {
    json.writeStringProperty("name", turn.knob().name());
    json.writeNumberProperty("now", turn.knob().now());
    json.writeNumberProperty("exact", turn.exact());
    json.writeNumberProperty("set", turn.value());
    json.writeStringProperty("typed", turn.typed());
  }

  private static void goal(
      JsonGenerator json, Outcome outcome, Outcome.Reached reached, String message) {
    switch (reached.goal()) {
      case Goal.Reach reach -> {
        int power = reach.measure().power();
        json.writeStringProperty("goal", reach.measure().word());
        json.writeStringProperty("unit", power == 1 ? "mm" : "mm" + power);
        json.writeNumberProperty("wanted", reach.wanted());
        if (outcome.set().knows(reach.measure())) {
          json.writeNumberProperty("exact", outcome.exact().get(reach.measure()));
          json.writeNumberProperty("set", outcome.set().get(reach.measure()));
          json.writeNumberProperty("miss", outcome.miss(reach));
        }
      }
      case Goal.Ring ring -> {
        json.writeStringProperty("goal", "ring");
        json.writeNumberProperty("wanted", ring.count());
        json.writeStringProperty("unit", "mm");
        if (ring.isKnown(outcome.set())) {
          json.writeNumberProperty("exact", ring.of(outcome.exact()));
          json.writeNumberProperty("set", ring.of(outcome.set()));
          json.writeNumberProperty("miss", outcome.miss(ring));
        }
      }
      case Goal.Fit fit -> {
        json.writeStringProperty("goal", "fits");
        json.writeStringProperty("wanted", fit.sheet().name());
        json.writeBooleanProperty("exact", outcome.exact().lie().apply(fit.sheet()).fits());
        json.writeBooleanProperty("set", outcome.set().lie().apply(fit.sheet()).fits());
      }
    }
    json.writeStringProperty(
        "status", reached.status().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    json.writeStringProperty("message", message);
  }
}
