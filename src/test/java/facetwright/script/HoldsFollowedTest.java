package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * Tucks that do not come to lie behind their panel, and rims of wraps that are not pinched in turn:
 * what is said of them, followed to the letter, mends them.
 */
class HoldsFollowedTest {
  private record Said(String verdict, List<Finding> errors) {
    private static Said of(String script) {
      try {
        Design d = Facetwright.evaluate("design.js", script, Map.of(), Budget.USUAL);
        return new Said(
            Verdict.of(d.laid(), d.folded(), d.findings()).text(d.unit()),
            d.findings().stream().filter(f -> f.severity() == Finding.Severity.ERROR).toList());
      } catch (ScriptException e) {
        throw new AssertionError(script, e);
      }
    }

    private double number(String pattern, double otherwise) {
      return errors.stream()
          .flatMap(f -> Pattern.compile(pattern).matcher(f.fix()).results())
          .map(m -> Double.parseDouble(m.group(1)))
          .findFirst()
          .orElse(otherwise);
    }
  }

  /** A box whose lid is so deep and hangs as said, its tuck folded by so much. */
  private static String box(double deep, String hangs, double lid, double fold) {
    return """
    design("Box to open again");
    const floor = panel("floor", { width: 60, height: %s });
    const [front, right, back, left] = ["bottom", "right", "top", "left"].map((edge) =>
      floor.attach(edge, edge + " wall", { depth: 34, fold: 90 }));
    const lid = back.attach("top", "lid", { depth: %s%s });
    lid.tuck("top", front, { depth: 12, fold: %s });
    sheet("A2");
    """
        .formatted(deep, lid, hangs, fold);
  }

  @Property(tries = 25, seed = "20261201")
  void tucksReachBehindTheirPanel(
      @ForAll @DoubleRange(min = 30, max = 80) double deep,
      @ForAll @DoubleRange(min = 0.6, max = 1.4) double times,
      @ForAll @IntRange(min = -2, max = 2) int turns,
      @ForAll boolean isSaid) {
    double fold = isSaid ? 90 + 20 * turns : 90;
    double lid = times * deep;
    Assume.that(Math.abs(lid - deep) > 0.6 || fold != 90);
    String hangs = isSaid ? ", fold: 90" : "";
    Said said = Said.of(box(deep, hangs, lid, fold));
    assertThat(said.errors).as(said.verdict).extracting(Finding::rule).containsOnly("tuck-reach");
    assertThat(said.verdict).startsWith("Does not close: ").doesNotContain("misses");
    double right = said.number("[mM]ake \"lid\" ([\\d.]+) mm deep", lid);
    double turned = said.number("[fF]old the score .* by ([\\d.]+)°", fold);
    Said then = Said.of(box(deep, hangs, right, turned));
    assertThat(then.verdict).as("%s", said.errors).startsWith("Closes");
    assertThat(then.errors).isEmpty();
  }

  private static String wrap(int columns, double wide, double tall, String pinched) {
    return """
    design("Pinched");
    const b = wrap({ columns: %d, width: %s, rows: [20, %s], names: ["foot", "wall"], seam: 8 });
    b.columns(%s).rows("wall").gusset();
    sheet("A0");
    """
        .formatted(columns, wide, tall, pinched);
  }

  /** How wide the columns between pinched ones are together, in columns. */
  private static List<Integer> runs(int n, int mask) {
    List<Integer> runs = new ArrayList<>();
    int first = IntStream.range(0, n).filter(i -> (mask >> i & 1) == 1).findFirst().orElseThrow();
    int run = 0;
    for (int i = 1; i <= n; i++) {
      if ((mask >> (first + i) % n & 1) == 0) {
        run++;
      } else if (run > 0) {
        runs.add(run);
        run = 0;
      }
    }
    return runs;
  }

  /** Against the polygon inequality, told anew from which columns are pinched. */
  @Property(tries = 30, seed = "20261201")
  void rimsThatCannotClose(
      @ForAll @IntRange(min = 4, max = 9) int n,
      @ForAll @IntRange(min = 1, max = 511) int any,
      @ForAll @DoubleRange(min = 20, max = 30) double wide,
      @ForAll @DoubleRange(min = 1.2, max = 2.5) double times) {
    int mask = any & (1 << n) - 1;
    Assume.that(mask != 0);
    String pinched =
        IntStream.range(0, n).filter(i -> (mask >> i & 1) == 1).mapToObj(i -> i + 1).toList() + "";
    List<Integer> runs = runs(n, mask);
    int most = runs.stream().mapToInt(r -> r).max().orElse(0);
    boolean can = 2 * most <= runs.stream().mapToInt(r -> r).sum();
    Said said = Said.of(wrap(n, wide, times * wide, pinched));
    List<String> rules = said.errors.stream().map(Finding::rule).toList();
    if (can) {
      assertThat(rules).doesNotContain("uneven-rim");
      return;
    }
    assertThat(rules).as("%s of %d: %s", pinched, n, said.verdict).containsExactly("uneven-rim");
    assertThat(said.verdict).startsWith("Does not close: between pinched columns ");
    String fix = said.errors.getFirst().fix();
    assertThat(fix).contains("every second column, columns(\"even\")");
    Matcher such = Pattern.compile("such as (\\d+)").matcher(fix);
    int columns = such.find() ? Integer.parseInt(such.group(1)) : n;
    double tall = said.number("walls of ([\\d.]+) mm", times * wide);
    Said then = Said.of(wrap(columns, wide, tall, "\"even\""));
    assertThat(then.verdict).as(fix).startsWith("Closes");
    assertThat(then.errors).isEmpty();
  }
}
