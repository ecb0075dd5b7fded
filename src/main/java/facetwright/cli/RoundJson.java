package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.fold.Closure;
import facetwright.fold.FoldedForm;
import facetwright.geom.Unit;
import facetwright.net.Net;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.ToSet;
import facetwright.script.Design;
import facetwright.turn.round.Constant;
import facetwright.turn.round.Draft;
import facetwright.turn.round.Rounding;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** A rounding as one JSON object; lengths in mm. */
final class RoundJson {
  private RoundJson() {}

  static String of(Design design, Rounding rounding, String command) {
    Unit unit = design.unit();
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeStringField("unit", unit.symbol());
          json.writeStringField("ruler", rounding.ruler().name());
          json.writeArrayFieldStart("dials");
          for (Rounding.Turn turn : rounding.turns()) {
            json.writeStartObject();
            json.writeStringField("name", turn.knob().name());
            json.writeNumberField("was", turn.knob().now());
            json.writeNumberField("value", turn.value());
            json.writeStringField("typed", turn.typed(rounding.ruler(), unit));
            json.writeEndObject();
          }
          json.writeEndArray();
          draft(json, "before", rounding.before());
          draft(json, "after", rounding.after());
          json.writeArrayFieldStart("constants");
          for (Constant constant : rounding.constants()) {
            json.writeStartObject();
            json.writeNumberField("line", constant.site().line());
            json.writeNumberField("column", constant.site().column());
            json.writeStringField("text", constant.text());
            json.writeStringField("becomes", constant.becomes());
            json.writeNumberField("mm", constant.mm());
            json.writeNumberField("fewer_off", constant.fewer());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeNumberField("trials", rounding.trials());
          json.writeStringField("make", command);
        });
  }

  private static void draft(JsonGenerator json, String name, Draft draft) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("form_off", draft.toSet().formOff());
    json.writeNumberField("cuts_off", draft.toSet().cutsOff());
    json.writeNumberField("most_off_mm", draft.toSet().mostOff());
    json.writeBooleanField("fits", draft.design().laid().fits());
    form(json, "folded", draft.design().net(), Optional.of(draft.design().folded()));
    form(json, "as_set", draft.design().net(), Rounding.asSet(draft));
    measures(json, "form_measures", draft.toSet().form());
    measures(json, "cut_measures", draft.toSet().cuts());
    json.writeEndObject();
  }

  /** What a form comes to, or null where that is not known. */
  static void form(JsonGenerator json, String name, Net net, Optional<FoldedForm> form)
      throws IOException {
    if (form.isEmpty() || form.get().closure() == Closure.NOT_SOLVED) {
      json.writeNullField(name);
      return;
    }
    FoldedForm folded = form.get();
    json.writeObjectFieldStart(name);
    json.writeBooleanField("closed", folded.canBeMade(net));
    json.writeNumberField("gap_mm", folded.gap());
    json.writeArrayFieldStart("size_mm");
    json.writeNumber(folded.measures().width());
    json.writeNumber(folded.measures().depth());
    json.writeNumber(folded.measures().height());
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void measures(JsonGenerator json, String name, List<Measure> all)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (Measure m : ToSet.distinct(all)) {
      json.writeStartObject();
      json.writeNumberField("mm", m.mm());
      json.writeStringField("reads", m.reading().text());
      json.writeNumberField("off_mm", m.isOnRuler() ? 0 : m.reading().errorMm());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
