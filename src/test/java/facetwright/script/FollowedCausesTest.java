package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Forms that an inequality keeps from closing, over random sizes: the verdict names the cause, one
 * error tells it, and the numbers it prints are enough, while less is not.
 */
class FollowedCausesTest {
  private static Design evaluate(String script, Object... values) throws ScriptException {
    String source = String.format(Locale.ROOT, script, values);
    return Facetwright.evaluate("trial.js", source, Map.of(), Budget.USUAL);
  }

  private static String verdict(Design design) {
    return Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
  }

  /** The one error there is, which the verdict agrees with. */
  private static Finding only(String rule, Design design) {
    List<Finding> errors =
        design.findings().stream().filter(f -> f.severity() == Finding.Severity.ERROR).toList();
    assertThat(errors).as(verdict(design)).hasSize(1);
    assertThat(errors.getFirst().rule()).isEqualTo(rule);
    assertThat(verdict(design)).startsWith("Does not close: ").doesNotContain("misses");
    return errors.getFirst();
  }

  private static List<Double> numbers(String pattern, String words) {
    List<MatchResult> found = Pattern.compile(pattern).matcher(words).results().toList();
    assertThat(found).as(words).isNotEmpty();
    MatchResult first = found.getFirst();
    return IntStream.rangeClosed(1, first.groupCount())
        .mapToObj(g -> Double.valueOf(first.group(g)))
        .toList();
  }

  private static void closes(Design design) {
    assertThat(verdict(design)).startsWith("Closes");
    assertThat(design.isSound()).as(verdict(design)).isTrue();
  }

  private static final String PETALS =
      """
      design("Petals");
      const n = %d;
      const base = panel("base", { sides: n, side: %s });
      const petals = [];
      for (let i = 1; i <= n; i++) {
        petals.push(base.attach(String(i), "petal " + i, { depth: %s, tip: 0.5 }));
      }
      petals.forEach((p, i) => p.join("left", petals[(i + 1) %% n], "right", { tab: false }));
      sheet("A0");
      """;

  /** From the apothem on: side/(2·tan(π/n)), handbook, from memory. */
  @Test
  void petalsReachTheApothem() throws ScriptException {
    Random chance = new Random(1);
    for (int i = 0; i < 12; i++) {
      int n = 3 + chance.nextInt(6);
      double side = 25 + 50 * chance.nextDouble();
      double apothem = side / (2 * Math.tan(Math.PI / n));
      double depth = (0.4 + 0.5 * chance.nextDouble()) * apothem;
      Finding found = only("narrow-corner", evaluate(PETALS, n, side, depth));
      double deep = numbers("Make both at least ([\\d.]+) mm deep", found.fix()).getFirst();
      assertThat(deep).isBetween(apothem - 1e-6, apothem + 0.011);
      closes(evaluate(PETALS, n, side, deep));
      assertThat(evaluate(PETALS, n, side, 0.95 * deep).isSound()).isFalse();
    }
  }

  /** Joined by the sides that lie away from each other, and too short besides: both are told. */
  @Test
  void petalsTooShortAndJoinedByWrongSides() throws ScriptException {
    String wrong = PETALS.replace("\"left\"", "\"LEFT\"").replace("\"right\"", "\"left\"");
    wrong = wrong.replace("\"LEFT\"", "\"right\"");
    Random chance = new Random(4);
    for (int i = 0; i < 12; i++) {
      int n = 4 + chance.nextInt(5);
      double side = 25 + 50 * chance.nextDouble();
      double apothem = side / (2 * Math.tan(Math.PI / n));
      double depth = (0.4 + 0.55 * chance.nextDouble()) * apothem;
      Finding found = only("wrong-sides", evaluate(wrong, n, side, depth));
      assertThat(found.fix())
          .matches("Join sides that meet at a corner: side 3 .* with side 2 .* So joined, .*");
      double deep = numbers("Make both at least ([\\d.]+) mm deep", found.fix()).getFirst();
      closes(evaluate(PETALS, n, side, deep));
      Finding first = only("wrong-sides", evaluate(wrong, n, side, 1.2 * deep));
      assertThat(first.fix()).startsWith("Join sides that meet").doesNotContain("So joined");
    }
  }

  private static final String OBLONG =
      """
      design("Roof");
      const base = panel("base", { width: %s, height: %s });
      const deep = { bottom: %s, right: %s };
      deep.top = deep.bottom;
      deep.left = deep.right;
      const petals = ["bottom", "right", "top", "left"].map((edge) =>
        base.attach(edge, edge + " petal", { depth: deep[edge], tip: 0.5 }));
      petals.forEach((p, i) => p.join("left", petals[(i + 1) %% 4], "right", { tab: false }));
      sheet("A0");
      """;

  @Test
  void petalsOfAnOblongReachItsMiddle() throws ScriptException {
    Random chance = new Random(2);
    for (int i = 0; i < 10; i++) {
      double w = 40 + 60 * chance.nextDouble();
      double h = 40 + 60 * chance.nextDouble();
      // All sides to be joined are as long, and shorter than the way to the middle.
      double half = Math.hypot(w, h) / 2;
      double side = Math.max(w, h) / 2 + 0.8 * (half - Math.max(w, h) / 2) * chance.nextDouble();
      double low = Math.sqrt(side * side - w * w / 4) + 1e-3;
      double high = Math.sqrt(side * side - h * h / 4) + 1e-3;
      Finding found = only("narrow-corner", evaluate(OBLONG, w, h, low, high));
      List<Double> deep =
          List.of(
              numbers("\"(?:bottom|top) petal\" (?:at least )?([\\d.]+) mm", found.fix())
                  .getFirst(),
              numbers("\"(?:left|right) petal\" (?:at least )?([\\d.]+) mm", found.fix())
                  .getFirst());
      assertThat(deep.getFirst()).isBetween(h / 2 - 1e-6, h / 2 + 0.011);
      assertThat(deep.getLast()).isBetween(w / 2 - 1e-6, w / 2 + 0.011);
      closes(evaluate(OBLONG, w, h, deep.getFirst(), deep.getLast()));
    }
  }

  private static final String TUBE =
      """
      design("Tube");
      const widths = [%s, %s, %s];
      const walls = [panel("wall 1", { width: widths[0], height: 50 })];
      for (let i = 1; i < 3; i++) {
        walls.push(walls[i - 1].attach(i > 1 ? "top" : "right", "wall " + (i + 1), { depth: widths[i] }));
      }
      walls[2].join("top", walls[0], "left", { tab: false });
      sheet("A0");
      """;

  /** Euclid, Elements I.20. */
  @Test
  void aWallIsNoWiderThanTheOthersTogether() throws ScriptException {
    Random chance = new Random(3);
    for (int i = 0; i < 12; i++) {
      double[] w = {20 + 40 * chance.nextDouble(), 20 + 40 * chance.nextDouble(), 0};
      w[2] = (w[0] + w[1]) * (1.02 + chance.nextDouble());
      int place = chance.nextInt(3);
      double wide = w[2];
      w[2] = w[place];
      w[place] = wide;
      Finding found = only("wide-wall", evaluate(TUBE, w[0], w[1], w[2]));
      assertThat(found.message()).startsWith("\"wall " + (place + 1) + "\"");
      double most = numbers("Make it ([\\d.]+) mm wide or narrower", found.fix()).getFirst();
      w[place] = most;
      closes(evaluate(TUBE, w[0], w[1], w[2]));
      w[place] = wide;
      double more = numbers("the others ([\\d.]+) mm wider in all", found.fix()).getFirst();
      w[(place + 1) % 3] += more;
      closes(evaluate(TUBE, w[0], w[1], w[2]));
    }
  }

  private static final String CORNER =
      """
      design("Corner");
      const angles = [%s, %s, %s].map((d) => d * Math.PI / 180);
      const sides = [];
      angles.forEach((a, i) => {
        // From the corner along the side before, and back by the next one.
        const third = [60 - 60 * Math.cos(a), 60 * Math.sin(a)];
        sides.push(i === 0
          ? panel("side 1", { corners: [[0, 0], [60, 0], third] })
          : sides[i - 1].attach("2", "side " + (i + 1), { corners: [[0, 0], [60, 0], third] }));
      });
      """;

  /** Three angles make a corner when none is larger than the others together: Elements XI.20. */
  @Test
  void anAngleIsNoLargerThanTheOthersTogether() throws ScriptException {
    Random chance = new Random(4);
    for (int i = 0; i < 12; i++) {
      double[] a = {20 + 40 * chance.nextDouble(), 20 + 40 * chance.nextDouble(), 0};
      a[2] = (a[0] + a[1]) * (1.05 + 0.3 * chance.nextDouble());
      Finding found = only("narrow-corner", corner(a));
      double by = numbers("at least ([\\d.]+)° narrower", found.fix()).getFirst();
      assertThat(by).isBetween(a[2] - a[0] - a[1] - 1e-9, a[2] - a[0] - a[1] + 0.011);
      closes(corner(new double[] {a[0], a[1], a[2] - by}));
      closes(corner(new double[] {a[0] + by / 2, a[1] + by / 2, a[2]}));
    }
  }

  private static Design corner(double[] a) throws ScriptException {
    return evaluate(
        CORNER + "sides[2].join(\"2\", sides[0], \"1\", { tab: false });\nsheet(\"A0\");\n",
        a[0],
        a[1],
        a[2]);
  }

  /** Corner webs that nothing holds: the word that holds them is named. */
  @Test
  void websThatNothingHolds() throws ScriptException {
    String tray =
        """
        design("Web tray");
        const W = 160.5, H = 130.5, w = 25.5;
        const tray = blank({ width: W, height: H });
        for (const from of ["bottom", "top"]) tray.score({ from, at: w, between: [w, W - w], fold: 90 });
        for (const from of ["left", "right"]) tray.score({ from, at: w, between: [w, H - w], fold: 90 });
        for (const at of [w, W - w]) for (const between of [[0, w], [H - w, H]]) {
          tray.score({ from: "left", at, between });
        }
        for (const at of [w, H - w]) for (const between of [[0, w], [W - w, W]]) {
          tray.score({ from: "bottom", at, between });
        }
        for (const x of [0, W]) for (const y of [0, H]) {
          const corner = [x ? W - w : w, y ? H - w : w];
          tray.score({ points: [[x, y], corner] });
          %s
        }
        tray.standOn([W / 2, H / 2]);
        sheet("A2");
        """;
    Design loose = evaluate(tray, "");
    assertThat(verdict(loose)).startsWith("Not known");
    assertThat(loose.findings().getFirst().fix()).contains("say with lap which panel lies under");
    String lap =
        "tray.lap([x ? W - w / 2 : w / 2, y ? H - w / 5 : w / 5],"
            + " [W / 2, y ? H - w / 2 : w / 2]);";
    closes(evaluate(tray, lap));
  }
}
