package facetwright.cli.json;

import facetwright.fold.making.Step;
import facetwright.json.JsonText;
import facetwright.net.Net;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import facetwright.net.fitting.Label;
import facetwright.script.design.Design;
import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.core.JsonGenerator;

/** What goes in and on, as fields of a design. */
final class FittingsJson {
  private FittingsJson() {}

  static void write(JsonGenerator json, Design design) {
    Net net = design.net();
    List<Step> steps = net.fittings().all().isEmpty() ? List.of() : design.gluing().steps();
    List<Integer> places =
        IntStream.range(0, steps.size())
            .filter(i -> steps.get(i) instanceof Step.Fit)
            .boxed()
            .toList();
    JsonText.objects(json, "fittings", places, i -> fitting(json, net, i, (Step.Fit) steps.get(i)));
    JsonText.objects(json, "labels", net.fittings().labels(), l -> label(json, net, l));
  }

  private static void fitting(JsonGenerator json, Net net, int place, Step.Fit step) {
    Fitting fitting = net.fittings().all().get(step.fitting());
    switch (fitting.thing()) {
      case Extra.Ribbon r -> {
        json.writeStringProperty("kind", "ribbon");
        json.writeNumberProperty("length_mm", r.length());
        json.writeNumberProperty("width_mm", r.width());
        JsonText.strings(
            json, "through", r.through().stream().map(p -> net.panels().get(p).name()).toList());
        json.writeStringProperty("tied", r.tied());
      }
      case Extra.Light l -> {
        json.writeStringProperty("kind", "light");
        json.writeStringProperty("what", l.kind());
        json.writeNumberProperty("across_mm", l.across());
        json.writeNumberProperty("height_mm", l.height());
      }
      case Extra.Filling f -> {
        json.writeStringProperty("kind", "filling");
        json.writeStringProperty("what", f.what());
        json.writeNumberProperty("count", f.count());
        if (f.hasVolume()) {
          json.writeNumberProperty("volume_mm3", f.volume());
        } else {
          json.writeNullProperty("volume_mm3");
        }
      }
      case Extra.Note n -> {
        json.writeStringProperty("kind", "note");
        json.writeStringProperty("what", n.text());
      }
    }
    // Among all that is glued and goes in, counted from 1.
    json.writeNumberProperty("step", place + 1);
    json.writeNumberProperty("line", fitting.site().line());
  }

  private static void label(JsonGenerator json, Net net, Label label) {
    json.writeStringProperty("panel", net.panels().get(label.panel()).name());
    json.writeStringProperty("text", label.asked().text());
    json.writeBooleanProperty("cut", label.asked().cut());
    json.writeNumberProperty("line", label.asked().site().line());
  }
}
