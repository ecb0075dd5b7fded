package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.Summary;
import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Decimals;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lids that rest on something before their walls reach those of their box, and what stands alone.
 */
class StandingOffTest {
  private static Design design(String script) throws ScriptException {
    return Facetwright.evaluate(
        "design.js", "design(\"Trial\");\n" + script, Map.of(), Budget.USUAL);
  }

  private static String summary(Design design) {
    return Summary.of(design.laid(), design.folded(), design.findings(), design.unit());
  }

  private static Design spiked(int sides, int lid, double spike, String by) throws ScriptException {
    return design(
        String.format(
            """
            const base = prism({ sides: %1$d, side: 40, height: 30 }).raise("top", %2$s).unfold({ part: "base" });
            const lid = prism({ outline: regular({ sides: %1$d, side: 40 }).offset("card"), height: %3$d })
              .open("top").unfold({ part: "lid" });
            lid.over(base%4$s);
            """,
            sides, spike, lid, by));
  }

  /** A lid deeper than the spike is high goes down over the walls by the rest, a lower one not. */
  @ParameterizedTest
  @ValueSource(ints = {4, 6, 7})
  void onASpike(int sides) throws ScriptException {
    Design low = spiked(sides, 10, 25, "");
    assertThat(summary(low))
        .startsWith(
            "Can't be made as meant: \"lid\" does not go over \"base\": its rim stays 15 mm above"
                + " the walls there.");
    assertThat(low.findings().getFirst().fix()).contains("more than 15 mm deeper");
    Design deep = spiked(sides, 30, 25, "");
    assertThat(summary(deep)).startsWith("Closes").contains("goes over \"base\" with");
  }

  @Test
  void byTooLittle() throws ScriptException {
    Design design = spiked(4, 40, 25, ", { by: 20 }");
    assertThat(design.findings().getFirst().fix()).contains("more than 25 mm");
  }

  /**
   * What stands farther out of a tray than its lid is deep keeps the lid off; lower or deeper by
   * what is told, they go over each other by 5 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "45, 12, 15, 8",
    "45, 15, 15, 5",
    "60.25, 20, 30.25, 15.25",
    "40, 9.5, 10, 5.5",
  })
  void overWhatStandsOutOfATray(double tall, double deep, double out, double less)
      throws ScriptException {
    Design stopped = filled(tall, deep);
    assertThat(summary(stopped)).startsWith("Can't be made as meant: \"lid\" does not go over");
    Finding told = stopped.findings().getFirst();
    assertThat(told.message())
        .contains(
            String.format(
                Locale.ROOT,
                "\"insert\" stands %s mm out of \"tray\", and \"lid\" is %s mm deep",
                Decimals.plain(out),
                Decimals.plain(deep)));
    assertThat(told.fix())
        .startsWith(
            "Make \"insert\" lower by "
                + Decimals.plain(less)
                + " mm, or \"lid\" deeper by as much: then they go 5 mm over each other.");
    Design lower = filled(tall - less, deep);
    Design deeper = filled(tall, deep + less);
    for (Design mended : List.of(lower, deeper)) {
      assertThat(summary(mended)).startsWith("Closes").contains("\"lid\" goes over \"tray\"");
    }
    // The lid rests on the insert, its rim 5 mm below that of the tray, which is 30 mm high.
    assertThat(lower.folded().measures().height()).isCloseTo(25 + deep, within(1e-6));
    assertThat(deeper.folded().measures().height()).isCloseTo(25 + deep + less, within(1e-6));
  }

  private static Design filled(double tall, double deep) throws ScriptException {
    return design(
        String.format(
            Locale.ROOT,
            """
            const foot = rectangle({ width: 80, height: 60 });
            const tray = prism({ outline: foot, height: 30 }).open("top").unfold({ part: "tray" });
            const insert = prism({ outline: rectangle({ width: 78, height: 58 }), height: %s })
              .open("top").unfold({ part: "insert" });
            insert.into(tray);
            const lid = prism({ outline: foot.offset("card"), height: %s }).open("top").unfold({ part: "lid" });
            lid.over(tray);
            """,
            tall,
            deep));
  }

  /** Cups of one taper go into each other however far the one stands out. */
  @Test
  void taperedCupsGoIntoEachOther() throws ScriptException {
    Design design =
        design(
            """
            const outer = frustum({ sides: 8, side: 20, top: 26, height: 50 }).open("top").unfold({ part: "outer" });
            frustum({ sides: 8, side: 20, top: 25.3, height: 60 }).open("top").unfold({ part: "inner" }).into(outer);
            """);
    assertThat(summary(design)).contains("\"inner\" goes into \"outer\" with");
  }

  @Test
  void onItsTip() throws ScriptException {
    Design design =
        design(
            """
            const cup = box({ width: 60, depth: 60, height: 30 }).open("top").unfold({ part: "cup" });
            bipyramid({ sides: 4, side: 50, height: 100 }).unfold({ part: "top" }).into(cup);
            """);
    assertThat(summary(design)).contains("goes into \"cup\", but stops 20 mm before");
  }

  @ParameterizedTest
  @ValueSource(strings = {"on", "beside", "over"})
  void oneOfSeveralIsTold(String word) throws ScriptException {
    String other = word.equals("over") ? ".open(\"base\")" : "";
    Design design =
        design(
            "const leg = box({ width: 30, depth: 30, height: 60 }).unfold({ part: \"leg\", count: 4"
                + " });box({ width: 31.5, depth: 31.5, height: 10 })"
                + other
                + ".unfold({ part: \"top\" })."
                + word
                + "(leg);");
    List<String> told = design.findings().stream().map(Finding::message).toList();
    assertThat(told)
        .anyMatch(m -> m.startsWith("\"top\" goes " + word + " \"leg 1\" alone, one of 4"));
  }
}
