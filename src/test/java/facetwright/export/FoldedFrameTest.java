package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.geom.Vec3;
import facetwright.net.Sense;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

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
    for (Path file : LibraryDesigns.files()) {
      String script = LibraryDesigns.text(file);
      tests.add(DynamicTest.dynamicTest(file.getFileName().toString(), () -> verify(script)));
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
    Job job =
        Jobs.of(design.title(), "", design.laid(), design.folded(), Order.usual(design.unit()));
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
    assertThat(toldGap(fold)).isCloseTo(openBy(fold, folded), within(1e-4));
  }

  /** Trays of which one wall is a little too deep: they close if the card bends. */
  @TestFactory
  Stream<DynamicTest> bentFramesTellHowFarTheyStandOpen() {
    return Stream.of(0.01, 0.02, 0.03, 0.05)
        .map(more -> DynamicTest.dynamicTest(more + " mm", () -> bent(25 + more)));
  }

  private static void bent(double depth) throws Exception {
    String script =
        """
        design("Tray");
        const base = panel("base", { width: 60, height: 60 });
        const w = ["bottom", "right", "top", "left"].map((e, i) =>
          base.attach(e, "wall " + (i + 1), { depth: i == 2 ? %s : 25, fold: 90 }));
        for (let i = 0; i < 4; i++) w[i].join("left", w[(i + 1) %% 4], "right", { depth: 8 });
        """
            .formatted(depth);
    Design design = Facetwright.evaluate("design.js", script, Map.of(), Budget.USUAL);
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES_WITH_STRAIN);
    Job job =
        Jobs.of(design.title(), "", design.laid(), design.folded(), Order.usual(design.unit()));
    JsonNode fold = new ObjectMapper().readTree(new FoldWriter().write(job));
    double open = openBy(fold, points(fold.get("file_frames").get(0).get("vertices_coords")));
    assertThat(open).isGreaterThan(0.001);
    assertThat(toldGap(fold)).isCloseTo(open, within(1e-4));
    assertThat(design.folded().apart(design.net())).isGreaterThanOrEqualTo(open / 2);
  }

  /** What the frame says of itself. */
  private static double toldGap(JsonNode fold) {
    String words = fold.get("file_frames").get(0).get("frame_description").asString();
    return Double.parseDouble(words.replaceAll(".*gap of a join ([0-9.]+) mm.*", "$1"));
  }

  /** What the frame's own numbers say: how far the edges that meet stand from each other. */
  private static double openBy(JsonNode fold, List<Vec3> folded) {
    double most = 0;
    for (JsonNode join : fold.get("facetwright:joins")) {
      int[] a = numbers(fold.get("edges_vertices").get(join.get(0).asInt()));
      int[] b = numbers(fold.get("edges_vertices").get(join.get(1).asInt()));
      double along =
          Math.max(
              folded.get(a[0]).distance(folded.get(b[0])),
              folded.get(a[1]).distance(folded.get(b[1])));
      double against =
          Math.max(
              folded.get(a[0]).distance(folded.get(b[1])),
              folded.get(a[1]).distance(folded.get(b[0])));
      most = Math.max(most, Math.min(along, against));
    }
    return most;
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
      String assignment = fold.get("edges_assignment").get(e).asString();
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
      count += a.asString().equals(letter) ? 1 : 0;
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
