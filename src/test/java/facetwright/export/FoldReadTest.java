package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.net.Net;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Our FOLD files held to the FOLD specification, version 1.2 (the spec was read). */
class FoldReadTest {
  private static JsonNode read(Net net) throws IOException {
    return new ObjectMapper().readTree(new FoldWriter().write(Papers.job("Net", net, Papers.A2)));
  }

  static Stream<Net> solved() {
    return Stream.of(Papers.cube(100, 15), Papers.tray(70, 25));
  }

  private static double[] point(JsonNode coords, int vertex) {
    double[] p = new double[3];
    for (int i = 0; i < coords.get(vertex).size(); i++) {
      p[i] = coords.get(vertex).get(i).asDouble();
    }
    return p;
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
  }

  @ParameterizedTest
  @MethodSource("solved")
  void hasTheKeysOfTheSpecification(Net net) throws IOException {
    JsonNode fold = read(net);
    assertThat(fold.get("file_spec").asDouble()).isEqualTo(1.2);
    assertThat(fold.get("file_creator").asString()).isEqualTo("Facetwright");
    assertThat(fold.get("file_classes").get(0).asString()).isEqualTo("singleModel");
    assertThat(fold.get("frame_classes").get(0).asString()).isEqualTo("creasePattern");
    assertThat(fold.get("frame_unit").asString()).isEqualTo("mm");
    int edges = fold.get("edges_vertices").size();
    assertThat(fold.get("edges_assignment")).hasSize(edges);
    assertThat(fold.get("edges_foldAngle")).hasSize(edges);
    assertThat(fold.get("faces_vertices")).hasSize(net.panels().size());
    JsonNode second = fold.get("file_frames").get(0);
    assertThat(second.get("frame_classes").get(0).asString()).isEqualTo("foldedForm");
    assertThat(second.get("frame_parent").asInt()).isZero();
    assertThat(second.get("frame_inherit").asBoolean()).isTrue();
    assertThat(second.get("vertices_coords")).hasSize(fold.get("vertices_coords").size());
    assertThat(fold.propertyNames())
        .allMatch(key -> key.matches("(file|frame|vertices|edges|faces)_.*|facetwright:.*"));
  }

  @ParameterizedTest
  @MethodSource("solved")
  void everyFoldedFaceIsCongruentToItsFlatOne(Net net) throws IOException {
    JsonNode fold = read(net);
    JsonNode flat = fold.get("vertices_coords");
    JsonNode folded = fold.get("file_frames").get(0).get("vertices_coords");
    for (JsonNode face : fold.get("faces_vertices")) {
      for (JsonNode a : face) {
        for (JsonNode b : face) {
          assertThat(distance(point(folded, a.asInt()), point(folded, b.asInt())))
              .isCloseTo(distance(point(flat, a.asInt()), point(flat, b.asInt())), within(1e-6));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("solved")
  void facesRunCounterClockwise(Net net) throws IOException {
    JsonNode fold = read(net);
    for (JsonNode face : fold.get("faces_vertices")) {
      double twice = 0;
      for (int i = 0; i < face.size(); i++) {
        double[] a = point(fold.get("vertices_coords"), face.get(i).asInt());
        double[] b = point(fold.get("vertices_coords"), face.get((i + 1) % face.size()).asInt());
        twice += a[0] * b[1] - a[1] * b[0];
      }
      assertThat(twice).isPositive();
    }
  }

  /**
   * The angle between the normals of two folded faces, signed by whether they turn toward each
   * other (valley, positive) or away (mountain, negative), is the stated fold angle.
   */
  @ParameterizedTest
  @MethodSource("solved")
  void foldAnglesAreThoseOfTheFoldedFaces(Net net) throws IOException {
    JsonNode fold = read(net);
    JsonNode folded = fold.get("file_frames").get(0).get("vertices_coords");
    Map<String, List<Integer>> facesOf = new HashMap<>();
    for (int f = 0; f < fold.get("faces_vertices").size(); f++) {
      JsonNode face = fold.get("faces_vertices").get(f);
      for (int i = 0; i < face.size(); i++) {
        int a = face.get(i).asInt();
        int b = face.get((i + 1) % face.size()).asInt();
        facesOf
            .computeIfAbsent(Math.min(a, b) + "-" + Math.max(a, b), _ -> new ArrayList<>())
            .add(f);
      }
    }
    int creases = 0;
    for (int e = 0; e < fold.get("edges_vertices").size(); e++) {
      int a = fold.get("edges_vertices").get(e).get(0).asInt();
      int b = fold.get("edges_vertices").get(e).get(1).asInt();
      String assignment = fold.get("edges_assignment").get(e).asString();
      double stated = fold.get("edges_foldAngle").get(e).asDouble();
      List<Integer> faces = facesOf.getOrDefault(Math.min(a, b) + "-" + Math.max(a, b), List.of());
      switch (assignment) {
        case "B" -> assertThat(faces).hasSize(1);
        case "C" -> assertThat(faces).isEmpty();
        default -> {
          assertThat(faces).hasSize(2);
          assertThat(assignment).isEqualTo(stated > 0 ? "V" : "M");
          double[] n1 = normal(fold, folded, faces.get(0));
          double[] n2 = normal(fold, folded, faces.get(1));
          double[] to =
              minus(middle(fold, folded, faces.get(1)), middle(fold, folded, faces.get(0)));
          double turn = Math.toDegrees(Math.acos(Math.clamp(dot(n1, n2), -1, 1)));
          // Toward each other: the other face lies on the outside of this one.
          assertThat(dot(n1, to) > 0 ? turn : -turn).isCloseTo(stated, within(1e-6));
          creases++;
        }
      }
    }
    assertThat(creases).isEqualTo(net.scores().size());
  }

  @Test
  void openingsAreLoopsOfCutEdges() throws IOException {
    JsonNode fold = read(Papers.tray(70, 25));
    long cuts = 0;
    for (JsonNode a : fold.get("edges_assignment")) {
      cuts += a.asString().equals("C") ? 1 : 0;
    }
    // A window of six sides and a hole drawn with 48.
    assertThat(cuts).isEqualTo(54);
  }

  @Test
  void unknownAnglesAreNullAndLeaveTheFoldedFormOut() throws IOException {
    JsonNode fold = read(Papers.slitSquares(50));
    assertThat(fold.has("file_frames")).isFalse();
    assertThat(fold.get("frame_description").asString()).contains("no folded form");
    int unknown = 0;
    List<String> assignments = new ArrayList<>();
    for (int e = 0; e < fold.get("edges_assignment").size(); e++) {
      assignments.add(fold.get("edges_assignment").get(e).asString());
      unknown += fold.get("edges_foldAngle").get(e).isNull() ? 1 : 0;
    }
    assertThat(unknown).isEqualTo(2);
    // The slit's two sides stay apart: each is an edge of one face.
    assertThat(assignments.stream().filter("C"::equals)).hasSize(2);
    assertThat(assignments).contains("M", "V");
  }

  private static double[] normal(JsonNode fold, JsonNode coords, int face) {
    JsonNode corners = fold.get("faces_vertices").get(face);
    double[] o = point(coords, corners.get(0).asInt());
    double[] sum = new double[3];
    for (int i = 1; i + 1 < corners.size(); i++) {
      double[] a = minus(point(coords, corners.get(i).asInt()), o);
      double[] b = minus(point(coords, corners.get(i + 1).asInt()), o);
      sum[0] += a[1] * b[2] - a[2] * b[1];
      sum[1] += a[2] * b[0] - a[0] * b[2];
      sum[2] += a[0] * b[1] - a[1] * b[0];
    }
    double length = Math.sqrt(dot(sum, sum));
    return new double[] {sum[0] / length, sum[1] / length, sum[2] / length};
  }

  private static double[] middle(JsonNode fold, JsonNode coords, int face) {
    JsonNode corners = fold.get("faces_vertices").get(face);
    double[] sum = new double[3];
    for (JsonNode c : corners) {
      double[] p = point(coords, c.asInt());
      for (int i = 0; i < 3; i++) {
        sum[i] += p[i] / corners.size();
      }
    }
    return sum;
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
