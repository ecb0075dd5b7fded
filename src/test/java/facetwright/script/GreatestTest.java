package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where a measure is too much for what it is asked of, the most that goes is told in the reader's
 * unit; and that goes, whatever the form.
 */
class GreatestTest {
  private static final int TIMES = 4;
  private static final String LENGTH = "(\\d[\\d./ -]*(?:mm|in))(?: \\([^)]*\\))?";

  /**
   * A word with a greatest measure.
   *
   * @param script with @ where the measure stands
   * @param advice finds the measure that is told to go
   */
  record Word(String name, Function<Random, String> script, String advice) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static String mm(Random random, double from, double to) {
    return String.format(Locale.ROOT, "\"%.2f mm\"", from + random.nextDouble() * (to - from));
  }

  private static String form(Random random) {
    int sides = 3 + random.nextInt(5);
    String side = mm(random, 20, 40);
    String height = mm(random, 20, 50);
    return switch (random.nextInt(4)) {
      case 0 ->
          "box({ width: " + mm(random, 20, 60) + ", depth: " + side + ", height: " + height + " })";
      case 1 -> "prism({ sides: " + sides + ", side: " + side + ", height: " + height + " })";
      case 2 -> "pyramid({ sides: " + sides + ", side: " + side + ", height: " + height + " })";
      default ->
          "bipyramid({ sides: "
              + sides
              + ", side: "
              + side
              + ", height: "
              + mm(random, 50, 90)
              + " })";
    };
  }

  private static String drum(Random random) {
    return "prism({ sides: %d, side: %s, height: %s })"
        .formatted(3 + random.nextInt(5), mm(random, 20, 40), mm(random, 20, 50));
  }

  private static String panel(Random random) {
    return random.nextBoolean()
        ? "const p = panel(\"p\", { width: %s, height: %s });"
            .formatted(mm(random, 30, 60), mm(random, 30, 60))
        : "const p = panel(\"p\", { corners: [[0, 0], [%s, 0], [%s, %s], [0, %s]] });"
            .formatted(
                mm(random, 40, 60), mm(random, 30, 39), mm(random, 35, 50), mm(random, 30, 50));
  }

  private static String wrap(Random random) {
    return "const w = wrap({ columns: %d, width: %s, rows: [%s, %s] });"
        .formatted(
            4 + random.nextInt(5), mm(random, 24, 40), mm(random, 13, 20), mm(random, 30, 60));
  }

  static List<Word> words() {
    String deep = "at most " + LENGTH;
    return List.of(
        new Word("chamferEdges", r -> form(r) + ".chamferEdges(@).unfold({ tabs: false });", deep),
        new Word(
            "chamferCorners",
            r -> drum(r) + ".chamferCorners(@).unfold({ tabs: false });",
            "shortest edge, " + LENGTH),
        new Word(
            "notch",
            r ->
                panel(r)
                    + " p.notch(\"%s\", { at: \"15 mm\", width: %s, depth: @, shape: \"%s\" });"
                        .formatted(
                            List.of("bottom", "left", "top").get(r.nextInt(3)),
                            mm(r, 6, 16),
                            List.of("v", "square", "round").get(r.nextInt(3))),
            deep),
        new Word(
            "attach at",
            r ->
                panel(r)
                    + " p.attach(\"top\", \"q\", { depth: \"9 mm\", width: \"5 mm\", offset: @ });",
            "room from " + LENGTH),
        new Word(
            "hole",
            r ->
                panel(r)
                    + " p.hole({ across: @, at: [%s, %s] });".formatted(mm(r, 0, 4), mm(r, 0, 4)),
            "may be " + LENGTH + " across"),
        new Word(
            "hole of a form",
            r -> drum(r) + ".hole(\"side 1\", { across: @ }).unfold();",
            "may be " + LENGTH + " across"),
        new Word("window", r -> panel(r) + " p.window({ sides: 6, across: @ });", "WINDOW"),
        new Word(
            "hole of a wrap", r -> wrap(r) + " w.columns(2).rows(2).hole({ across: @ });", deep),
        new Word(
            "layer of a wrap",
            r -> wrap(r) + " w.columns(2).rows(2).layer({ reveal: @ });",
            "reveal " + LENGTH + " or less"),
        new Word(
            "layer", r -> panel(r) + " p.layer({ reveal: @ });", "reveal " + LENGTH + " or less"),
        new Word("rounded", r -> panel(r) + " p.rounded(@);", "at most by " + LENGTH),
        new Word("chamfer", r -> panel(r) + " p.chamfer(1, @);", "to " + LENGTH),
        new Word(
            "attach",
            r -> panel(r) + " p.attach(\"top\", \"q\", { depth: \"9 mm\", width: @ });",
            deep),
        new Word("tab", r -> panel(r) + " p.tab(\"top\", { depth: @, bevel: 60 });", deep),
        new Word(
            "tuck",
            r ->
                panel(r)
                    + " const q = p.attach(\"top\", \"q\", { depth: \"30 mm\" }); q.tuck(\"top\","
                    + " p, { depth: @, bevel: 30 });",
            deep),
        new Word(
            "hook",
            r ->
                panel(r)
                    + " const q = p.attach(\"top\", \"q\", { depth: \"30 mm\" }), s ="
                    + " p.attach(\"right\", \"s\", { depth: \"30 mm\" }); q.hook(\"right\", s,"
                    + " \"left\", { depth: @, bevel: 45 });",
            deep),
        new Word(
            "outline.rounded",
            r ->
                "panel(\"p\", { outline: star({ points: 5, across: %s }).rounded(@) });"
                    .formatted(mm(r, 40, 60)),
            "at most by " + LENGTH),
        new Word(
            "outline.offset",
            r ->
                "panel(\"p\", { outline: star({ points: 5, across: %s }).offset(\"-\" + @) });"
                    .formatted(mm(r, 40, 60)),
            "at most by " + LENGTH),
        new Word("floor", r -> wrap(r) + " w.floor({ tab: @ });", "less than " + LENGTH));
  }

  static List<Arguments> both() {
    return words().stream()
        .flatMap(w -> List.of(Arguments.of(w, "mm"), Arguments.of(w, "in")).stream())
        .toList();
  }

  private static Design evaluate(String unit, String lines) throws ScriptException {
    String script = "design(\"T\", { units: \"" + unit + "\" });\nsheet(\"A2\");\n" + lines;
    return Facetwright.evaluate("t.js", script, Map.of(), Budget.USUAL);
  }

  @ParameterizedTest(name = "{0} in {1}")
  @MethodSource("both")
  void whatIsToldToGoGoes(Word word, String unit) throws ScriptException {
    for (int seed = 1; seed <= TIMES; seed++) {
      String script = word.script.apply(new Random(seed));
      String told = told(unit, script.replace("@", "\"95 mm\""));
      assertThat(told).as(script).isNotEmpty();
      String pattern =
          word.advice.equals("WINDOW") ? "may be " + LENGTH + " wide and " + LENGTH : word.advice;
      Matcher advice = Pattern.compile(pattern).matcher(told);
      assertThat(advice.find()).as(script + " → " + told).isTrue();
      assertThat(advice.group(1)).as(told).endsWith(unit);
      boolean isUnder = pattern.startsWith("less than");
      String less =
          told(
              "mm",
              script.replace(
                  "@",
                  isUnder
                      ? "length(\"" + advice.group(1).strip() + "\") * 0.99"
                      : '"' + advice.group(1).strip() + '"'));
      assertThat(less).as(script + " → " + told + " → " + less).isEmpty();
    }
  }

  /** What is refused, or found of the measure; nothing where it goes. */
  private static String told(String unit, String lines) {
    Design[] made = new Design[1];
    ScriptException refused =
        catchThrowableOfType(ScriptException.class, () -> made[0] = evaluate(unit, lines));
    return refused != null
        ? refused.getMessage() + " " + refused.remedy()
        : made[0].findings().stream()
            .filter(f -> f.rule().equals("layer-lost"))
            .map(Finding::fix)
            .findFirst()
            .orElse("");
  }

  /** A plane that misses goes through when it is moved as told. */
  @ParameterizedTest
  @MethodSource("planes")
  void aPlaneMovedAsToldCuts(double height, double at) throws ScriptException {
    String script =
        "prism({ sides: 5, side: 30, height: "
            + height
            + " }).cut({ at: [0, 0, %s], away: [0, 0, 1] }).unfold();";
    String told = told("mm", script.formatted(at));
    Matcher by =
        Pattern.compile("by more than ([\\d.]+) mm and less than ([\\d.]+) mm").matcher(told);
    assertThat(by.find()).as(told).isTrue();
    double way = told.contains("against the way") ? -1 : 1;
    for (double part : new double[] {0.05, 0.5, 0.95}) {
      double least = Double.parseDouble(by.group(1));
      double most = Double.parseDouble(by.group(2));
      assertThat(told("mm", script.formatted(at + way * (least + part * (most - least)))))
          .isEmpty();
    }
  }

  static List<Arguments> planes() {
    return List.of(
        Arguments.of(40, 50), Arguments.of(40, 40), Arguments.of(40, 0), Arguments.of(25, -12.5));
  }
}
