package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.close.Solved;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Folding theorems through the solver: some angles are given, the others found, and the published
 * examples tell what they have to be. Sources and tolerances stand beside the data.
 */
class SolvedTheoremsTest {
  private static List<Double> directions(JsonNode example) {
    return FoldTheoremsTest.numbers(example.get("creaseDirectionsDeg"));
  }

  static Stream<Arguments> modes() {
    List<Arguments> all = new ArrayList<>();
    for (JsonNode example : FoldTheoremsTest.examples("huffman-degree4-flat-foldable")) {
      for (JsonNode mode : example.get("modes")) {
        all.add(
            Arguments.of(
                directions(example),
                FoldTheoremsTest.numbers(mode.get("foldAnglesDeg")),
                mode.get("majorPair").asString().equals("c1,c3") ? 0 : 1,
                mode.get("p").asDouble()));
      }
    }
    return all.stream();
  }

  /** One angle tells the other three, the senses which of the two modes it is. */
  @ParameterizedTest
  @MethodSource("modes")
  void oneAngleOfAFlatFoldableCornerTellsTheOthers(
      List<Double> directions, List<Double> angles, int major, double p) {
    Net net = Fan.net(directions, angles, i -> i == major);
    Solved solved = Solving.of(net);
    assertThat(solved.verdict()).isEqualTo(Closure.CLOSES);
    for (int i = 0; i < 4; i++) {
      assertThat(-Math.toDegrees(solved.angles().foldBy(i))).isCloseTo(angles.get(i), within(1e-9));
    }
    // Part of the way the panels are as rigid, so that the law holds there too.
    FoldPath path = Folding.path(net);
    for (double t : new double[] {0.1, 0.37, 0.5, 0.8, 0.95}) {
      List<Double> part = Fan.angles(net, path.at(t));
      double one = Math.tan(Math.toRadians(part.get(major)) / 2);
      assertThat(one).isPositive();
      for (int i = 0; i < 4; i++) {
        double ratio = Math.tan(Math.toRadians(part.get(i)) / 2) / one;
        double law = i % 2 == major % 2 ? 1 : Math.copySign(p, angles.get(i));
        assertThat(ratio).isCloseTo(law, within(1e-6));
      }
      assertThat(Fan.productMisses(directions, part)).isLessThan(1e-7);
    }
  }

  static Stream<JsonNode> closures() {
    return FoldTheoremsTest.examples("belcastro-hull").stream();
  }

  /**
   * Three angles round a corner are left open. Whatever the solver finds, the product of turns is
   * none; and where the published angles close it finds those.
   */
  @ParameterizedTest
  @MethodSource("closures")
  void threeAnglesRoundACornerAreFoundByItsClosing(JsonNode example) {
    List<Double> directions = directions(example);
    List<Double> angles = FoldTheoremsTest.numbers(example.get("foldAnglesDeg"));
    int known = angles.size() - 3;
    // Begin where an angle is told that is not flat.
    int from = angles.getFirst() == 0 ? 1 : 0;
    Net net = Fan.net(directions, angles, i -> i >= from && i < from + known);
    Solved solved = Solving.of(net);
    assertThat(solved.verdict()).isEqualTo(Closure.CLOSES);
    List<Double> found = solved.angles().radians().stream().map(a -> -Math.toDegrees(a)).toList();
    assertThat(Fan.productMisses(directions, found)).isLessThan(1e-10);
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    List<Double> measured = Fan.angles(net, form.poses());
    for (int i = 0; i < angles.size(); i++) {
      assertThat(measured.get(i)).isCloseTo(found.get(i), within(1e-7));
      if (example.get("closes").asBoolean()) {
        assertThat(found.get(i)).isCloseTo(angles.get(i), within(1e-7));
      }
    }
  }

  /** All but the flat sheet, in which all ways to fold it meet: there no angle tells another. */
  static Stream<JsonNode> cells() {
    return FoldTheoremsTest.examples("miura-cell").stream()
        .filter(e -> e.get("thetaDeg").asDouble() > 0);
  }

  /** One score of a whole sheet is told; all others follow. */
  @ParameterizedTest
  @MethodSource("cells")
  void oneAngleOfASheetOfParallelogramsTellsAll(JsonNode example) {
    Miura sheet =
        new Miura(
            example.get("a").asDouble(),
            example.get("b").asDouble(),
            Math.toRadians(example.get("gammaDeg").asDouble()),
            Math.toRadians(example.get("thetaDeg").asDouble()),
            4,
            3);
    Net net = sheet.net(s -> s == 0);
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    double size = 4 * sheet.b() + 3 * sheet.a();
    Vec3 o = place(sheet, form.poses(), 0, 0);
    Vec3 x = place(sheet, form.poses(), 2, 0).minus(o);
    Vec3 y = place(sheet, form.poses(), 0, 2).minus(o);
    assertThat(x.length()).isCloseTo(2 * example.get("S").asDouble(), within(1e-9 * size));
    assertThat(y.length()).isCloseTo(2 * example.get("L").asDouble(), within(1e-9 * size));
    double high = place(sheet, form.poses(), 0, 1).minus(o).dot(x.cross(y).unit());
    assertThat(Math.abs(high)).isCloseTo(example.get("H").asDouble(), within(1e-9 * size));
    double shift = place(sheet, form.poses(), 1, 0).minus(o).dot(y.unit());
    assertThat(shift).isCloseTo(example.get("V").asDouble(), within(1e-9 * size));
    // The far corner: the sheet is as flat and as regular there.
    Vec3 far = place(sheet, form.poses(), 4, 2).minus(o);
    assertThat(far.distance(x.times(2).plus(y))).isLessThan(1e-8 * size);
  }

  private static Vec3 place(Miura sheet, List<Motion3> poses, int i, int j) {
    int column = Math.min(i, sheet.columns() - 1);
    int row = Math.min(j, sheet.rows() - 1);
    return poses.get(sheet.panel(column, row)).apply(sheet.flat(i, j));
  }
}
