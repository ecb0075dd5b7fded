package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Vertices;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Every closed convex form refolds to itself. Solids: coordinates of glotzerlab/coxeter
 * (BSD-3-Clause, licence beside the data). Published volumes and dihedral angles: Cundy and
 * Rollett, Mathematical Models (1961); N. W. Johnson, Convex polyhedra with regular faces (1966):
 * from memory.
 */
class SolidsRefoldTest {
  static Stream<Solid> solids() throws Exception {
    return Solid.all();
  }

  @ParameterizedTest
  @MethodSource("solids")
  void refoldsToItsOwnVolumeAreaAndDihedrals(Solid solid) {
    Net net = solid.net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.gap()).isLessThan(1e-6);
    double cube = Math.pow(Solid.EDGE, 3);
    double volume = solid.computed().get("volume").asDouble();
    assertThat(form.measures().volume() / cube).isCloseTo(volume, within(1e-11 * volume));
    double area = solid.computed().get("surfaceArea").asDouble();
    assertThat(form.measures().area() / Solid.EDGE / Solid.EDGE)
        .isCloseTo(area, within(1e-12 * area));
    solid.hasItsDihedrals(net, form);
  }

  /** R. Descartes, De solidorum elementis (c. 1630): the defects of a closed form sum to 720°. */
  @ParameterizedTest
  @MethodSource("solids")
  void defectsSumToTwoWholeTurns(Solid solid) {
    Net net = solid.net();
    List<Vertices.Vertex> vertices = Vertices.of(net, Folding.fold(net));
    assertThat(vertices).hasSize(solid.vertices().size()).allMatch(Vertices.Vertex::closed);
    assertThat(vertices.stream().mapToDouble(v -> 360 - v.angleSum()).sum())
        .isCloseTo(720, within(1e-8));
  }

  static Stream<JsonNode> published() {
    List<JsonNode> entries = new ArrayList<>();
    Solid.json("/reference/solids/_published-values.json").get("entries").forEach(entries::add);
    return entries.stream();
  }

  @ParameterizedTest
  @MethodSource("published")
  void hasThePublishedVolumeAndDihedrals(JsonNode entry) {
    Net net = Solid.named(entry.get("solid").asString()).net();
    FoldedForm form = Folding.fold(net);
    double volume = entry.get("publishedVolume").asDouble();
    assertThat(form.measures().volume() / Math.pow(Solid.EDGE, 3))
        .isCloseTo(volume, within(1e-7 * volume));
    List<Double> found = Dihedrals.atScores(net, form);
    for (JsonNode d : entry.path("dihedrals")) {
      // Angles of the snub solids are remembered to the second of arc only.
      double published = d.get("publishedDeg").asDouble();
      double slack = Math.max(1e-8, 2 * d.get("absErr").asDouble());
      assertThat(found).anyMatch(x -> Math.abs(x - published) <= slack);
    }
  }
}
