package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Designs with one thing wrong: it is found, its place named, and following the message to the
 * letter mends it.
 */
class HonestFailuresTest {
  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("trial.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Finding> of(String rule, Design design) {
    return design.findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  private static String verdict(Design design) {
    return Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
  }

  /** The first group of the pattern in the text. */
  private static String told(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertThat(matcher.find()).as(text).isTrue();
    return matcher.group(1);
  }

  private static String wrap(String columns) {
    return """
    design("Lantern");
    const body = wrap({
      columns: %s, width: 28, rows: [20, 90, 90, 20], seam: 7 });
    body.columns("even").rows("rim").remove();
    body.columns("even").rows("wall").gusset();
    body.columns("odd").rows("rim").tabs();
    sheet("A2");
    """
        .formatted(columns);
  }

  @Test
  void sevenColumnsPinchedInTurn() throws ScriptException {
    Design wrong = evaluate(wrap("7"));
    assertThat(wrong.folded().closure()).isEqualTo(Closure.NOT_SOLVED);
    assertThat(verdict(wrong))
        .startsWith("Not known: it can't be told whether it closes, because nothing determines");
    List<Finding> found = of("pinched-in-turn", wrong);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().message())
        .contains("\"wall 7 (row 2)\"", "\"wall 1 (row 2)\"", "side by side", "7 columns");
    assertThat(found.getFirst().site().line()).isEqualTo(2);
    Matcher advised =
        Pattern.compile("even number of columns: (\\d+) or (\\d+)\\.")
            .matcher(found.getFirst().fix());
    assertThat(advised.matches() || advised.find(0)).isTrue();
    for (int group = 1; group <= 2; group++) {
      Design mended = evaluate(wrap(advised.group(group)));
      assertThat(of("pinched-in-turn", mended)).isEmpty();
      assertThat(of("not-solved", mended)).isEmpty();
      assertThat(mended.isSound()).isTrue();
      assertThat(verdict(mended)).isEqualTo("Closes: every join meets to within 0.001 mm.");
    }
  }

  /** Rims left on as panels hang free: they are named, not the gussets, whose folds are held. */
  @Test
  void onlyWhatHangsFreeIsCalledNotKnown() throws ScriptException {
    Design wrong = evaluate(wrap("8").replace("body.columns(\"odd\").rows(\"rim\").tabs();", ""));
    assertThat(wrong.folded().free()).hasSize(8);
    Finding found = of("not-solved", wrong).getFirst();
    assertThat(found.message())
        .startsWith(
            "Nothing determines how far 8 scores are folded: the first is the score between")
        .contains("\"rim 1 (row 1)\"");
    assertThat(verdict(wrong)).contains("\"rim 1 (row 1)\"", "and 7 others.");
    assertThat(of("pinched-in-turn", wrong)).isEmpty();
  }

  private static String shelf(double back, double side, String fold) {
    return """
    design("Corner shelf");
    const shelf = panel("shelf", { width: 60, height: 60 });
    const back = shelf.attach("top", "back", { depth: %s, sense: "valley"%s });
    const side = shelf.attach("left", "side", { depth: %s, sense: "valley"%s });
    back.join("left", side, "right", { depth: 9 });
    """
        .formatted(back, fold, side, fold);
  }

  @ParameterizedTest
  @CsvSource({"', fold: 90'", "''"})
  void aSeamTwoMillimetresShortPanelByPanel(String fold) throws ScriptException {
    Design wrong = evaluate(shelf(40, 38, fold));
    assertThat(verdict(wrong))
        .isEqualTo(
            "Does not close: the seam between \"back\" and \"side\" misses by 2 mm, for its sides"
                + " differ by 2 mm.");
    assertThat(wrong.findings()).hasSize(1);
    Finding found = wrong.findings().getFirst();
    assertThat(found.rule()).isEqualTo("seam-lengths");
    assertThat(found.message()).contains("\"back\" (line 3)", "\"side\" (line 4)", "2 mm");
    assertThat(found.site().line()).isEqualTo(5);
    double longer = Double.parseDouble(told("\"side\" ([0-9.]+) mm longer", found.fix()));
    double shorter = Double.parseDouble(told("\"back\" ([0-9.]+) mm shorter", found.fix()));
    for (String mended : List.of(shelf(40, 38 + longer, fold), shelf(40 - shorter, 38, fold))) {
      Design right = evaluate(mended);
      assertThat(right.findings()).isEmpty();
      assertThat(verdict(right)).startsWith("Closes: every join meets");
    }
  }

  /** Drawn on the sheet: a wall scored at 23 mm where its neighbours stand 25 mm high. */
  private static String blank(double top) {
    return """
    design("Tray");
    const high = %s;
    const tray = blank({ width: 150, height: 85 + high });
    for (const from of ["left", "right", "bottom"]) tray.score({ from, at: 25, fold: 90 });
    tray.score({ from: "top", at: high, fold: 90 });
    for (const x of [25, 125]) {
      tray.cut({ from: "left", at: x, between: [0, 25] });
      tray.cut({ from: "left", at: x, between: [85, 85 + high] });
    }
    for (const x of [12, 138]) {
      for (const [y, wall] of [[12, 20], [86, 87]]) {
        tray.role([x, y], "tab").join([x, 55], [x < 75 ? 26 : 124, wall], { tab: [x, y] });
      }
    }
    """
        .formatted(top);
  }

  @Test
  void aSeamTwoMillimetresShortDrawnOnTheSheet() throws ScriptException {
    List<Finding> found = of("seam-lengths", evaluate(blank(23)));
    assertThat(found).hasSize(1);
    double more = Double.parseDouble(told(" ([0-9.]+) mm longer", found.getFirst().fix()));
    Design right = evaluate(blank(23 + more));
    assertThat(of("seam-lengths", right)).isEmpty();
    assertThat(verdict(right)).startsWith("Closes");
  }

  @Test
  void foldAnglesALittleOff() throws ScriptException {
    String tray =
        """
        design("Tray");
        const base = panel("base", { width: 60, height: 60 });
        const w = ["bottom", "right", "top", "left"].map((e, i) =>
          base.attach(e, "wall " + (i + 1), { depth: 25%s }));
        for (let i = 0; i < 4; i++) w[i].join("left", w[(i + 1) %% 4], "right", { depth: 8 });
        """;
    Design pressed = evaluate(tray.formatted(", fold: 89.9"));
    assertThat(verdict(pressed)).startsWith("Closes if the card bends by 0.0");
    assertThat(pressed.findings()).isEmpty();
    Design wrong = evaluate(tray.formatted(", fold: 88"));
    assertThat(of("gap", wrong)).hasSize(1);
    assertThat(wrong.isSound()).isFalse();
    assertThat(of("gap", wrong).getFirst().fix()).startsWith("Leave fold angles out");
    Design right = evaluate(tray.formatted(""));
    assertThat(right.findings()).isEmpty();
    assertThat(verdict(right)).startsWith("Closes: every join meets");
  }

  /** No wrap of unlike seams, no strain: the words of a design that needs a word. */
  @Test
  void scoresTooCloseAndHolesTooNear() throws ScriptException {
    String strip =
        """
        design("Book");
        const left = panel("left", { width: 50, height: 50 });
        const spine = left.attach("right", "spine", { depth: %s, fold: 90 });
        spine.attach("top", "right", { depth: 50, fold: 90 });
        left.hole({ across: 4, at: [0, %s] });
        """;
    Design wrong = evaluate(strip.formatted("1", "21.5"));
    Finding close = of("scores-too-close", wrong).getFirst();
    double apart = Double.parseDouble(told("Move them ([0-9.]+) mm farther", close.fix()));
    Finding near = of("hole-near-edge", wrong).getFirst();
    double inward = Double.parseDouble(told("move it ([0-9.]+) mm inward", near.fix()));
    Design right =
        evaluate(strip.formatted(String.valueOf(1 + apart), String.valueOf(21.5 - inward)));
    assertThat(of("scores-too-close", right)).isEmpty();
    assertThat(of("hole-near-edge", right)).isEmpty();
  }

  private static String star(int turn, String fold, String... senses) {
    StringBuilder script =
        new StringBuilder(
            "design(\"Scores about a point\");\nblank({ width: 100, height: 100 })\n");
    for (int i = 0; i < senses.length; i++) {
      double at = Math.toRadians(turn + 360.0 * i / senses.length);
      double reach = 50 / Math.max(Math.abs(Math.cos(at)), Math.abs(Math.sin(at)));
      script.append(
          String.format(
              Locale.ROOT,
              "  .score({ points: [[50, 50], [%.6f, %.6f]]%s%s })%n",
              50 + reach * Math.cos(at),
              50 + reach * Math.sin(at),
              senses[i].isEmpty() ? "" : ", sense: \"" + senses[i] + "\"",
              i == 0 ? ", fold: " + fold : ""));
    }
    return script.toString();
  }

  /**
   * Two lines that cross square fold one at a time (elementary: four equal sectors of 90°, one pair
   * of scores turned the same way), so that two of four valleys stay flat.
   */
  @ParameterizedTest
  @CsvSource({"0, 20", "0, 70", "20, 40", "30, 120"})
  void valleysThatStayFlat(int turn, String fold) throws ScriptException {
    Design wrong = evaluate(star(turn, fold, "valley", "valley", "valley", "valley"));
    List<Finding> found = of("sense", wrong);
    assertThat(found).hasSize(2);
    assertThat(found.getFirst().message()).endsWith("does not fold it at all.");
    assertThat(found.getFirst().fix()).startsWith("If it is to stay flat, give it a fold of 0.");
    String flat = star(turn, fold, "valley", "valley", "valley", "valley");
    for (Finding f : found) {
      List<String> lines = new ArrayList<>(flat.lines().toList());
      int line = f.site().line() - 1;
      lines.set(line, lines.get(line).replace("sense:", "fold: 0, sense:"));
      flat = String.join("\n", lines);
    }
    assertThat(of("sense", evaluate(flat))).isEmpty();
    assertThat(of("sense", evaluate(star(turn, fold, "valley", "", "valley", "")))).isEmpty();
  }
}
