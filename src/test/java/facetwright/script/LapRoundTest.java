package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Tubes closed by a lap that can't close: the reason is told with its number, and whoever follows
 * what is said to the letter has a lap that meets.
 */
class LapRoundTest {
  private static final Pattern EACH = Pattern.compile("^Fold each by ([0-9.]+)°\\.$");
  private static final Pattern TWO =
      Pattern.compile(
          "^Fold the score between \".*\" and \".*\" by ([0-9.]+)°, and the score .* by"
              + " ([0-9.]+)°\\.$");
  private static final Pattern MEASURE =
      Pattern.compile("^Make \"w(\\d+)\" measure ([0-9.]+) mm across");
  private static final Pattern WIDE = Pattern.compile("^Make it at most ([0-9.]+) mm wide\\.$");

  /** A chain of walls, the last a flap that lies under the first; below 0 a fold is left out. */
  private static String tube(List<Double> widths, List<Double> folds) {
    StringBuilder script =
        new StringBuilder("design(\"Tube\");\nsheet({ width: 3000, height: 900 });\n");
    for (int i = 0; i < widths.size(); i++) {
      String fold = i == 0 || folds.get(i - 1) < 0 ? "" : ", fold: " + number(folds.get(i - 1));
      script.append(
          i == 0
              ? "const w1 = panel(\"w1\", { width: %s, height: 60 });\n"
                  .formatted(number(widths.get(0)))
              : "const w%d = w%d.attach(\"%s\", \"w%d\", { depth: %s%s });\n"
                  .formatted(
                      i + 1, i, i == 1 ? "right" : "top", i + 1, number(widths.get(i)), fold));
    }
    return script.append("w%d.lap(w1);\n".formatted(widths.size())).toString();
  }

  private static String number(double n) {
    return String.format(Locale.ROOT, "%.4f", n);
  }

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("lap.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Finding> told(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("lap-round")).toList();
  }

  private static void meets(Design design, String fix) {
    assertThat(told(design)).as(fix).isEmpty();
    assertThat(design.findings()).as(fix).noneMatch(f -> f.rule().equals("gap"));
    assertThat(design.folded().gap()).as(fix).isLessThan(0.2);
  }

  @Test
  void whoFollowsTheMendHasALapThatMeets() throws ScriptException {
    Random random = new Random(20261201);
    int folds = 0;
    int widths = 0;
    for (int i = 0; i < 120; i++) {
      int walls = 3 + random.nextInt(3);
      List<Double> wide = new ArrayList<>();
      List<Double> fold = new ArrayList<>();
      boolean isEven = random.nextInt(4) == 0;
      double each = 40 + 80 * random.nextDouble();
      for (int w = 0; w < walls; w++) {
        wide.add(isEven ? 40 : 25 + 40 * random.nextDouble());
        fold.add(isEven ? each : 360.0 / walls + 25 * random.nextGaussian());
      }
      wide.add(12.0);
      fold.replaceAll(f -> Math.clamp(f, 5, 175));
      if (random.nextInt(3) == 0) {
        double rest = 360 - fold.subList(0, walls - 1).stream().mapToDouble(f -> f).sum();
        fold.set(walls - 1, rest);
      }
      if (fold.get(walls - 1) < 0 || fold.get(walls - 1) > 180) {
        continue;
      }
      Design wrong = evaluate(tube(wide, fold));
      if (told(wrong).isEmpty()) {
        continue;
      }
      Finding found = told(wrong).getFirst();
      String verdict =
          Verdict.of(wrong.laid(), wrong.folded(), wrong.findings()).text(wrong.unit());
      assertThat(verdict).startsWith("Does not close: from \"w1\" round to");
      Matcher alike = EACH.matcher(found.fix());
      Matcher two = TWO.matcher(found.fix());
      Matcher measure = MEASURE.matcher(found.fix());
      if (alike.find()) {
        Collections.fill(fold, Double.parseDouble(alike.group(1)));
        folds++;
      } else if (two.find()) {
        fold.set(walls - 2, Double.parseDouble(two.group(1)));
        fold.set(walls - 1, Double.parseDouble(two.group(2)));
        folds++;
      } else if (measure.find()) {
        wide.set(Integer.parseInt(measure.group(1)) - 1, Double.parseDouble(measure.group(2)));
        widths++;
      } else {
        continue;
      }
      meets(evaluate(tube(wide, fold)), tube(wide, fold) + found.fix());
    }
    assertThat(folds).isGreaterThan(30);
    assertThat(widths).isGreaterThan(8);
  }

  /** One wall wider than all that would lead back: a triangle of bars, by Euclid I.20. */
  @Test
  void aWallTooWideToGoRound() throws ScriptException {
    Random random = new Random(7);
    for (int i = 0; i < 12; i++) {
      double one = 20 + 20 * random.nextDouble();
      double back = 20 + 20 * random.nextDouble();
      double most = one + back + 12 - 1;
      List<Double> open = List.of(-1.0, -1.0, -1.0);
      double past = 3 + 30 * random.nextDouble();
      Finding found = told(evaluate(tube(List.of(one, most + past, back, 12.0), open))).getFirst();
      Matcher told = WIDE.matcher(found.fix());
      assertThat(told.find()).as(found.fix()).isTrue();
      double width = Double.parseDouble(told.group(1));
      assertThat(width).isBetween(most - 0.04, most);
      Design mended = evaluate(tube(List.of(one, width, back, 12.0), open));
      assertThat(told(mended)).isEmpty();
      assertThat(Verdict.of(mended.laid(), mended.folded(), mended.findings()).text(mended.unit()))
          .doesNotStartWith("Does not close");
    }
  }

  /** What closes is told nothing. */
  @Test
  void aTubeThatGoesRoundIsSilent() throws ScriptException {
    List<Double> right = List.of(90.0, 90.0, 90.0, 90.0);
    Design design = evaluate(tube(List.of(60.0, 30.0, 50.0, 30.0, 12.0), right));
    assertThat(design.isSound()).isTrue();
    meets(design, "");
  }
}
