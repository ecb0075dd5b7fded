package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.papers.materials.Materials;
import facetwright.papers.materials.Prices;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.Rings;
import facetwright.papers.ring.Seating;
import facetwright.papers.ring.SideCounts;
import facetwright.papers.ring.Spacer;
import facetwright.script.Design;
import java.io.IOException;
import java.util.List;

/** The ways to seat a ring as one JSON object. */
final class RingJson {
  private static final int MOST_SIDES = 24;

  private RingJson() {}

  static String of(
      Design design, Rings rings, int count, List<RingPlan> plans, Materials materials) {
    return Json.object(
        json -> {
          json.writeStringField("title", design.title());
          json.writeNumberField("count", count);
          json.writeNumberField("flush_degrees", RingPlan.flushDegrees(count));
          json.writeBooleanField("flush", !plans.isEmpty() && plans.getFirst().seating().isFlush());
          json.writeArrayFieldStart("ways");
          for (RingPlan plan : plans) {
            way(json, design, plan);
          }
          json.writeEndArray();
          numbers(json, "flush_sides", SideCounts.flush(count, MOST_SIDES));
          numbers(json, "flush_counts", rings.flushCounts());
          json.writeObjectFieldStart("materials");
          WorksJson.materials(json, materials, Prices.NONE);
          json.writeEndObject();
        });
  }

  private static void way(JsonGenerator json, Design design, RingPlan plan) throws IOException {
    Seating seating = plan.seating();
    json.writeStartObject();
    json.writeBooleanField("flush", seating.isFlush());
    panels(json, "one", design, seating.one());
    panels(json, "other", design, seating.other());
    json.writeNumberField("normals_degrees", seating.normalsDegrees());
    json.writeNumberField("tipped_degrees", seating.tippedDegrees());
    json.writeNumberField("contact_mm2", seating.contact());
    json.writeNumberField("glued_mm2", plan.glued());
    json.writeNumberField("inner_mm", plan.inner());
    json.writeNumberField("outer_mm", plan.outer());
    json.writeNumberField("height_mm", plan.height());
    if (seating.spacer().isPresent()) {
      Spacer spacer = seating.spacer().get();
      json.writeObjectFieldStart("spacer");
      json.writeNumberField("degrees", spacer.degrees());
      json.writeNumberField("inner_mm", spacer.inner());
      json.writeNumberField("outer_mm", spacer.outer());
      json.writeNumberField("length_mm", spacer.length());
      json.writeNumberField("height_mm", spacer.height());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private static void panels(JsonGenerator json, String name, Design design, List<Integer> panels)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (int p : panels) {
      json.writeString(design.net().panels().get(p).name());
    }
    json.writeEndArray();
  }

  private static void numbers(JsonGenerator json, String name, List<Integer> numbers)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (int n : numbers) {
      json.writeNumber(n);
    }
    json.writeEndArray();
  }
}
