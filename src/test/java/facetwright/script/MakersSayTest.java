package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.fold.pose.Measures;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Pieces of several parts as a maker says them: a script about as long as the sentences, closed,
 * whole and fitting.
 */
class MakersSayTest {
  private static final double INCH = 25.4;

  private static Design evaluate(String script, int lines) throws ScriptException {
    assertThat(script.strip().lines().count()).isLessThanOrEqualTo(lines);
    Design design = Facetwright.evaluate("said.js", script, Map.of(), Budget.USUAL);
    assertThat(design.isSound()).as(design.findings().toString()).isTrue();
    assertThat(design.folded().closes()).isTrue();
    assertThat(design.laid().fits()).isTrue();
    assertThat(design.folded().together().refused()).isEmpty();
    assertThat(design.findings()).noneMatch(f -> f.rule().equals("fit"));
    return design;
  }

  private static String verdict(Design design) {
    return Verdict.of(design.laid(), design.folded(), design.findings()).text(Unit.MM);
  }

  /**
   * "A five-pointed star, four inches across, the inner corners at half, an inch and a half tall,
   * open on top. A lid of the same outline that slides over it, half an inch deep."
   */
  @Test
  void aStarBoxWithItsLid() throws ScriptException {
    Design star =
        evaluate(
            """
            design("Star box", { units: "in" });
            sheet("A3");
            const five = star({ points: 5, across: 4, inner: 0.5 });
            const box = prism({ outline: five, height: 1.5 }).open("top").unfold({ part: "box" });
            const lid = prism({ outline: five.offset("card"), height: 0.5 }).open("top").unfold({ part: "lid" });
            lid.over(box);
            """,
            25 / 2);
    assertThat(star.folded().measures().height()).isCloseTo(1.5 * INCH, near());
    assertThat(verdict(star)).contains("\"lid\" goes over \"box\" with 0.5 mm of room across");
  }

  /**
   * "A drawer four by three by one, open on top, with a thumb notch in front. A sleeve round it,
   * open at both ends, that lets it slide."
   */
  @Test
  void aSleeveAndItsDrawer() throws ScriptException {
    Design drawer =
        evaluate(
            """
            design("Sleeve and drawer", { units: "in" });
            sheet("A3");
            const floor = panel("floor", { width: 4, height: 3 });
            const [front] = ["bottom", "right", "top", "left"].map((e) => floor.attach(e, e, { depth: 1, fold: 90 }));
            front.notch("top", { at: 2, width: 1, depth: 0.5, shape: "round" });
            const sleeve = prism({ outline: rectangle({ width: 4, height: 1 }).offset("card"), height: 3 });
            sleeve.open("top").open("base").unfold({ part: "sleeve" }).over(floor.part("drawer"));
            """,
            10);
    Measures made = drawer.folded().measures();
    assertThat(made.depth()).isCloseTo(3 * INCH, near());
    assertThat(made.height()).isBetween(INCH, INCH + 3);
    assertThat(made.width()).isBetween(4 * INCH, 4 * INCH + 3);
    assertThat(verdict(drawer)).contains("\"sleeve\" goes over \"drawer\" with ");
  }

  /**
   * "A base of two steps, each an inch narrower, a shaft that tapers to an inch and a half, a
   * pyramid on top. Each its own piece, standing on the one below, glued."
   */
  @Test
  void anObeliskStandingWhole() throws ScriptException {
    Design obelisk =
        evaluate(
            """
            design("Stepped obelisk", { units: "in" });
            sheet("A3");
            const base = prism({ sides: 4, side: 5, height: 1 }).unfold({ part: "base" });
            const step = prism({ sides: 4, side: 4, height: 1 }).unfold({ part: "step" });
            const shaft = frustum({ sides: 4, side: 3, top: 1.5, height: 8 }).unfold({ part: "shaft" });
            const tip = pyramid({ sides: 4, side: 1.5, height: 1.5 }).unfold({ part: "tip" });
            step.on(base); shaft.on(step); tip.on(shaft);
            """,
            18 / 2);
    assertThat(obelisk.folded().measures().height()).isCloseTo(11.5 * INCH, near());
    assertThat(obelisk.folded().measures().width()).isCloseTo(5 * INCH, near());
  }

  /**
   * "Seven sides of an inch, two tall, a window with a quarter-inch border on every other side. A
   * lid that slides over with a beveled top."
   */
  @Test
  void aSevenSidedBoxWithABeveledLid() throws ScriptException {
    Design seven =
        evaluate(
            """
            design("Seven-sided box", { units: "in" });
            sheet("A3");
            const seven = regular({ sides: 7, side: 1 });
            const box = prism({ outline: seven, height: 2 }).window(["side 1", "side 3", "side 5"], { border: "1/4 in" });
            const skirt = seven.offset("card");
            const lid = prism({ outline: skirt, height: 0.5 }).stack(frustum({ outline: skirt, top: skirt.offset("-1/4 in"), height: 0.25 }));
            lid.open("base").unfold({ part: "lid" }).over(box.open("top").unfold({ part: "box" }));
            """,
            16 / 2);
    // The rim comes to rest where the bevel is as narrow as the box.
    assertThat(seven.folded().measures().height()).isBetween(2.15 * INCH, 2.25 * INCH);
    assertThat(verdict(seven)).contains("\"lid\" goes over \"box\" with 0.5 mm of room across");
  }

  private static Offset<Double> near() {
    return Offset.offset(1e-6);
  }
}
