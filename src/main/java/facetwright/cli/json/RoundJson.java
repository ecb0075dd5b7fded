package facetwright.cli.json;

import facetwright.adjust.round.Draft;
import facetwright.adjust.round.Rounding;
import facetwright.json.JsonText;
import facetwright.measure.Unit;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.ToSet;
import facetwright.script.design.Design;
import tools.jackson.core.JsonGenerator;

/** A rounding as one JSON object; lengths in mm. */
public final class RoundJson {
  private RoundJson() {}

  public static String of(Design design, Rounding rounding, String command) {
    Unit unit = design.unit();
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeStringProperty("unit", unit.symbol());
          json.writeStringProperty("ruler", rounding.ruler().name());
          JsonText.objects(
              json,
              "dials",
              rounding.turns(),
              turn -> {
                json.writeStringProperty("name", turn.knob().name());
                json.writeNumberProperty("was", turn.knob().now());
                json.writeNumberProperty("value", turn.value());
                json.writeStringProperty("typed", turn.typed(rounding.ruler(), unit));
              });
          draft(json, "before", rounding.before());
          draft(json, "after", rounding.after());
          JsonText.objects(
              json,
              "constants",
              rounding.constants(),
              constant -> {
                json.writeNumberProperty("line", constant.site().line());
                json.writeNumberProperty("column", constant.site().column());
                json.writeStringProperty("text", constant.text());
                json.writeStringProperty("becomes", constant.becomes());
                json.writeNumberProperty("mm", constant.mm());
                json.writeNumberProperty("fewer_off", constant.fewer());
              });
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
    FormJson.form(json, "folded", draft.design());
    FormJson.form(
        json, "as_set", draft.design().net(), Rounding.asSet(draft).map(AsSet.Result::form));
    FormJson.measures(json, "form_measures", ToSet.distinct(draft.toSet().form()));
    FormJson.measures(json, "cut_measures", ToSet.distinct(draft.toSet().cuts()));
    json.writeEndObject();
  }
}
