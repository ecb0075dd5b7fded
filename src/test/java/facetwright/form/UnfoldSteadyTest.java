package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.form.change.Reshape;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Even forms unfold in many ways that are as good as each other. The last digits of their corners
 * must not choose between them.
 */
class UnfoldSteadyTest {
  /** Far above the rounding of doubles (2^-53, IEEE 754), far below any length that is meant. */
  private static final double HAIR = 1e-12;

  private static Form form(String name) {
    return switch (name) {
      case "bipyramid" -> Solids.bipyramid(8, 21, 96);
      case "flat bipyramid" -> Solids.bipyramid(6, 40, 30);
      case "antiprism" -> Solids.antiprism(5, 40, 50);
      case "twisted prism" -> Solids.prism(6, 40, 60).changed(Reshape.twisted(20));
      case "cube" -> Solids.box(40, 40, 40);
      case "globe" ->
          Solids.turned(
              List.of(new Vec2(15, 0), new Vec2(40, 30), new Vec2(40, 60), new Vec2(15, 90)), 9);
      default -> Reference.form(name, 30);
    };
  }

  private static Form moved(Form form, SplittableRandom random) {
    List<Vec3> corners = new ArrayList<>();
    for (Vec3 c : form.corners()) {
      corners.add(
          new Vec3(
              c.x() * (1 + random.nextDouble(-HAIR, HAIR)),
              c.y() * (1 + random.nextDouble(-HAIR, HAIR)),
              c.z() * (1 + random.nextDouble(-HAIR, HAIR))));
    }
    return Form.of(corners, form.facets());
  }

  /** Which panels hang on which, in the order of the net. */
  private static List<String> built(Net net) {
    Stream<String> scores = net.scores().stream().map((Score s) -> s.a() + " - " + s.b());
    Stream<String> panels = net.panels().stream().map(p -> p.role() + " " + p.name());
    return Stream.concat(panels, scores).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bipyramid",
        "flat bipyramid",
        "antiprism",
        "twisted prism",
        "cube",
        "globe",
        "p-dodecahedron",
        "p-icosahedron"
      })
  void aHairKeepsTheNet(String name) {
    Form even = form(name);
    SplittableRandom random = new SplittableRandom(20261125);
    Unfolding unfolding = Unfolding.as(UnfoldStyle.SEARCH).with(Tabs.deep(6));
    List<String> built = built(new Nets(even, unfolding).on(0, 0).net());
    for (int i = 0; i < 10; i++) {
      assertThat(built(new Nets(moved(even, random), unfolding).on(0, 0).net())).isEqualTo(built);
    }
  }
}
