package facetwright.cli.json;

import facetwright.adjust.ring.RingOffer;
import facetwright.json.JsonText;
import facetwright.net.Net;
import facetwright.papers.materials.Materials;
import facetwright.papers.materials.Prices;
import facetwright.papers.order.Order;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.Rings;
import facetwright.papers.ring.Seating;
import facetwright.papers.ring.SideCounts;
import facetwright.papers.ring.Spacer;
import facetwright.script.design.Design;
import java.util.List;
import tools.jackson.core.JsonGenerator;

/** The ways to seat a ring as one JSON object. */
public final class RingJson {
  private RingJson() {}

  public static String of(
      Design design,
      Rings rings,
      int count,
      List<RingPlan> plans,
      List<RingOffer> offers,
      Materials materials) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          json.writeNumberProperty("count", count);
          json.writeNumberProperty("flush_degrees", RingPlan.flushDegrees(count));
          json.writeBooleanProperty(
              "flush", !plans.isEmpty() && plans.getFirst().seating().isFlush());
          JsonText.objects(json, "ways", plans, plan -> way(json, design.net(), plan));
          JsonText.objects(
              json,
              "other_dials",
              offers,
              o -> {
                json.writeStringProperty("dial", o.dial());
                json.writeNumberProperty("value", o.value());
                way(json, o.design().net(), o.plan());
              });
          JsonText.numbers(json, "flush_sides", SideCounts.flush(count, SideCounts.MOST_SIDES));
          JsonText.numbers(json, "flush_counts", rings.flushCounts());
          json.writeObjectPropertyStart("materials");
          WorksJson.materials(json, materials, Prices.NONE, Order.usual(design.unit()).telling());
          json.writeEndObject();
        });
  }

  private static void way(JsonGenerator json, Net net, RingPlan plan) {
    Seating seating = plan.seating();
    json.writeBooleanProperty("flush", seating.isFlush());
    FormJson.panels(json, "one", net, seating.one());
    FormJson.panels(json, "other", net, seating.other());
    json.writeNumberProperty("normals_degrees", seating.normalsDegrees());
    json.writeNumberProperty("tipped_degrees", seating.tippedDegrees());
    json.writeNumberProperty("contact_mm2", seating.contact());
    json.writeNumberProperty("glued_mm2", plan.glued());
    json.writeNumberProperty("inner_mm", plan.inner());
    json.writeNumberProperty("outer_mm", plan.outer());
    json.writeNumberProperty("height_mm", plan.height());
    json.writeNumberProperty("opening_mm", seating.opening());
    if (seating.spacer().isPresent()) {
      Spacer spacer = seating.spacer().get();
      json.writeObjectPropertyStart("spacer");
      json.writeNumberProperty("degrees", spacer.degrees());
      json.writeNumberProperty("inner_mm", spacer.inner());
      json.writeNumberProperty("outer_mm", spacer.outer());
      json.writeNumberProperty("length_mm", spacer.length());
      json.writeNumberProperty("height_mm", spacer.height());
      json.writeEndObject();
    }
  }
}
