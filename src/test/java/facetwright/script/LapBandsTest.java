package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Bands of three panels, the last to lie under the first: they close flat where the one between is
 * no wider than the two others together, less what has to be glued (Euclid, Elements I.20, in the
 * limit). What does not close is mended by what is advised.
 */
class LapBandsTest {
  /** What has to lie on each other to be glued, in mm; common practice, no source. */
  private static final double HOLD = 1;

  private static final String BAND =
      """
      design("Band");
      const over = %s, wall = %s, under = %s;
      blank({ width: over + wall + under, height: 60 })
        .score({ from: "left", at: over%s })
        .score({ from: "right", at: under%s })
        .lap([over + wall + under / 2, 30], [over / 2, 30]);
      sheet("A0");
      """;

  private static final String FLAP =
      """
      design("Flap");
      const one = panel("one", { width: %s, height: 40 });
      const two = one.attach("right", "two", { depth: %s, fold: 180 });
      const flap = two.attach("top", "flap", { depth: %s%s });
      flap.lap(one);
      sheet("A0");
      """;

  private static Design evaluate(String script, Object... values) throws ScriptException {
    return Facetwright.evaluate(
        "band.js", String.format(Locale.ROOT, script, values), Map.of(), Budget.USUAL);
  }

  private static String verdict(Design d) {
    return Verdict.of(d.laid(), d.folded(), d.findings()).text(d.unit());
  }

  private static Finding error(Design d) {
    return d.findings().stream()
        .filter(f -> f.severity() == Finding.Severity.ERROR)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aWallUpToBothOthersClosesFlat() throws ScriptException {
    Random chance = new Random(9);
    for (int i = 0; i < 24; i++) {
      double over = 15 + 60 * chance.nextDouble();
      double under = 8 + 25 * chance.nextDouble();
      double most = over + under - HOLD;
      double wall = Math.max(over, under) + (most - Math.max(over, under)) * chance.nextDouble();
      assertThat(verdict(evaluate(BAND, over, wall - 0.1, under, "", ""))).startsWith("Closes");
    }
  }

  @Test
  void aWiderOneIsMended() throws ScriptException {
    Random chance = new Random(10);
    for (int i = 0; i < 12; i++) {
      double over = 15 + 60 * chance.nextDouble();
      double under = 8 + 25 * chance.nextDouble();
      double wall = (over + under) * (1.05 + chance.nextDouble());
      String first = i % 2 == 0 ? "" : ", fold: 180";
      String last = i % 3 == 0 ? "" : ", fold: 0";
      Design wide = evaluate(BAND, over, wall, under, first, last);
      assertThat(verdict(wide)).startsWith("Does not close");
      Matcher mend =
          Pattern.compile(
                  "Make it at most ([\\d.]+) mm wide(, and leave the fold angles out, so that they"
                      + " are found)?\\.")
              .matcher(error(wide).fix());
      assertThat(mend.matches()).as(error(wide).fix()).isTrue();
      double fits = Double.parseDouble(mend.group(1));
      assertThat(fits).isBetween(over + under - HOLD - 0.1, over + under - HOLD);
      assertThat(mend.group(2) == null).isEqualTo(first.isEmpty() && last.isEmpty());
      assertThat(verdict(evaluate(BAND, over, fits, under, "", ""))).startsWith("Closes");
    }
  }

  /** A flap that goes on beside its panel is folded back on it. */
  @Test
  void aFlapBesideIsFoldedRightOver() throws ScriptException {
    Random chance = new Random(11);
    for (int i = 0; i < 12; i++) {
      double one = 30 + 60 * chance.nextDouble();
      double two = one * (1 + 0.1 * chance.nextDouble());
      double flap = two - one + 8 + 20 * chance.nextDouble();
      Design beside = evaluate(FLAP, one, two, flap, ", fold: 0");
      assertThat(verdict(beside)).startsWith("Does not close").contains("beside it, not under it");
      Matcher mend =
          Pattern.compile(
                  "Fold the score between \"two\" and \"flap\" right over: 180°, a"
                      + " (mountain|valley)\\.")
              .matcher(error(beside).fix());
      assertThat(mend.matches()).as(error(beside).fix()).isTrue();
      String fold = ", fold: 180, sense: \"" + mend.group(1) + "\"";
      assertThat(verdict(evaluate(FLAP, one, two, flap, fold))).startsWith("Closes");
    }
  }
}
