package facetwright.cli.json;

import facetwright.aim.Grid;
import facetwright.aim.Knob;
import facetwright.aim.Measure;
import facetwright.aim.Slope;
import facetwright.aim.Slopes;
import facetwright.json.JsonText;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;

/** A design's dials and slopes as one JSON object; measures in mm, mm² and mm³. */
public final class DialsJson {
  private DialsJson() {}

  public static String of(Design design, Slopes slopes) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", design.unit().symbol());
          json.writeObjectPropertyStart("now");
          for (Measure m : Measure.values()) {
            if (slopes.now().knows(m)) {
              json.writeNumberProperty(name(m), slopes.now().get(m));
            }
          }
          json.writeEndObject();
          JsonText.objects(json, "dials", slopes.all(), of -> dial(json, design, of));
          JsonText.objects(
              json,
              "words",
              design.dials().stream().filter(Dial::isWord).toList(),
              dial -> {
                json.writeStringProperty("name", dial.name());
                json.writeStringProperty("value", DialText.text(dial, dial.value(), design.unit()));
                JsonText.strings(json, "of", dial.words());
              });
          json.writeNumberProperty("trials", slopes.trials());
        });
  }

  private static void dial(JsonGenerator json, Design design, Slopes.OfKnob of) {
    Knob knob = of.knob();
    json.writeStringProperty("name", knob.name());
    json.writeStringProperty("counts", knob.counts().name().toLowerCase(Locale.ROOT));
    json.writeBooleanProperty("length", knob.isLength());
    json.writeNumberProperty("value", knob.now());
    json.writeNumberProperty("from", knob.from());
    json.writeNumberProperty("to", knob.to());
    json.writeNumberProperty("mark", Grid.usual(design.unit()).apart(knob, design.unit()));
    json.writeStringProperty("per", knob.isStepped() ? "step" : "one");
    json.writeObjectPropertyStart("slopes");
    for (Slope slope : of.slopes()) {
      json.writeObjectPropertyStart(name(slope.measure()));
      json.writeNumberProperty("value", slope.value());
      json.writeNumberProperty("error", slope.error());
      json.writeBooleanProperty("steady", slope.isSteady());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private static String name(Measure measure) {
    String word = measure.word().replace(' ', '_');
    return switch (measure.power()) {
      case 0 -> word;
      case 1 -> word + "_mm";
      case 2 -> word + "_mm2";
      default -> word + "_mm3";
    };
  }
}
