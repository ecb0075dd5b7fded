package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Vec3;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.Rings;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is put together is seated in a ring as the one thing it is. */
class RingOfPartsTest {
  @ParameterizedTest
  @ValueSource(ints = {6, 8, 12})
  void thePartThatLiesOutsideIsSeated(int count) throws Exception {
    Design design =
        Facetwright.evaluate(
            "ring.js",
            """
            design("Ring of boxes");
            sheet("A2");
            const six = regular({ sides: 6, side: 30 });
            const box = prism({ outline: six, height: 50 }).open("top").unfold({ part: "box" });
            prism({ outline: six.offset("card"), height: 50 }).open("base").unfold({ part: "lid" }).over(box);
            """,
            Map.of(),
            Budget.USUAL);
    RingPlan plan = Rings.of(design.net(), design.folded()).plans(count).getFirst();
    assertThat(plan.seating().one())
        .allMatch(p -> design.net().panels().get(p).name().startsWith("lid"));
    // As wide as the farthest place of any piece, lid and all, and nothing stands beside.
    double far = 0;
    for (int p = 0; p < design.net().panels().size(); p++) {
      for (var corner : design.net().panels().get(p).outline().corners()) {
        Vec3 at = plan.copies().getFirst().apply(design.folded().whole().get(p).apply(corner));
        far = Math.max(far, Math.hypot(at.x(), at.y()));
      }
    }
    assertThat(plan.outer()).isCloseTo(2 * far, Offset.offset(1e-6));
  }
}
