package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import facetwright.geom.Vec3;
import facetwright.net.Sense;
import facetwright.script.Design;
import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What anyone can verify in a FOLD file by its specification, version 1.2 (the spec was read): the
 * folded frame moves every face of the flat one rigidly, and each crease has the assignment and the
 * angle that the folded faces show. Measured here from the file's numbers alone.
 */
class FoldedFrameTest {
  /** Every library design, and wraps of six to sixteen columns with gussets in and out. */
  @TestFactory
  Stream<DynamicTest> foldedFramesAreWhatTheySay() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("library"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".js")).sorted().toList()) {
        String script = Files.readString(file);
        tests.add(DynamicTest.dynamicTest(file.getFileName().toString(), () -> verify(script)));
      }
    }
    for (int n = 6; n <= 16; n += 2) {
      for (String point : List.of("in", "out")) {
        String script = wrap(n, point);
        tests.add(DynamicTest.dynamicTest("wrap of " + n + ", " + point, () -> verify(script)));
      }
    }
    return tests.stream();
  }

  private static String wrap(int columns, String point) {
    return """
    design("Wrap");
    const body = wrap({ columns: %d, width: 24, rows: [20, 72, 72, 20], seam: 8 });
    body.columns("even").rows("rim").remove();
    body.columns("even").rows("wall").gusset({ point: "%s" });
    body.columns("odd").rows("rim").tabs();
    """
        .formatted(columns, point);
  }

  private static void verify(String script) throws Exception {
    Design design = Facetwright.evaluate("design.js", script, Map.of(), Budget.USUAL);
    Job job = new Job(design.title(), "", design.unit(), design.laid(), design.folded());
    JsonNode fold = new ObjectMapper().readTree(new FoldWriter().write(job));
    List<Vec3> flat = points(fold.get("vertices_coords"));
    List<Vec3> folded = points(fold.get("file_frames").get(0).get("vertices_coords"));
    List<int[]> faces = new ArrayList<>();
    fold.get("faces_vertices").forEach(f -> faces.add(numbers(f)));
    double off = 0;
    for (int[] face : faces) {
      for (int a : face) {
        for (int b : face) {
          double then = folded.get(a).distance(folded.get(b));
          off = Math.max(off, Math.abs(then - flat.get(a).distance(flat.get(b))));
        }
      }
    }
    assertThat(off).as("a face of the folded frame differs from its flat one").isLessThan(1e-6);
    creases(fold, folded, faces);
    agrees(design, fold);
  }

  private static void creases(JsonNode fold, List<Vec3> folded, List<int[]> faces) {
    Map<Long, Integer> left = new HashMap<>();
    for (int f = 0; f < faces.size(); f++) {
      int[] face = faces.get(f);
      for (int i = 0; i < face.length; i++) {
        left.put(key(face[i], face[(i + 1) % face.length]), f);
      }
    }
    int creases = 0;
    for (int e = 0; e < fold.get("edges_vertices").size(); e++) {
      int[] ends = numbers(fold.get("edges_vertices").get(e));
      String assignment = fold.get("edges_assignment").get(e).asText();
      Integer one = left.get(key(ends[0], ends[1]));
      Integer other = left.get(key(ends[1], ends[0]));
      if (assignment.equals("B") || assignment.equals("C")) {
        continue;
      }
      Vec3 along = folded.get(ends[1]).minus(folded.get(ends[0])).unit();
      Vec3 n = normal(faces.get(one), folded);
      Vec3 m = normal(faces.get(other), folded);
      // Positive where the faces turn toward the viewer, a valley.
      double measured = -Math.toDegrees(Math.atan2(n.cross(m).dot(along), n.dot(m)));
      double told = fold.get("edges_foldAngle").get(e).asDouble();
      assertThat(Math.IEEEremainder(told - measured, 360)).isCloseTo(0, within(1e-6));
      String expected = told > 0 ? "V" : told < 0 ? "M" : "F";
      assertThat(assignment).isEqualTo(expected);
      creases++;
    }
    assertThat(creases).isPositive();
  }

  /** The drawing of the design shows each score as the form folds it. */
  private static void agrees(Design design, JsonNode fold) {
    int mountains = count(fold, "M");
    int valleys = count(fold, "V");
    int flat = count(fold, "F");
    assertThat(mountains + valleys + flat).isEqualTo(design.net().scores().size());
    long drawn = design.net().scores().stream().filter(s -> s.sense() == Sense.VALLEY).count();
    assertThat(drawn).isBetween((long) valleys, (long) valleys + flat);
    assertThat(design.findings()).noneMatch(f -> f.rule().equals("sense"));
  }

  private static int count(JsonNode fold, String letter) {
    int count = 0;
    for (JsonNode a : fold.get("edges_assignment")) {
      count += a.asText().equals(letter) ? 1 : 0;
    }
    return count;
  }

  private static long key(int from, int to) {
    return ((long) from << 32) | to;
  }

  private static int[] numbers(JsonNode array) {
    int[] all = new int[array.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = array.get(i).asInt();
    }
    return all;
  }

  private static List<Vec3> points(JsonNode coords) {
    List<Vec3> all = new ArrayList<>();
    for (JsonNode c : coords) {
      all.add(
          new Vec3(
              c.get(0).asDouble(), c.get(1).asDouble(), c.size() > 2 ? c.get(2).asDouble() : 0));
    }
    return all;
  }

  private static Vec3 normal(int[] face, List<Vec3> points) {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = points.get(face[0]);
    for (int i = 1; i + 1 < face.length; i++) {
      sum = sum.plus(points.get(face[i]).minus(o).cross(points.get(face[i + 1]).minus(o)));
    }
    return sum.unit();
  }
}
