package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Unit;
import facetwright.net.Panel;
import facetwright.net.Parts;
import facetwright.papers.materials.Materials;
import facetwright.papers.materials.Works;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Parts made alike are one part made several times, and no name is said twice. */
class AlikePartsTest {
  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("parts.js", "design('Parts');" + script, Map.of(), Budget.USUAL);
  }

  private static List<Materials.Made> made(Design d) {
    return Works.of(d.laid(), d.gluing(), Unit.MM, List.of(), 1).materials().parts();
  }

  private static final String POST =
      """
      const post = box({ width: 10, depth: 10, height: 30 }).unfold({ part: "post" });
      """;

  @Test
  void whatALoopMakesIsToldOnceWithItsNumber() throws ScriptException {
    Design loop =
        evaluate(
            "for (let k = 0; k < 3; k++) box({ width: 40, depth: 20, height: 30 }).unfold({ part:"
                + " 'box' });"
                + POST);
    Design counted =
        evaluate(
            "box({ width: 40, depth: 20, height: 30 }).unfold({ part: 'box', count: 3 });" + POST);
    assertThat(made(loop)).extracting(Materials.Made::name).containsExactly("box", "post");
    assertThat(made(loop)).extracting(Materials.Made::count).containsExactly(3, 1);
    assertThat(made(loop)).isEqualTo(made(counted));
    assertThat(loop.net().parts().all())
        .extracting(Parts.Part::name)
        .containsExactlyInAnyOrder("box 1", "box 2", "box 3", "post");
  }

  @Test
  void whatOnlySharesANameIsToldApart() throws ScriptException {
    Design design =
        evaluate(
            """
            for (const [height, count] of [[30, 1], [31, 2]]) {
              box({ width: 40, depth: 20, height }).unfold({ part: "box", count });
            }
            """);
    assertThat(made(design)).extracting(Materials.Made::name).containsExactly("box 1", "box 2");
    assertThat(made(design)).extracting(Materials.Made::count).containsExactly(1, 2);
    assertThat(design.net().panels()).extracting(Panel::name).doesNotHaveDuplicates();
  }

  @Test
  void noNameIsSaidTwice() throws ScriptException {
    Design design =
        evaluate(
            """
            const front = panel("carton front", { width: 40, height: 60 });
            front.attach("right", "carton 1 side", { depth: 20, fold: 90 });
            front.attach("left", "carton", { depth: 20, fold: 90 });
            front.attach("top", "cartonage", { depth: 20, fold: 90 });
            front.part("carton", { count: 2 });
            """);
    assertThat(design.net().panels())
        .extracting(Panel::name)
        .contains(
            "carton 1 front",
            "carton 2 front",
            "carton 1 side",
            "carton 2 side",
            "carton 1",
            "carton 2",
            "carton 1 cartonage",
            "carton 2 cartonage");
  }

  @Test
  void aNameThatIsTakenIsNotGivenAgain() throws ScriptException {
    Design design =
        evaluate(
            """
            box({ width: 40, depth: 20, height: 30 }).unfold({ part: "box 1" });
            box({ width: 40, depth: 20, height: 31 }).unfold({ part: "box", count: 2 });
            box({ width: 40, depth: 20, height: 32 }).unfold({ count: 2 });
            """);
    assertThat(design.net().parts().all())
        .extracting(Parts.Part::name)
        .containsExactlyInAnyOrder("box 1", "box 2", "box 3", "part 1", "part 2");
    assertThat(design.net().panels()).extracting(Panel::name).doesNotHaveDuplicates();
  }
}
