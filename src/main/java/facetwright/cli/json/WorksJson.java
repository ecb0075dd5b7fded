package facetwright.cli.json;

import facetwright.json.JsonText;
import facetwright.language.Telling;
import facetwright.papers.cutting.Cuts;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.HingeStrip;
import facetwright.papers.materials.LayersText;
import facetwright.papers.materials.Materials;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/** Layers and materials as JSON; lengths in mm, areas in mm². */
public final class WorksJson {
  private WorksJson() {}

  public static String layers(Design design, Works works, Order order) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeNumberProperty("count", works.materials().pieces());
          LayersText words = new LayersText(order);
          JsonText.objects(json, "papers", works.plans(), plan -> paper(json, plan, words));
          JsonText.strings(json, "without_layer", works.layers().lost());
        });
  }

  private static void paper(JsonGenerator json, LayerPlan plan, LayersText words) {
    Telling tell = words.order().telling();
    json.writeStringProperty("name", plan.paper().name());
    json.writeNumberProperty("sheets", plan.plan().sheetCount());
    json.writeBooleanProperty("fewest", plan.plan().bestKnown());
    json.writeNumberProperty("sheets_at_least", (int) plan.plan().bound());
    json.writeNumberProperty("used", 1 - plan.waste() / plan.plan().paperArea());
    json.writeNumberProperty("waste_mm2", plan.waste());
    JsonText.objects(
        json,
        "groups",
        plan.groups(),
        group -> {
          json.writeStringProperty("letter", group.letter());
          json.writeStringProperty("kind", group.kind().name().toLowerCase(Locale.ROOT));
          json.writeNumberProperty("width_mm", group.width());
          json.writeNumberProperty("height_mm", group.height());
          json.writeNumberProperty("each", group.count());
          json.writeNumberProperty("all", group.count() * plan.pieces());
          JsonText.strings(json, "panels", group.panels());
        });
    JsonText.objects(
        json,
        "plans",
        plan.plan().sheets(),
        sheet -> {
          json.writeStringProperty("sheet", sheet.paper().name());
          json.writeNumberProperty("copies", sheet.copies());
          JsonText.objects(
              json,
              "steps",
              Cuts.of(sheet, plan.plan().wanted()),
              step -> {
                json.writeNumberProperty("first", step.first());
                json.writeNumberProperty("times", step.times());
                json.writeStringProperty("part", step.part());
                json.writeNumberProperty("of", step.of());
                json.writeStringProperty("from", step.way().word());
                json.writeNumberProperty("at_mm", step.at());
                json.writeStringProperty(
                    "text", step.text(words.measure(step.at()), n -> plan.called(n, tell), tell));
              });
        });
  }

  public static String materials(Design design, Works works, Prices prices) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          materials(json, works.materials(), prices, Order.usual(design.unit()).telling());
        });
  }

  /**
   * What so many pieces take, as fields of an object.
   *
   * @param tell things are named to a reader in English
   */
  public static void materials(JsonGenerator json, Materials m, Prices prices, Telling tell) {
    json.writeNumberProperty("count", m.pieces());
    json.writeBooleanProperty("fits", m.fits());
    json.writeNumberProperty("pieces_per_sheet", m.perSheet());
    json.writeNumberProperty("glue_mm2", m.glueArea());
    json.writeNumberProperty("layers_mm2", m.layerArea());
    json.writeNumberProperty("card_of_one_g", m.card().grams());
    json.writeNumberProperty("holes", m.holes());
    json.writeNumberProperty("minutes", m.minutes());
    JsonText.objects(
        json,
        "parts",
        m.parts(),
        p -> {
          json.writeStringProperty("name", p.name());
          json.writeNumberProperty("count", p.count());
          if (p.imageOf().isPresent()) {
            json.writeStringProperty("mirror_image_of", p.imageOf().get());
          }
        });
    JsonText.objects(
        json,
        "hinges",
        m.hinges(),
        h -> {
          json.writeNumberProperty("count", h.count());
          json.writeNumberProperty("width_mm", HingeStrip.WIDE);
          json.writeNumberProperty("length_mm", h.length());
        });
    JsonText.objects(
        json,
        "shopping",
        m.shopping(prices),
        p -> {
          json.writeStringProperty("name", p.need().key());
          json.writeStringProperty("what", p.need().what().text(tell));
          json.writeNumberProperty("needed", p.need().amount());
          json.writeNumberProperty("buy", p.buy());
          json.writeStringProperty("unit", p.need().unit().word());
          number(json, "cost", p.cost());
        });
    json.writeStringProperty("currency", prices.currency());
    number(json, "cost", m.cost(prices));
  }

  private static void number(JsonGenerator json, String name, Optional<Double> value) {
    if (value.isPresent()) {
      json.writeNumberProperty(name, value.get());
    } else {
      json.writeNullProperty(name);
    }
  }
}
