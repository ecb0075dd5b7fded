package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A net that is too large is told how much smaller it has to be, and then fits. */
class OffSheetScaleTest {
  private static final Pattern PERCENT = Pattern.compile("at (\\d+) % or less of every length");

  private static String number(double mm) {
    return String.format(Locale.ROOT, "%.6f", mm);
  }

  /** A design of one of several ways in, all its lengths times the scale. */
  private static String script(int seed, double scale) {
    Random random = new Random(seed);
    String a = number(scale * (120 + random.nextInt(900)));
    String b = number(scale * (120 + random.nextInt(900)));
    String c = number(scale * (60 + random.nextInt(500)));
    String tab = number(scale * (10 + random.nextInt(30)));
    int sides = 3 + random.nextInt(6);
    int margin = random.nextInt(3) * 5;
    String net =
        switch (random.nextInt(4)) {
          case 0 ->
              "box({ width: %s, depth: %s, height: %s }).unfold({ tab: %s });"
                  .formatted(a, b, c, tab);
          case 1 ->
              "prism({ sides: %d, side: %s, height: %s }).unfold({ tab: %s });"
                  .formatted(sides, c, b, tab);
          case 2 ->
              "wrap({ columns: %d, width: %s, rows: [%s, %s], seam: %s });"
                  .formatted(sides, c, a, b, tab);
          default ->
              "const p = panel('p', { width: %s, height: %s }); p.tab('top', { depth: %s, fold: 90 });"
                  .formatted(a, b, tab);
        };
    return "design('Large', { units: 'mm' });\n"
        + net
        + "\nsheet('A4', { margin: "
        + margin
        + " });\n";
  }

  private static Design design(String script) throws Exception {
    return Facetwright.evaluate("large.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Finding> found(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("off-sheet")).toList();
  }

  @Property(tries = 40, seed = "4711", shrinking = ShrinkingMode.OFF)
  void atThatSizeItFits(@ForAll @IntRange(max = 1_000_000) int seed) throws Exception {
    Design large = design(script(seed, 1));
    if (large.laid().fits()) {
      return;
    }
    Matcher told = PERCENT.matcher(found(large).getFirst().fix());
    assertThat(told.find()).as(found(large).getFirst().fix()).isTrue();
    int percent = Integer.parseInt(told.group(1));
    assertThat(found(design(script(seed, percent / 100.0)))).as(script(seed, 1)).isEmpty();
    // A form is unfolded anew for the sheet, which may come to more; other nets stay as they are.
    if (!script(seed, 1).contains("unfold")) {
      assertThat(found(design(script(seed, (percent + 1) / 100.0))))
          .as(script(seed, 1))
          .isNotEmpty();
    }
  }

  /** The margin counts: on A3, 420 mm long, 400 mm fit with margins of 10 mm only. */
  @Test
  void theMarginCounts() throws Exception {
    String panel =
        "design('Sign');\npanel('p', { width: 405, height: 100 });\nsheet('A4', { margin: %d });";
    String wide = found(design(panel.formatted(10))).getFirst().fix();
    assertThat(wide).startsWith("Use a larger sheet: A2 would do. Make it smaller, at 68 %");
    String narrow = found(design(panel.formatted(5))).getFirst().fix();
    assertThat(narrow).startsWith("Use a larger sheet: A3 would do. Make it smaller, at 70 %");
  }
}
