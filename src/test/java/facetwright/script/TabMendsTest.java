package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Finding.Severity;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whoever follows what is said of a tab, to the letter, is rid of the finding. */
class TabMendsTest {
  private static final Set<String> OF_TABS = Set.of("tab-too-big", "tabs-clash", "tab-sticks-out");

  private static final Pattern BEVEL = Pattern.compile("by (\\d+)°");
  private static final Pattern DEEP = Pattern.compile("at most ([0-9.]+) mm deep");

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("tabs.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Finding> found(String script) throws ScriptException {
    return evaluate(script).findings().stream().filter(f -> OF_TABS.contains(f.rule())).toList();
  }

  private static String options(double depth, double bevel) {
    return String.format(Locale.ROOT, "{ depth: %.4f, bevel: %.4f }", depth, bevel);
  }

  /** A tray of which one tab lies under a wall that leans, or is low, or has a window. */
  private static String tray(Random random, String tab) {
    double wall = 12 + 20 * random.nextDouble();
    double slant = random.nextInt(3) == 0 ? 0 : 20 * random.nextDouble();
    boolean hasWindow = random.nextInt(3) == 0;
    return String.format(
            Locale.ROOT,
            """
            design("Tray");
            sheet({ width: 1000, height: 1000 });
            const floor = panel("floor", { width: 60, height: %.3f });
            const near = floor.attach("bottom", "near", { depth: %.3f, fold: 90 });
            const side = floor.attach("right", "side",
              { corners: [[0, 0], [%3$.3f, 0], [%3$.3f, %4$.3f], [0, %2$.3f]], fold: 90 });
            %5$s
            near.join("left", side, "4", %6$s);
            """,
            20 + 20 * random.nextDouble(),
            wall,
            20.0,
            Math.max(3, wall - slant),
            hasWindow ? "side.window({ width: 6, height: 4 });" : "",
            tab)
        .replace("height: 20", "height: 20");
  }

  private static double followed(Pattern pattern, String fix, double now) {
    Matcher told = pattern.matcher(fix);
    return told.find() ? Double.parseDouble(told.group(1)) : now;
  }

  /** Petals of a star: the corners of what a tab is glued under are sharper than its own. */
  private static String petals(int sides, double high, String tab) {
    return String.format(
        Locale.ROOT,
        """
        design("Petals");
        sheet({ width: 1000, height: 1000 });
        const n = %d, side = 40;
        const floor = panel("floor", { sides: n, side });
        const petals = Array.from({ length: n }, (_, i) =>
          floor.attach(`${i + 1}`, `petal ${i + 1}`, { depth: %.3f, tip: 0.5 }));
        petals.forEach((p, i) => p.join("3", petals[(i + 1) %% n], "2", %s));
        """,
        sides,
        high,
        tab);
  }

  @Test
  void petalsWithTabs() throws ScriptException {
    Random random = new Random(7);
    int mended = 0;
    for (int i = 0; i < 40; i++) {
      int sides = 3 + random.nextInt(6);
      double in = 20 / Math.tan(Math.PI / sides);
      double high = in * (1.1 + 2 * random.nextDouble());
      double edge = Math.hypot(high, 20);
      double bevel = 60 * random.nextDouble();
      double most = edge / 2 / Math.tan(Math.toRadians(Math.max(bevel, 1)));
      double depth = Math.min(2 + 20 * random.nextDouble(), 0.99 * most);
      List<Finding> found = found(petals(sides, high, options(depth, bevel)));
      for (int again = 0; again < 4 && !found.isEmpty(); again++) {
        String fix = found.getFirst().fix();
        assertThat(BEVEL.matcher(fix).find()).as(fix).isTrue();
        bevel = followed(BEVEL, fix, bevel);
        depth = followed(DEEP, fix, depth);
        String rule = found.getFirst().rule();
        String message = found.getFirst().message();
        found = found(petals(sides, high, options(depth, bevel)));
        assertThat(found)
            .as(fix)
            .noneMatch(f -> f.rule().equals(rule) && f.message().equals(message));
        mended++;
      }
      assertThat(found).isEmpty();
    }
    assertThat(mended).isGreaterThan(20);
  }

  @Test
  void tabsUnderWalls() throws ScriptException {
    int mended = 0;
    for (int i = 0; i < 60; i++) {
      Random random = new Random(i);
      double bevel = random.nextInt(50);
      double depth = 4 + 40 * random.nextDouble();
      // A tab that runs to a point before its depth is refused at its call.
      depth = Math.min(depth, 5 / Math.tan(Math.toRadians(Math.max(bevel, 1))));
      List<Finding> found = found(tray(new Random(i), options(depth, bevel)));
      for (int again = 0; again < 3 && !found.isEmpty(); again++) {
        String fix = found.getFirst().fix();
        bevel = followed(BEVEL, fix, bevel);
        depth = followed(DEEP, fix, depth);
        found = found(tray(new Random(i), options(depth, bevel)));
        mended++;
      }
      assertThat(found).as("seed %d", i).isEmpty();
    }
    assertThat(mended).isGreaterThan(10);
  }

  private static String crate(String tab) {
    return """
    design("Crate");
    const floor = panel("floor", { width: 60, height: 40 });
    const walls = ["bottom", "right", "top", "left"].map((e) =>
      floor.attach(e, e + " wall", { depth: 20, fold: 90 }));
    walls.forEach((w, i) => w.join("left", walls[(i + 1) %% 4], "right", %s));
    """
        .formatted(tab);
  }

  /** A tab longer than its wall is drawn, and told as what it is. */
  @Test
  void aTabFarPastItsWall() throws ScriptException {
    for (String options : new String[] {"{ depth: 80 }", "{ depth: 80, bevel: 0 }"}) {
      Design wrong = evaluate(crate(options));
      assertThat(wrong.isSound()).isFalse();
      List<Finding> found = found(crate(options));
      assertThat(found.getFirst().severity()).isEqualTo(Severity.ERROR);
      assertThat(found.getFirst().message()).contains("past the edge of \"right wall\"");
      assertThat(found.getFirst().site().line()).isEqualTo(5);
    }
    assertThat(found(crate("{ depth: 12 }"))).isEmpty();
    assertThat(found(crate("{ depth: 41.5, bevel: 0 }")).getFirst().severity())
        .isEqualTo(Severity.ERROR);
    assertThat(found(crate("{ depth: 40.1, bevel: 0 }")).getFirst().severity())
        .isEqualTo(Severity.WARNING);
  }
}
