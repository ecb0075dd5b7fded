package facetwright.cli;

import facetwright.fold.Closure;
import facetwright.fold.FoldedForm;
import facetwright.geom.Unit;
import facetwright.json.JsonText;
import facetwright.net.Net;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.ToSet;
import facetwright.script.Design;
import facetwright.turn.round.Constant;
import facetwright.turn.round.Draft;
import facetwright.turn.round.Rounding;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/** A rounding as one JSON object; lengths in mm. */
final class RoundJson {
  private RoundJson() {}

  static String of(Design design, Rounding rounding, String command) {
    Unit unit = design.unit();
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", unit.symbol());
          json.writeStringProperty("ruler", rounding.ruler().name());
          json.writeArrayPropertyStart("dials");
          for (Rounding.Turn turn : rounding.turns()) {
            json.writeStartObject();
            json.writeStringProperty("name", turn.knob().name());
            json.writeNumberProperty("was", turn.knob().now());
            json.writeNumberProperty("value", turn.value());
            json.writeStringProperty("typed", turn.typed(rounding.ruler(), unit));
            json.writeEndObject();
          }
          json.writeEndArray();
          draft(json, "before", rounding.before());
          draft(json, "after", rounding.after());
          json.writeArrayPropertyStart("constants");
          for (Constant constant : rounding.constants()) {
            json.writeStartObject();
            json.writeNumberProperty("line", constant.site().line());
            json.writeNumberProperty("column", constant.site().column());
            json.writeStringProperty("text", constant.text());
            json.writeStringProperty("becomes", constant.becomes());
            json.writeNumberProperty("mm", constant.mm());
            json.writeNumberProperty("fewer_off", constant.fewer());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeNumberProperty("trials", rounding.trials());
          json.writeStringProperty("make", command);
        });
  }

  private static void draft(JsonGenerator json, String name, Draft draft) {
    json.writeObjectPropertyStart(name);
    json.writeNumberProperty("form_off", draft.toSet().formOff());
    json.writeNumberProperty("cuts_off", draft.toSet().cutsOff());
    json.writeNumberProperty("most_off_mm", draft.toSet().mostOff());
    json.writeBooleanProperty("fits", draft.design().laid().fits());
    form(json, "folded", draft.design().net(), Optional.of(draft.design().folded()));
    form(json, "as_set", draft.design().net(), Rounding.asSet(draft));
    measures(json, "form_measures", draft.toSet().form());
    measures(json, "cut_measures", draft.toSet().cuts());
    json.writeEndObject();
  }

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
    json.writeArrayPropertyStart("size_mm");
    json.writeNumber(folded.measures().width());
    json.writeNumber(folded.measures().depth());
    json.writeNumber(folded.measures().height());
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void measures(JsonGenerator json, String name, List<Measure> all) {
    json.writeArrayPropertyStart(name);
    for (Measure m : ToSet.distinct(all)) {
      json.writeStartObject();
      json.writeNumberProperty("mm", m.mm());
      json.writeStringProperty("reads", m.reading().text());
      json.writeNumberProperty("off_mm", m.isOnRuler() ? 0 : m.reading().errorMm());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
