package facetwright.cli.json;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.json.JsonText;
import facetwright.measure.Unit;
import facetwright.message.Value;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.papers.chart.Measure;
import facetwright.script.design.Design;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tools.jackson.core.JsonGenerator;

/** What several answers tell alike: a folded form, its size, panels, and measures to set; in mm. */
final class FormJson {
  private FormJson() {}

  /** What a form comes to, or null where that is not known. */
  static void form(JsonGenerator json, String name, Net net, Optional<FoldedForm> form) {
    form(json, name, form, f -> Verdict.outcome(net, f));
  }

  /** What a design's form comes to, by the verdict on the design. */
  static void form(JsonGenerator json, String name, Design design) {
    form(json, name, Optional.of(design.folded()), _ -> verdict(design).outcome());
  }

  private static void form(
      JsonGenerator json,
      String name,
      Optional<FoldedForm> form,
      Function<FoldedForm, Verdict.Outcome> outcome) {
    if (form.isEmpty() || form.get().closure() == Closure.NOT_SOLVED) {
      json.writeNullProperty(name);
      return;
    }
    FoldedForm folded = form.get();
    json.writeObjectPropertyStart(name);
    closed(json, outcome.apply(folded));
    json.writeNumberProperty("gap_mm", folded.gap());
    size(json, "size_mm", folded);
    json.writeEndObject();
  }

  /** Whether a design closes: in words, as true, false or null, and what keeps it from it. */
  static void verdict(JsonGenerator json, Design design) {
    Verdict verdict = verdict(design);
    json.writeStringProperty("verdict", verdict.text(design.unit()));
    closed(json, verdict.outcome());
    if (verdict.cause().isEmpty()) {
      json.writeNullProperty("cause");
      return;
    }
    Finding cause = verdict.cause().get();
    json.writeObjectPropertyStart("cause");
    json.writeStringProperty("rule", cause.rule());
    if (cause.place() instanceof Place.AtPanel(int panel)) {
      json.writeStringProperty("panel", design.net().panels().get(panel).name());
    } else {
      json.writeNullProperty("panel");
    }
    if (cause.place() instanceof Place.AtJoin(int join)) {
      join(json, design, join);
    } else {
      json.writeNullProperty("join");
    }
    if (design.folded().closure() == Closure.OPEN) {
      json.writeNumberProperty("gap_mm", design.folded().gap());
    } else {
      json.writeNullProperty("gap_mm");
    }
    JsonText.objects(json, "mends", cause.remedy().values(), value -> value(json, value));
    json.writeEndObject();
  }

  private static Verdict verdict(Design design) {
    return Verdict.of(design.laid(), design.folded(), design.findings());
  }

  private static void join(JsonGenerator json, Design design, int number) {
    Join join = design.net().joins().get(number);
    json.writeObjectPropertyStart("join");
    switch (join) {
      case Join.Seam s -> {
        json.writeStringProperty("kind", s.hold().isGlued() ? "seam" : s.hold().word());
        panels(json, design.net(), s.a().panel(), s.b().panel());
      }
      case Join.Lap l -> {
        json.writeStringProperty("kind", l.hold().isGlued() ? "lap" : l.hold().word());
        panels(json, design.net(), l.under(), l.over());
      }
    }
    json.writeEndObject();
  }

  private static void panels(JsonGenerator json, Net net, int one, int other) {
    json.writeArrayPropertyStart("panels");
    json.writeString(net.panels().get(one).name());
    json.writeString(net.panels().get(other).name());
    json.writeEndArray();
  }

  /** A value that a remedy tells, unrounded. */
  private static void value(JsonGenerator json, Value value) {
    switch (value) {
      case Value.Lengths(List<Double> mm, _) -> {
        json.writeName("mm");
        json.writeArray(mm.stream().mapToDouble(Double::doubleValue).toArray(), 0, mm.size());
      }
      case Value.Angle(double degrees, _) -> json.writeNumberProperty("degrees", degrees);
      case Value.Name(String name, _, List<Value.Place> spot) -> {
        json.writeStringProperty("name", name);
        spot.forEach(p -> place(json, p));
      }
      case Value.Place place -> place(json, place);
      default -> json.writeStringProperty("text", value.text(Unit.MM));
    }
  }

  /** A place from a corner, in mm. */
  private static void place(JsonGenerator json, Value.Place place) {
    json.writeName("at");
    json.writeArray(new double[] {place.x(), place.y()}, 0, 2);
  }

  private static void closed(JsonGenerator json, Verdict.Outcome outcome) {
    switch (outcome) {
      case CLOSES -> json.writeBooleanProperty("closed", true);
      case FAILS -> json.writeBooleanProperty("closed", false);
      case UNKNOWN -> json.writeNullProperty("closed");
    }
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
