package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Solids found from their nets with every fold angle withheld: all that is told is that the scores
 * are mountains. A convex form is the only convex one of its net (A. L. Cauchy 1813). Solids of
 * glotzerlab/coxeter (BSD-3-Clause, licence beside the data), edge 100 mm.
 */
class BlindSolidsTest {
  static Stream<Solid> solids() throws Exception {
    return Solid.all();
  }

  /** The same net, its angles left to the solver. */
  static Net blind(Net net) {
    List<Score> scores =
        net.scores().stream()
            .map(
                s ->
                    new Score(
                        s.a(),
                        s.b(),
                        s.sense(),
                        FoldAngle.TO_SOLVE,
                        s.perforated(),
                        false,
                        s.site()))
            .toList();
    return net.scored(scores);
  }

  @ParameterizedTest
  @MethodSource("solids")
  void closesWithTheDihedralAnglesOfTheSolid(Solid solid) {
    Net net = blind(solid.net());
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.gap()).isLessThan(1e-6);
    solid.hasItsDihedrals(net, form);
  }

  static Stream<JsonNode> published() {
    return SolidsRefoldTest.published();
  }

  /** Cundy and Rollett, Mathematical Models (1961); N. W. Johnson (1966): from memory. */
  @ParameterizedTest
  @MethodSource("published")
  void hasThePublishedDihedrals(JsonNode entry) {
    Net net = blind(Solid.named(entry.get("solid").asString()).net());
    List<Double> found = Dihedrals.atScores(net, Folding.fold(net));
    for (JsonNode d : entry.path("dihedrals")) {
      double published = d.get("publishedDeg").asDouble();
      double slack = Math.max(1e-8, 2 * d.get("absErr").asDouble());
      assertThat(found).anyMatch(x -> Math.abs(x - published) <= slack);
    }
  }
}
