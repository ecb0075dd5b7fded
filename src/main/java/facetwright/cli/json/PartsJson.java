package facetwright.cli.json;

import facetwright.json.JsonText;
import facetwright.net.Parts;
import tools.jackson.core.JsonGenerator;

/** The parts of a design, those made alike once, as a field of it. */
final class PartsJson {
  private PartsJson() {}

  static void write(JsonGenerator json, Parts parts) {
    JsonText.objects(
        json,
        "parts",
        parts.kinds(),
        i -> {
          json.writeStringProperty("name", parts.called(i));
          json.writeNumberProperty("count", parts.count(i));
          JsonText.strings(
              json,
              "each",
              parts.all().stream().filter(p -> p.first() == i).map(Parts.Part::name).toList());
        });
  }
}
