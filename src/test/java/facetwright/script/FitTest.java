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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/**
 * Parts called lid, sleeve, drawer or insert, from far too narrow to far too wide: the right word
 * each time, and the words followed to the letter make it go. A wall takes half a caliper on either
 * side of the net's (elementary), a tab glued to it a whole one more, and 2 mm more on a side is
 * loose (common practice, no source).
 */
class FitTest {
  static final double LOOSE = 4;

  /** Sizes nearer to a limit than this may be told either way. */
  static final double EDGE = 0.05;

  static final String NUMBER = "([0-9.]+)";

  static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("parts.js", script, Map.of(), Budget.USUAL);
  }

  static List<Finding> fit(String script) throws ScriptException {
    return evaluate(script).findings().stream().filter(f -> f.rule().equals("fit")).toList();
  }

  static String js(String script, Object... values) {
    return "design(\"Parts\");\nsheet({ width: 2000, height: 2000, caliper: "
        + String.format(Locale.ROOT, script, values);
  }

  static double[] told(String pattern, String text) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertThat(found.find()).as(text).isTrue();
    double[] numbers = new double[found.groupCount()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = Double.parseDouble(found.group(i + 1));
    }
    return numbers;
  }

  /** The finding that there must be for room of so much, beyond what the card takes. */
  static Finding judged(String script, double least, double most) throws ScriptException {
    List<Finding> found = fit(script);
    if (least < -EDGE) {
      assertThat(found).as(script).hasSize(1);
      assertThat(found.getFirst().severity()).isEqualTo(Severity.ERROR);
      assertThat(evaluate(script).isSound()).isFalse();
      return found.getFirst();
    }
    if (most > LOOSE + EDGE && least > EDGE) {
      assertThat(found).as(script).hasSize(1);
      assertThat(found.getFirst().severity()).isEqualTo(Severity.WARNING);
      assertThat(found.getFirst().message()).contains("loose");
      return found.getFirst();
    }
    if (least > EDGE && most < LOOSE - EDGE) {
      assertThat(found).as(script).isEmpty();
    }
    return found.isEmpty() ? null : found.getFirst();
  }

  private static String lid(double caliper, double w, double d, double lw, double ld) {
    return js(
        """
        %s });
        box({ width: %s, depth: %s, height: 30 }).open("top").unfold({ part: "box" });
        box({ width: %s, depth: %s, height: 12 }).open("top").unfold({ part: "lid" });
        """,
        caliper, w, d, lw, ld);
  }

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void squareLids(
      @ForAll @DoubleRange(min = 0.1, max = 1.5) double caliper,
      @ForAll @DoubleRange(min = 60, max = 120) double w,
      @ForAll @DoubleRange(min = 30, max = 40) double d,
      @ForAll @Size(2) List<@DoubleRange(min = -15, max = 15) Double> more)
      throws ScriptException {
    double lw = w + more.get(0) / (more.get(0) > 5 ? 1 : 4);
    double ld = d + more.get(1) / (more.get(1) > 5 ? 1 : 4);
    String script = lid(caliper, w, d, lw, ld);
    Design made = evaluate(script);
    double wide = lw - w - (2 + Walls.lined(made, "lid", ld)) * caliper;
    double deep = ld - d - (2 + Walls.lined(made, "lid", lw)) * caliper;
    Finding found = judged(script, Math.min(wide, deep), Math.max(wide, deep));
    if (found != null) {
      double[] sizes = told("Make the lid " + NUMBER + " × " + NUMBER + " mm", found.fix());
      assertThat(fit(lid(caliper, w, d, sizes[0], sizes[1]))).as(found.fix()).isEmpty();
      assertThat(found.site().line()).isEqualTo(4);
      if (Math.min(wide, deep) < -EDGE) {
        double[] box = told("or the box " + NUMBER + " × " + NUMBER + " mm", found.fix());
        assertThat(fit(lid(caliper, box[0], box[1], lw, ld)))
            .as(found.fix())
            .allMatch(f -> f.severity() == Severity.WARNING);
      }
    }
  }

  static String drum(double caliper, int sides, double box, double lid) {
    return js(
        """
        %s });
        prism({ sides: %d, side: %s, height: 40 }).open("top").unfold({ part: "box" });
        prism({ sides: %d, side: %s, height: 15 }).open("top").unfold({ part: "lid" });
        """,
        caliper, sides, box, sides, lid);
  }

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void lidsOfEqualSides(
      @ForAll @DoubleRange(min = 0.1, max = 1) double caliper,
      @ForAll @IntRange(min = 5, max = 12) int sides,
      @ForAll @DoubleRange(min = 15, max = 40) double side,
      @ForAll @DoubleRange(min = -10, max = 14) double across)
      throws ScriptException {
    double lid = side + across * Math.tan(Math.PI / sides);
    String script = drum(caliper, sides, side, lid);
    double clear = 2 * Walls.room(evaluate(script), "lid", across / 2 - caliper, caliper);
    Finding found = judged(script, clear, clear);
    if (found != null) {
      double[] mend =
          told("Make the lid " + NUMBER + " mm on a side .*?\\(" + NUMBER + " mm", found.fix());
      assertThat(fit(drum(caliper, sides, side, mend[0]))).as(found.fix()).isEmpty();
      double ofRadius = mend[1] * 2 * Math.sin(Math.PI / sides);
      assertThat(fit(drum(caliper, sides, side, ofRadius))).as(found.fix()).isEmpty();
    }
  }

  private static String star(double caliper, int points, double far, double near, double times) {
    return js(
        """
        %s });
        const star = (name, k, deep) => {
          const at = (i) => (i %% 2 ? %s : %s) * k;
          const n = 2 * %d;
          const corners = Array.from({ length: n }, (_, i) =>
            [at(i) * Math.cos(2 * Math.PI * i / n), at(i) * Math.sin(2 * Math.PI * i / n)]);
          const floor = panel(name, { corners });
          const walls = corners.map((_, i) =>
            floor.attach(`${i + 1}`, `${name} wall ${i + 1}`, { depth: deep, fold: 90 }));
          walls.forEach((w, i) => w.join("left", walls[(i + 1) %% n], "right", { tab: false }));
        };
        star("box", 1, 30);
        star("lid", %s, 12);
        """,
        caliper, near, far, points, times);
  }

  /** A star made so many times as large is set off by as much of its sides' distance. */
  @Property(tries = 30, shrinking = ShrinkingMode.OFF)
  void starLids(
      @ForAll @DoubleRange(min = 0.1, max = 1) double caliper,
      @ForAll @IntRange(min = 5, max = 8) int points,
      @ForAll @DoubleRange(min = 40, max = 70) double far,
      @ForAll @DoubleRange(min = 0.55, max = 0.75) double part,
      @ForAll @DoubleRange(min = -4, max = 6) double off)
      throws ScriptException {
    double near = far * part;
    double turn = Math.PI / points;
    double side = Math.sqrt(far * far + near * near - 2 * far * near * Math.cos(turn));
    double in = far * near * Math.sin(turn) / side;
    double clear = 2 * (off - caliper);
    Finding found = judged(star(caliper, points, far, near, 1 + off / in), clear, clear);
    if (found != null) {
      double times = (1 + off / in) * told(NUMBER + " times as large", found.fix())[0];
      assertThat(fit(star(caliper, points, far, near, times))).as(found.fix()).isEmpty();
      double[] set =
          told("Set each side of the lid " + NUMBER + " mm farther (?:out|in),", found.fix());
      double by = found.fix().contains("farther out") ? set[0] : -set[0];
      assertThat(fit(star(caliper, points, far, near, 1 + (off + by) / in)))
          .as(found.fix())
          .isEmpty();
    }
  }

  private static String sleeve(
      double caliper, double floor, double wall, double wide, double high, String name) {
    return js(
        """
        %s });
        const floor = panel("floor", { width: %s, height: 150 });
        const walls = ["bottom", "right", "top", "left"].map((e) =>
          floor.attach(e, e + " wall", { depth: %s, fold: 90 }));
        walls.forEach((w, i) => w.join("left", walls[(i + 1) %% 4], "right", { depth: 8 }));
        wrap({ widths: [%s, %s, %s, %s], rows: [140], names: ["%s"], seam: 5 });
        """,
        caliper, floor, wall, wide, high, wide, high, name);
  }

  /** Over the open top of the tray there is the sleeve's own half caliper only. */
  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void sleeves(
      @ForAll @DoubleRange(min = 0.1, max = 1) double caliper,
      @ForAll @DoubleRange(min = 60, max = 90) double floor,
      @ForAll @DoubleRange(min = 20, max = 30) double wall,
      @ForAll @DoubleRange(min = -15, max = 15) double wider,
      @ForAll @DoubleRange(min = -3, max = 8) double higher,
      @ForAll boolean isCalled)
      throws ScriptException {
    String name = isCalled ? "sleeve" : "wall";
    String script = sleeve(caliper, floor, wall, floor + wider, wall + higher, name);
    Design made = evaluate(script);
    double wide = wider - (2 + Walls.lined(made, name, wall + higher)) * caliper;
    double high = higher - (1.5 + Walls.lined(made, name, floor + wider)) * caliper;
    boolean isTold = isCalled || Math.max(Math.abs(wide), Math.abs(high)) < 12 - EDGE;
    isTold &= isCalled || Math.abs(wide - high) < LOOSE - EDGE;
    Finding found;
    if (isCalled) {
      found = judged(script, Math.min(wide, high), Math.max(wide, high));
    } else {
      List<Finding> all = fit(script);
      if (isTold && Math.min(wide, high) < -EDGE) {
        assertThat(all).hasSize(1);
        assertThat(all.getFirst().severity()).isEqualTo(Severity.ERROR);
      }
      found = all.isEmpty() ? null : all.getFirst();
    }
    if (found != null) {
      double[] sizes = told("Make the sleeve " + NUMBER + " × " + NUMBER + " mm", found.fix());
      assertThat(fit(sleeve(caliper, floor, wall, sizes[0], sizes[1], name)))
          .as(found.fix())
          .isEmpty();
    }
  }

  private static String drawer(double wide, double high) {
    return js(
        """
        0.3 });
        box({ width: 80, depth: 120, height: 40 }).open("side 1").unfold({ part: "case" });
        box({ width: %s, depth: 115, height: %s }).open("top").unfold({ part: "drawer" });
        """,
        wide, high);
  }

  @Test
  void drawersGoIntoTheirCase() throws ScriptException {
    assertThat(fit(drawer(78.5, 39))).isEmpty();
    // The halves of the nets mirror each other: on both sides a tab in the case at 0.3 and one of
    // the drawer at 0.15, besides two walls at 0.15; above and below, one of the drawer's.
    assertThat(fit(drawer(78.8, 39.55))).isEmpty();
    assertThat(fit(drawer(78.83, 39.55))).hasSize(1);
    assertThat(fit(drawer(78.8, 39.58))).hasSize(1);
    assertThat(fit(drawer(80, 39)).getFirst().fix())
        .isEqualTo(
            "Make the case 81.7 × 40 mm (1.7 mm more than its 80 mm), or the drawer 78.3 × 39 mm"
                + " (1.7 mm less than its 80 mm).");
    assertThat(fit(drawer(79, 60))).hasSize(1);
    assertThat(fit(drawer(70, 39)).getFirst().message()).contains("loose");
  }

  /** What stands with its lid, insert or foot is nobody else's. */
  @Test
  void sets() throws ScriptException {
    String shoulders =
        js(
            """
            0.3 });
            box({ width: 60, depth: 60, height: 30 }).open("top").unfold({ part: "base" });
            box({ width: 58.5, depth: 58.5, height: 40 }).open(["top", "base"]).unfold({ part: "neck" });
            box({ width: 60, depth: 60, height: 25 }).open("top").unfold({ part: "lid" });
            """);
    assertThat(fit(shoulders)).isEmpty();
    assertThat(fit(shoulders.replace("\"neck\"", "\"ring\""))).isEmpty();
    String nested =
        js(
            """
            0.3 });
            for (const size of [90, 70, 50]) {
              box({ width: size, depth: size, height: size / 2 }).open("top").unfold();
            }
            """);
    assertThat(fit(nested)).isEmpty();
  }
}
