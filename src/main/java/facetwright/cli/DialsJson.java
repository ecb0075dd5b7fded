package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.aim.Grid;
import facetwright.aim.Knob;
import facetwright.aim.Measure;
import facetwright.aim.Slope;
import facetwright.aim.Slopes;
import facetwright.script.Design;
import java.io.IOException;

/** A design's dials and slopes as one JSON object; measures in mm, mm² and mm³. */
final class DialsJson {
  private DialsJson() {}

  static String of(Design design, Slopes slopes) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeStringField("unit", design.unit().symbol());
          json.writeObjectFieldStart("now");
          for (Measure m : Measure.values()) {
            if (slopes.now().knows(m)) {
              json.writeNumberField(name(m), slopes.now().get(m));
            }
          }
          json.writeEndObject();
          json.writeArrayFieldStart("dials");
          for (Slopes.OfKnob of : slopes.all()) {
            dial(json, design, of);
          }
          json.writeEndArray();
          json.writeNumberField("trials", slopes.trials());
        });
  }

  private static void dial(JsonGenerator json, Design design, Slopes.OfKnob of) throws IOException {
    Knob knob = of.knob();
    json.writeStartObject();
    json.writeStringField("name", knob.name());
    json.writeBooleanField("length", knob.isLength());
    json.writeNumberField("value", knob.now());
    json.writeNumberField("from", knob.from());
    json.writeNumberField("to", knob.to());
    json.writeNumberField("mark", Grid.usual(design.unit()).apart(knob, design.unit()));
    json.writeStringField("per", knob.isStepped() ? "step" : "one");
    json.writeObjectFieldStart("slopes");
    for (Slope slope : of.slopes()) {
      json.writeObjectFieldStart(name(slope.measure()));
      json.writeNumberField("value", slope.value());
      json.writeNumberField("error", slope.error());
      json.writeBooleanField("steady", slope.isSteady());
      json.writeEndObject();
    }
    json.writeEndObject();
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
