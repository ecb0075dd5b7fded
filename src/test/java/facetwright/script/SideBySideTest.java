package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Together;
import facetwright.geom.LengthTolerance;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several parts go into one, side by side as they were put. */
class SideBySideTest {
  private static Design cartons(double width, String placed) throws ScriptException {
    return Facetwright.evaluate(
        "two.js",
        """
        design("Two in a sleeve");
        const one = box({ width: 40, depth: 20, height: 90 }).unfold({ part: "carton one" });
        const two = box({ width: 40, depth: 20, height: 90 }).unfold({ part: "carton two" });
        const sleeve = wrap({ widths: [%1$s, 21, %1$s, 21], rows: [90], seam: 10 }).part("sleeve");
        %2$s
        """
            .formatted(width, placed),
        Map.of(),
        Budget.USUAL);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "two.beside(one, { by: 0.4 }); sleeve.over(one);",
        "two.beside(one, { by: 0.4 }); one.into(sleeve);",
      })
  void bothGoInAtOnce(String placed) throws ScriptException {
    Design design = cartons(81.6, placed);
    assertThat(design.findings())
        .extracting(Finding::rule)
        .doesNotContain("fit", "placing", "collision");
    Together.Nest nest = design.folded().together().nests().getFirst();
    assertThat(nest.depth()).isEqualTo(90, within(LengthTolerance.FINE.mm()));
    assertThat(nest.beside()).isEqualTo(1);
    assertThat(cartons(80.2, placed).findings()).extracting(Finding::rule).contains("fit");
  }

  @Test
  void whatDoesNotGoInAtAllIsTold() throws ScriptException {
    assertThat(cartons(41.6, "one.into(sleeve); two.into(sleeve);").findings())
        .filteredOn(f -> f.rule().equals("placing"))
        .singleElement()
        .extracting(f -> f.what().toString())
        .asString()
        .contains("in the way at the opening");
  }

  @Test
  void aPanelStandsForItsName() throws ScriptException {
    Design design =
        Facetwright.evaluate(
            "names.js",
            """
            design("Corner");
            const front = panel("front", { width: 40, height: 50 });
            const side = front.attach("left", "side", { depth: 20, fold: 90 });
            const top = front.attach("top", "top", { depth: 20, fold: 90 });
            side.join("left", top, "left", { on: top });
            front.note("Look here.", { before: side });
            """,
            Map.of(),
            Budget.USUAL);
    assertThat(design.net().fittings().all()).hasSize(1);
  }
}
