package facetwright.workbench.table;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pins stand at what they are about, and hide none of each other. */
class PinsTest {
  /** A form with a seam too short for a tab, after as many plain boxes as are asked for. */
  private static Design design(int boxes) throws Exception {
    StringBuilder script = new StringBuilder("design(\"Pins\");\n");
    for (int i = 0; i < boxes; i++) {
      script.append("prism({ sides: 4, side: 20, height: 20 }).unfold();\n");
    }
    script.append(
        "pyramid({ sides: 24, side: 4, height: 30 }).unfold({ tab: 9 });\nsheet(\"A2\");");
    return Facetwright.evaluate("pins.js", script.toString(), Map.of(), Budget.USUAL);
  }

  @Test
  void whatIsTooLittleForATabStandsAtItsSeamBehindOtherParts() throws Exception {
    for (int boxes = 0; boxes < 3; boxes++) {
      Design design = design(boxes);
      Net net = design.net();
      List<Finding> about =
          design.findings().stream().filter(f -> f.rule().equals("unfolding")).toList();
      assertThat(about).isNotEmpty();
      for (Finding finding : about) {
        assertThat(finding.place()).isInstanceOf(Place.AtJoin.class);
        Join join = net.joins().get(((Place.AtJoin) finding.place()).join());
        Segment2 side = net.segment(((Join.Seam) join).a());
        assertThat(side.distance(Pins.place(design.laid(), finding))).isLessThan(1e-6);
        // A part of the pyramid: the boxes have six panels each and come first.
        assertThat(((Join.Seam) join).a().panel()).isGreaterThanOrEqualTo(6 * boxes);
      }
    }
  }

  @Test
  void pinsAtOnePlaceStandSideBySide() {
    Random random = new Random(3);
    for (int round = 0; round < 200; round++) {
      List<Vec2> set = new ArrayList<>();
      boolean right = random.nextBoolean();
      for (int i = 0; i < 9; i++) {
        Vec2 place = new Vec2(random.nextInt(3) * 14, random.nextInt(2) * 6);
        Vec2 free = Pins.beside(set, place, 20, right);
        assertThat(set).allMatch(p -> p.distance(free) >= 18);
        assertThat(free.y()).isEqualTo(place.y());
        set.add(free);
      }
    }
  }

  @Test
  void aPinByItselfStandsWhereItBelongs() {
    Vec2 place = new Vec2(40, 50);
    assertThat(Pins.beside(List.of(new Vec2(80, 50)), place, 20, true)).isEqualTo(place);
  }
}
