package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FlatFolding;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Vertices;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Worked examples of folding theorems; each source is named in the data, most from memory. */
class FoldTheoremsTest {
  static List<JsonNode> examples(String id) {
    List<JsonNode> found = new ArrayList<>();
    for (JsonNode theorem : Solid.json("/reference/fold-theorems.json").get("theorems")) {
      if (theorem.get("id").asString().equals(id)) {
        theorem.get("examples").forEach(found::add);
      }
    }
    return found;
  }

  static List<Double> numbers(JsonNode array) {
    List<Double> all = new ArrayList<>();
    array.forEach(n -> all.add(n.asDouble()));
    return all;
  }

  static Stream<JsonNode> closures() {
    return examples("belcastro-hull").stream();
  }

  /**
   * S.-M. Belcastro and T. C. Hull, Linear Algebra Appl. 348 (2002) 273-282: angles round a corner
   * go together just when the product of the turns is the identity.
   */
  @ParameterizedTest
  @MethodSource("closures")
  void productOfTurnsDecidesWhetherACornerTears(JsonNode example) {
    Net net =
        Fan.net(
            numbers(example.get("creaseDirectionsDeg")),
            numbers(example.get("foldAnglesDeg")),
            _ -> true);
    FoldedForm form = Folding.fold(net);
    boolean closes = example.get("closes").asBoolean();
    assertThat(form.closure()).isEqualTo(closes ? Closure.CLOSES : Closure.OPEN);
    assertThat(form.gap() < 1e-9 * Fan.REACH).isEqualTo(closes);
    assertThat(Vertices.of(net, form).stream().filter(Vertices.Vertex::interior))
        .singleElement()
        .satisfies(v -> assertThat(v.angleSum()).isCloseTo(360, within(1e-9)));
  }

  static Stream<JsonNode> modes() {
    return examples("huffman-degree4-flat-foldable").stream();
  }

  /** D. A. Huffman, Curvature and creases, IEEE Trans. Computers C-25 (1976) 1010-1019. */
  @ParameterizedTest
  @MethodSource("modes")
  void flatFoldableCornersOfFourScoresFollowTheHalfAngleLaw(JsonNode example) {
    for (JsonNode mode : example.get("modes")) {
      Net net =
          Fan.net(
              numbers(example.get("creaseDirectionsDeg")),
              numbers(mode.get("foldAnglesDeg")),
              _ -> true);
      assertThat(Folding.fold(net).gap()).isLessThan(1e-9 * Fan.REACH);
    }
  }

  static Stream<JsonNode> corners() {
    return examples("degree3-spherical-cosines").stream();
  }

  /** Spherical law of cosines: I. Todhunter, Spherical Trigonometry (1886), art. 37. */
  @ParameterizedTest
  @MethodSource("corners")
  void cornersOfThreeFacesCloseAtTheSphericalAngles(JsonNode example) {
    List<Double> faces = numbers(example.get("faceAnglesDeg"));
    List<Double> dihedrals = numbers(example.get("dihedralAtEdgeOppositeFaceDeg"));
    assertCorner(
        faces, dihedrals, corner(faces, i -> FoldAngle.degrees(180 - dihedrals.get((i + 2) % 3))));
    // The same where the solver has to find the two angles.
    assertCorner(faces, dihedrals, corner(faces, _ -> FoldAngle.TO_SOLVE));
  }

  /** Three faces round a corner, two scores between them, the third edge seamed. */
  private static Net corner(List<Double> faces, IntFunction<FoldAngle> angle) {
    NetDraft draft = new NetDraft();
    List<PanelDraft> panels = new ArrayList<>();
    double at = 0;
    for (double face : faces) {
      double to = at + Math.toRadians(face);
      panels.add(draft.panel("face", PanelRole.FACET, Fan.sector(at, to), Site.NONE));
      at = to;
    }
    // Between faces 0 and 1 the dihedral angle is the one opposite face 2, and so on.
    for (int i = 0; i < 2; i++) {
      draft.score(
          panels.get(i).edge(3),
          panels.get(i + 1).edge(0),
          Sense.MOUNTAIN,
          angle.apply(i),
          Site.NONE);
    }
    draft.seam(panels.get(2).edge(3), panels.get(0).edge(0), null, Site.NONE);
    return draft.build();
  }

  private static void assertCorner(List<Double> faces, List<Double> dihedrals, Net net) {
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.gap()).isLessThan(1e-9 * Fan.REACH);
    assertThat(
            Dihedrals.between(net, form, net.scores().getFirst().a(), net.scores().getFirst().b()))
        .isCloseTo(dihedrals.get(2), within(1e-9));
    Join.Seam seam = (Join.Seam) net.joins().getFirst();
    assertThat(Dihedrals.between(net, form, seam.a(), seam.b()))
        .isCloseTo(dihedrals.get(1), within(1e-7));
    assertThat(Vertices.of(net, form).stream().filter(Vertices.Vertex::closed))
        .singleElement()
        .satisfies(
            v -> {
              assertThat(360 - v.angleSum())
                  .isCloseTo(360 - faces.stream().mapToDouble(f -> f).sum(), within(1e-9));
              assertThat(v.interior()).isFalse();
              assertThat(v.corners()).hasSize(3);
            });
  }

  static Stream<JsonNode> sectors() {
    return examples("kawasaki-justin").stream();
  }

  /** Signed angles, so many mountains and valleys, one a sector. */
  private static FlatFolding flat(List<Double> sectors, int mountains) {
    List<Double> directions = new ArrayList<>();
    List<Double> angles = new ArrayList<>();
    double at = 0;
    for (double sector : sectors) {
      directions.add(at);
      angles.add(angles.size() < mountains ? -180.0 : 180.0);
      at += sector;
    }
    Net net = Fan.net(directions, angles, _ -> true);
    List<FlatFolding> found =
        Vertices.of(net, Folding.fold(net)).stream()
            .flatMap(v -> FlatFolding.at(net, v).stream())
            .toList();
    assertThat(found).hasSize(1);
    return found.getFirst();
  }

  @ParameterizedTest
  @MethodSource("sectors")
  void kawasakiDecidesByTheAlternatingSum(JsonNode example) {
    List<Double> sectors = numbers(example.get("sectorAnglesDeg"));
    FlatFolding found = flat(sectors, sectors.size() / 2 + 1);
    assertThat(Math.abs(found.alternating()))
        .isCloseTo(Math.abs(example.get("alternatingSumDeg").asDouble()), within(1e-9));
    // With some mountains and valleys, that is: these or those that turning a few of them gives.
    boolean foldable = example.get("flatFoldableByKawasaki").asBoolean();
    assertThat(found.areAnglesRight()).isEqualTo(foldable);
    assertThat(found.isPossible() || !found.toTurn().isEmpty()).isEqualTo(foldable);
  }

  static Stream<JsonNode> degrees() {
    return examples("maekawa-justin").stream().filter(e -> e.has("allowed"));
  }

  @ParameterizedTest
  @MethodSource("degrees")
  void maekawaDecidesByMountainsLessValleys(JsonNode example) {
    int n = example.get("degree").asInt();
    List<Double> sectors = Collections.nCopies(n, 360.0 / n);
    for (JsonNode pair : example.get("allowed")) {
      assertThat(flat(sectors, pair.get(0).asInt()).isPossible()).isTrue();
    }
    for (JsonNode pair : example.get("forbidden")) {
      assertThat(flat(sectors, pair.get(0).asInt()).isPossible()).isFalse();
    }
  }
}
