package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.cutting.Step;
import facetwright.papers.cutting.Steps;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.Materials;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Purchase;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.script.Design;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** Layers and materials as JSON; lengths in mm, areas in mm². */
final class WorksJson {
  private WorksJson() {}

  static String layers(Design design, Works works) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeNumberField("count", works.materials().pieces());
          json.writeArrayFieldStart("papers");
          for (LayerPlan plan : works.plans()) {
            paper(json, plan, new WorksText(design.unit()));
          }
          json.writeEndArray();
          json.writeArrayFieldStart("without_layer");
          for (String panel : works.layers().lost()) {
            json.writeString(panel);
          }
          json.writeEndArray();
        });
  }

  private static void paper(JsonGenerator json, LayerPlan plan, WorksText words)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("name", plan.paper().name());
    json.writeNumberField("sheets", plan.plan().sheetCount());
    json.writeBooleanField("fewest", plan.plan().bestKnown());
    json.writeNumberField("sheets_at_least", (int) plan.plan().bound());
    json.writeNumberField("used", 1 - plan.waste() / plan.plan().paperArea());
    json.writeNumberField("waste_mm2", plan.waste());
    json.writeArrayFieldStart("groups");
    for (LayerGroup group : plan.groups()) {
      json.writeStartObject();
      json.writeStringField("letter", group.letter());
      json.writeStringField("kind", group.kind().name().toLowerCase(Locale.ROOT));
      json.writeNumberField("width_mm", group.width());
      json.writeNumberField("height_mm", group.height());
      json.writeNumberField("each", group.count());
      json.writeNumberField("all", group.count() * plan.pieces());
      json.writeArrayFieldStart("panels");
      for (String panel : group.panels()) {
        json.writeString(panel);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("plans");
    for (SheetPlan sheet : plan.plan().sheets()) {
      json.writeStartObject();
      json.writeStringField("sheet", sheet.paper().name());
      json.writeNumberField("copies", sheet.copies());
      json.writeArrayFieldStart("steps");
      for (Step step : Steps.of(sheet, plan.plan().wanted())) {
        json.writeStartObject();
        json.writeNumberField("first", step.first());
        json.writeNumberField("times", step.times());
        json.writeStringField("part", step.part());
        json.writeNumberField("of", step.of());
        json.writeStringField("from", step.way().name().toLowerCase(Locale.ROOT));
        json.writeNumberField("at_mm", step.at());
        json.writeStringField("text", step.text(words.length(step.at())));
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  static String materials(Design design, Works works, Prices prices) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          materials(json, works.materials(), prices);
        });
  }

  /** What so many pieces take, as fields of an object. */
  static void materials(JsonGenerator json, Materials m, Prices prices) throws IOException {
    json.writeNumberField("count", m.pieces());
    json.writeBooleanField("fits", m.fits());
    json.writeNumberField("pieces_per_sheet", m.perSheet());
    json.writeNumberField("glue_mm2", m.glueArea());
    json.writeNumberField("layers_mm2", m.layerArea());
    json.writeNumberField("holes", m.holes());
    json.writeNumberField("minutes", m.minutes());
    json.writeArrayFieldStart("shopping");
    for (Purchase p : m.shopping(prices)) {
      json.writeStartObject();
      json.writeStringField("name", p.need().key());
      json.writeStringField("what", p.need().what());
      json.writeNumberField("needed", p.need().amount());
      json.writeNumberField("buy", p.buy());
      json.writeStringField("unit", p.need().unit().words(2));
      number(json, "cost", p.cost());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("currency", prices.currency());
    number(json, "cost", m.cost(prices));
  }

  private static void number(JsonGenerator json, String name, Optional<Double> value)
      throws IOException {
    if (value.isPresent()) {
      json.writeNumberField(name, value.get());
    } else {
      json.writeNullField(name);
    }
  }
}
