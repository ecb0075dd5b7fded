package facetwright.papers.cutting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Published cutting instances; each file names its source and licence. */
public final class Instances {
  private static final Path FOLDER = Path.of("src/test/resources/reference/guillotine");

  private Instances() {}

  /**
   * @param limited whether copies are limited
   * @param optimum the highest value one sheet can give
   */
  public record Instance(
      String name,
      Paper sheet,
      List<Wanted> wanted,
      boolean limited,
      boolean turned,
      double optimum) {
    @Override
    public String toString() {
      return name + (limited ? " limited" : " unlimited") + (turned ? " turned" : "");
    }
  }

  /** Every variant of every file. */
  public static List<Instance> all() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<Instance> all = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        JsonNode json = new ObjectMapper().readTree(file.toFile());
        json.get("variants").forEach(variant -> all.add(of(json, variant)));
      }
      return List.copyOf(all);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Instance of(JsonNode json, JsonNode variant) {
    String words = variant.get("variant").asString();
    boolean limited = words.startsWith("constrained");
    boolean turned = words.contains("rotation allowed");
    List<Wanted> wanted = new ArrayList<>();
    for (JsonNode item : json.get("items")) {
      wanted.add(
          new Wanted(
              String.valueOf(wanted.size() + 1),
              item.get("w").asDouble(),
              item.get("h").asDouble(),
              limited ? item.get("max").asInt() : Wanted.UNLIMITED,
              turned,
              item.get("value").asDouble()));
    }
    JsonNode sheet = json.get("sheet");
    return new Instance(
        json.get("name").asString(),
        new Paper("sheet", sheet.get(0).asDouble(), sheet.get(1).asDouble()),
        List.copyOf(wanted),
        limited,
        turned,
        variant.get("optimum").asDouble());
  }
}
