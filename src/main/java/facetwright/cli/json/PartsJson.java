package facetwright.cli.json;

import facetwright.json.JsonText;
import facetwright.net.Parts;
import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.core.JsonGenerator;

/** The parts of a design, those made alike once, as a field of it. */
final class PartsJson {
  private PartsJson() {}

  static void write(JsonGenerator json, Parts parts) {
    List<Integer> firsts =
        IntStream.range(0, parts.all().size())
            .filter(i -> parts.all().get(i).first() == i)
            .boxed()
            .toList();
    JsonText.objects(
        json,
        "parts",
        firsts,
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
