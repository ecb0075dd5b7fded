package facetwright.adjust;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What turning dials does is told as the designs before and after have it. */
class EffectTest {
  /** Four petals on a square of 40 mm: they reach its middle from 20 mm on. */
  private static final String PETALS =
      """
      design("Petals");
      const reach = dial("reach", 30, { from: 5, to: 60 });
      const base = panel("base", { width: 40, height: 40 });
      const all = ["bottom", "right", "top", "left"].map((side) =>
        base.attach(side, side + " petal", { corners: [[0, 0], [40, 0], [20, reach]] }));
      all.forEach((p, i) => p.join("3", all[(i + 1) % 4], "2", { tab: false }));
      sheet("A3");
      """;

  private static Design at(String reach) throws ScriptException {
    return Facetwright.evaluate("petals.js", PETALS, Map.of("reach", reach), Budget.USUAL);
  }

  private static List<String> words(Design before, Design after) {
    return Effect.words(before, after, !before.equals(after));
  }

  @Test
  void whatMeetsAsBefore() throws ScriptException {
    Design low = at("30");
    Design tall = at("40");
    assertThat(low.folded().closes()).as("%s", low.findings()).isTrue();
    assertThat(words(low, tall))
        .satisfiesExactly(
            size -> assertThat(size).startsWith("Made, it is ").contains(" (it was "),
            joins -> assertThat(joins).isEqualTo("As designed its joins meet, as before."));
    assertThat(words(low, low))
        .satisfiesExactly(
            size -> assertThat(size).startsWith("Made, it is ").doesNotContain("it was"),
            joins -> assertThat(joins).isEqualTo("As designed its joins meet."));
  }

  @Test
  void whatMissesNowOrDidBefore() throws ScriptException {
    Design closed = at("30");
    Design open = at("12");
    assertThat(open.folded().closes()).isFalse();
    assertThat(words(closed, open).getLast())
        .startsWith("As designed its joins miss by ")
        .endsWith(", where they met.");
    assertThat(words(open, closed).getLast())
        .startsWith("As designed its joins meet, where they missed by ");
    assertThat(words(at("10"), open).getLast()).contains(", where they missed by ");
    assertThat(words(open, open).getLast()).matches("As designed its joins miss by [\\d.]+ mm\\.");
  }

  @Test
  void whatIsNotKnown() throws ScriptException {
    String loose =
        """
        design("Loose");
        panel("one", { width: 40, height: 40 }).attach("top", "two", { depth: 20 });
        sheet("A4");
        """;
    Design open = Facetwright.evaluate("loose.js", loose, Map.of(), Budget.USUAL);
    if (open.folded().closes()) {
      assertThat(words(open, open).getLast()).startsWith("As designed its joins meet");
    } else {
      assertThat(words(open, open))
          .containsExactly("Whether it closes is not known, before or after.");
    }
  }

  @Test
  void aRemarkMayBeOfNoPlace() {
    assertThat(Remark.of("So it is.").site()).isEqualTo(facetwright.words.Site.NONE);
  }
}
