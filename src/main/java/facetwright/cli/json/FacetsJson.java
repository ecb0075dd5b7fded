package facetwright.cli.json;

import facetwright.json.JsonText;
import facetwright.papers.facets.FacetLine;
import facetwright.papers.facets.FacetList;
import facetwright.papers.facets.FacetText;
import facetwright.papers.facets.Facing;
import facetwright.script.design.Design;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;

/** The facets of a design as one JSON object. */
public final class FacetsJson {
  private FacetsJson() {}

  public static String of(Design design, FacetList facets) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", design.title());
          JsonText.objects(json, "facets", facets.all(), f -> facet(json, f));
          JsonText.objects(
              json,
              "groups",
              facets.groups().sequencedEntrySet().stream().toList(),
              g -> {
                json.writeStringProperty("word", g.getKey());
                JsonText.numbers(json, "facets", g.getValue());
              });
        });
  }

  private static void facet(JsonGenerator json, FacetLine f) {
    json.writeNumberProperty("number", f.number());
    json.writeStringProperty("name", f.name());
    json.writeStringProperty("role", f.role().name().toLowerCase(Locale.ROOT));
    JsonText.strings(json, "words", f.spoken().words());
    json.writeNumberProperty("corners", f.corners());
    json.writeNumberProperty("width_mm", f.width());
    json.writeNumberProperty("height_mm", f.height());
    if (f.facing().isEmpty()) {
      json.writeNullProperty("faces");
      return;
    }
    Facing facing = f.facing().get();
    json.writeObjectPropertyStart("faces");
    json.writeStringProperty("text", FacetText.facing(f));
    json.writeNumberProperty("from_front_degrees", facing.around());
    json.writeNumberProperty("up_degrees", facing.up());
    json.writeEndObject();
  }
}
