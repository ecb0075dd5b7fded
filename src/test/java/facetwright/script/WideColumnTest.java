package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Columns close round exactly where none is wider than all others together (polygon inequality;
 * Euclid I.20 for three). It is a fault of the design: told with its net, not refused.
 */
class WideColumnTest {
  private static final Pattern LESS = Pattern.compile("Make it ([0-9.]+) mm wide");

  private static Design wrap(List<Double> widths) throws ScriptException {
    String script =
        "design(\"Band\");\nsheet({ width: 1000, height: 1000 });\nwrap({ widths: ["
            + String.join(", ", widths.stream().map(String::valueOf).toList())
            + "], rows: [20, 30], seam: 4 });\n";
    return Facetwright.evaluate("band.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Finding> found(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("wide-wall")).toList();
  }

  @Test
  void wrapsOfAllWidths() throws ScriptException {
    Random random = new Random(3);
    int wide = 0;
    for (int i = 0; i < 60; i++) {
      List<Double> widths = new ArrayList<>();
      int n = 3 + random.nextInt(5);
      for (int c = 0; c < n; c++) {
        widths.add(Math.rint(100 * (8 + 30 * random.nextDouble())) / 100);
      }
      int widest = random.nextInt(n);
      double others = widths.stream().mapToDouble(w -> w).sum() - widths.get(widest);
      widths.set(widest, Math.rint(100 * others * (0.9 + 0.3 * random.nextDouble())) / 100);
      double excess = widths.get(widest) - others;
      if (Math.abs(excess) < 0.3) {
        continue;
      }
      Design design = wrap(widths);
      List<Finding> found = found(design);
      if (excess < 0) {
        assertThat(found).as("%s", widths).isEmpty();
        continue;
      }
      wide++;
      assertThat(found).as("%s", widths).hasSize(1);
      assertThat(design.isSound()).isFalse();
      assertThat(design.folded().closure()).isEqualTo(Closure.OPEN);
      assertThat(design.findings()).noneMatch(f -> f.rule().equals("gap"));
      assertThat(found.getFirst().site().line()).isEqualTo(3);
      assertThat(found.getFirst().message()).startsWith("\"wall " + (widest + 1));
      Matcher less = LESS.matcher(found.getFirst().fix());
      assertThat(less.find()).isTrue();
      widths.set(widest, Double.parseDouble(less.group(1)) - 0.5);
      assertThat(found(wrap(widths))).isEmpty();
      assertThat(wrap(widths).folded().closes()).isTrue();
    }
    assertThat(wide).isGreaterThan(20);
  }
}
