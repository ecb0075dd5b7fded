package facetwright.cli.json;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.json.JsonText;
import facetwright.net.Net;
import facetwright.papers.chart.Measure;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/** What several answers tell alike: a folded form, its size, panels, and measures to set; in mm. */
final class FormJson {
  private FormJson() {}

  /** What a form comes to, or null where that is not known. */
  static void form(JsonGenerator json, String name, Net net, Optional<FoldedForm> form) {
    if (form.isEmpty() || form.get().closure() == Closure.NOT_SOLVED) {
      json.writeNullProperty(name);
      return;
    }
    FoldedForm folded = form.get();
    json.writeObjectPropertyStart(name);
    json.writeBooleanProperty("closed", folded.canBeMade(net));
    json.writeNumberProperty("gap_mm", folded.gap());
    size(json, "size_mm", folded);
    json.writeEndObject();
  }

  /** Width, depth and height of a form, or null where they are not known. */
  static void size(JsonGenerator json, String name, FoldedForm form) {
    if (form.closure() == Closure.NOT_SOLVED) {
      json.writeNullProperty(name);
      return;
    }
    Measures m = form.measures();
    json.writeName(name);
    json.writeArray(new double[] {m.width(), m.depth(), m.height()}, 0, 3);
  }

  /** Panels by their names. */
  static void panels(JsonGenerator json, String name, Net net, List<Integer> panels) {
    JsonText.strings(json, name, panels.stream().map(p -> net.panels().get(p).name()).toList());
  }

  /** What is set, as the ruler reads it and by how much that is off. */
  static void measures(JsonGenerator json, String name, List<Measure> measures) {
    JsonText.objects(
        json,
        name,
        measures,
        m -> {
          json.writeNumberProperty("mm", m.mm());
          json.writeStringProperty("reads", m.reading().text());
          json.writeNumberProperty("off_mm", m.isOnRuler() ? 0 : m.reading().errorMm());
        });
  }
}
