package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.net.backing.Backings;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.materials.Goods;
import facetwright.papers.materials.LayersText;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What goes behind windows, as a script says it and as its papers tell it. */
class BackingWordsTest {
  private static final String LANTERN =
      """
      design("Soft lantern");
      prism({ sides: %d, side: 40, height: 70 })
        .window("side", { border: 10 })
        .backing("side", { paper: "vellum", %s })
        .unfold();
      """;

  private static Design run(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static Works works(Design d, int pieces) {
    return Works.of(d.laid(), d.gluing(), d.unit(), List.of(), pieces);
  }

  /** Every side has its piece, and what is bought and cut counts them all. */
  @ParameterizedTest
  @CsvSource({"3, 1", "4, 2", "6, 1", "7, 5"})
  void allAreCounted(int sides, int pieces) throws Exception {
    Design d = run(LANTERN.formatted(sides, "overlap: 3"));
    assertThat(Backings.of(d.net())).hasSize(sides);
    Works works = works(d, pieces);
    assertThat(works.layers().groups()).allMatch(LayerGroup::isBehind);
    assertThat(works.layers().groups().stream().mapToInt(LayerGroup::count).sum()).isEqualTo(sides);
    // A window of 20 by 50, with 3 mm round it.
    assertThat(new LayersText(Order.usual(d.unit())).backings(works))
        .containsExactly("Behind windows, of vellum: " + sides * pieces + " pieces 56 mm × 26 mm.");
    assertThat(works.materials().needs())
        .anyMatch(n -> n.what() instanceof Goods.Decorative g && g.name().startsWith("vellum"));
  }

  /** It is glued on while the piece is flat: before the section that glues it together. */
  @Test
  void theHandoutGluesItOnBeforeTheFormIsClosed() throws Exception {
    Design d = run(LANTERN.formatted(6, "overlap: 3"));
    List<Section> sections =
        Handout.of(
                d.title(),
                "",
                Order.usual(d.unit()),
                d.laid(),
                d.gluing(),
                Judgement.of(d.laid(), d.folded(), d.findings()),
                works(d, 1))
            .sections();
    int backed = -1;
    int glued = -1;
    for (int i = 0; i < sections.size(); i++) {
      if (sections.get(i) instanceof Section.Steps steps
          && steps.pictures().stream().anyMatch(Picture.Backed.class::isInstance)) {
        backed = i;
      }
      if (sections.get(i).heading().startsWith("Glue")) {
        glued = i;
      }
    }
    assertThat(backed).isPositive().isLessThan(glued);
  }

  /** What can't be is refused where it is said, with what there is room for. */
  @ParameterizedTest
  @CsvSource({
    "overlap: 9.5, there is room for 9 mm",
    "overlap: 0, from 0.5 mm to 100 mm",
    "overlop: 3, Did you mean \"overlap\"?",
    "shape: 'round', rectangle",
  })
  void whatCantBeIsRefused(String option, String told) {
    ScriptException refused =
        catchThrowableOfType(
            ScriptException.class, () -> run(LANTERN.formatted(6, option.replace('\'', '"'))));
    assertThat(refused.getMessage() + " " + refused.remedy()).contains(told);
    assertThat(refused.line()).isEqualTo(4);
  }

  @Test
  void aFacetWithoutAWindowIsRefused() {
    String script =
        LANTERN.formatted(6, "overlap: 3").replace("backing(\"side\"", "backing(\"top\"");
    assertThat(catchThrowableOfType(ScriptException.class, () -> run(script)))
        .hasMessageContaining("\"top\" has no window");
  }
}
