package facetwright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;

/** Card that is folded right over is seen as it lies. */
class StackedTest {
  private static Design design(String script) throws Exception {
    return Facetwright.evaluate(
        "stacked.js",
        script.contains("design(") ? script : "design(\"Stacked\");\n" + script,
        Map.of(),
        Budget.USUAL);
  }

  /** A pleat lies leaf on leaf, whichever way the first one turns. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 5, 8})
  void aPleatLiesLeafOnLeaf(int leaves) throws Exception {
    for (int first = 0; first < 2; first++) {
      Design pleat =
          design(
              """
              const card = blank({ width: %d, height: 60 });
              for (let k = 1; k < %d; k++)
                card.score({ from: "left", at: 20 * k, fold: 180, sense: (k + %d) %% 2 ? "mountain" : "valley" });
              """
                  .formatted(20 * leaves, leaves, first));
      List<Integer> across =
          IntStream.range(0, leaves)
              .boxed()
              .sorted(
                  Comparator.comparingDouble(
                      p -> pleat.net().panels().get(p).outline().centroid().x()))
              .toList();
      List<Motion3> poses = pleat.folded().poses();
      Vec3 outside = poses.get(across.getFirst()).ez();
      // After a mountain the next leaf lies inside of the first, after a valley outside.
      List<Integer> upward = first == 0 ? across.reversed() : across;
      assertThat(new Stacked(pleat.net(), poses).order(across, outside)).isEqualTo(upward);
      assertThat(new Stacked(pleat.net(), poses).order(across, outside.times(-1)))
          .isEqualTo(upward.reversed());
    }
  }

  /**
   * A body closed on all sides shows the outside of its card from everywhere, a tray from below.
   */
  @ParameterizedTest
  @ValueSource(strings = {"chandlers-carton", "web-tray"})
  void onlyTheOutsideIsSeen(String name) throws Exception {
    Design design = design(LibraryDesigns.text(name));
    boolean isOpen = name.equals("web-tray");
    Random random = new Random(7);
    List<Motion3> made = design.folded().poses();
    Hiding hiding = Hiding.of(design.net(), made);
    int seen = 0;
    for (int i = 0; i < 60; i++) {
      double up = random.nextGaussian();
      Vec3 toward =
          new Vec3(random.nextGaussian(), random.nextGaussian(), isOpen ? -Math.abs(up) : up);
      for (int p = 0; p < design.net().panels().size(); p++) {
        Vec3 place = made.get(p).apply(design.net().panels().get(p).outline().centroid());
        Integer side = seen(hiding, made, toward.unit(), place);
        if (side != null) {
          seen++;
          assertThat(side).as("panel %s from %s", p, toward).isEqualTo(1);
        }
      }
    }
    assertThat(seen).isGreaterThan(300);
  }

  /** 1 where the outside of the card is seen there, −1 where its inside is; none near an edge. */
  private static Integer seen(Hiding hiding, List<Motion3> poses, Vec3 toward, Vec3 place) {
    Integer seen = null;
    for (Hiding.Shard shard : hiding.seenFrom(toward)) {
      Motion3 pose = poses.get(shard.panel());
      double slope = pose.ez().dot(toward);
      if (shard.isPane() || Math.abs(slope) < 1e-3) {
        continue;
      }
      Vec3 on = place.plus(toward.times(pose.ez().dot(pose.origin().minus(place)) / slope));
      Vec3 from = on.minus(pose.origin());
      Vec2 flat = new Vec2(from.dot(pose.ex()), from.dot(pose.ey()));
      Point point = shard.region().getFactory().createPoint(new Coordinate(flat.x(), flat.y()));
      if (shard.region().getBoundary().distance(point) < 1) {
        return null;
      }
      if (shard.region().contains(point)) {
        seen = slope > 0 ? 1 : -1;
      }
    }
    return seen;
  }

  @Test
  void nothingTogetherNothingToOrder() throws Exception {
    Design cube = design("box({ width: 30, depth: 30, height: 30 }).unfold();");
    assertThat(new Stacked(cube.net(), cube.folded().poses()).order(List.of(2), new Vec3(0, 0, 1)))
        .containsExactly(2);
  }
}
