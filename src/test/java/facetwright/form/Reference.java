package facetwright.form;

import facetwright.form.make.Solids;
import facetwright.geom.Vec3;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The reference solids and formulas; their sources are named in the README beside the files. */
public final class Reference {
  private static final Path FOLDER = Path.of("src/test/resources/reference");
  private static final ObjectMapper JSON = new ObjectMapper();

  private Reference() {}

  static List<String> solids() {
    try (Stream<Path> files = Files.list(FOLDER.resolve("solids"))) {
      return files
          .map(p -> p.getFileName().toString())
          .filter(n -> n.endsWith(".json") && !n.startsWith("_"))
          .map(n -> n.substring(0, n.length() - 5))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode solid(String name) {
    return read("solids/" + name + ".json");
  }

  static JsonNode formula(String id) {
    for (JsonNode formula : read("solid-formulas.json").get("formulas")) {
      if (formula.get("id").asString().equals(id)) {
        return formula.get("examples");
      }
    }
    throw new IllegalArgumentException(id);
  }

  static JsonNode read(String file) {
    return JSON.readTree(FOLDER.resolve(file).toFile());
  }

  /** The solid with this edge length in mm. */
  public static Form form(String name, double edge) {
    List<Vec3> corners = new ArrayList<>();
    for (JsonNode v : solid(name).get("vertices")) {
      corners.add(
          new Vec3(v.get(0).asDouble(), v.get(1).asDouble(), v.get(2).asDouble()).times(edge));
    }
    List<List<Integer>> faces = new ArrayList<>();
    for (JsonNode f : solid(name).get("faces")) {
      List<Integer> face = new ArrayList<>();
      f.forEach(i -> face.add(i.asInt()));
      faces.add(face);
    }
    return Solids.mesh(corners, faces);
  }
}
