package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Whatever is told of a design, right or wrong, is told in its reader's unit, and no line of a page
 * ends within a measure.
 */
class ReadersUnitTest {
  /** What a script or a maker wrote, and what stands beside inches in millimetres. */
  private static final Pattern ASIDE = Pattern.compile("\"[^\"]*\"|\\([^()]*? ?mm²?\\)");

  private static final Pattern METRIC = Pattern.compile("\\d\\)? ?(?:mm|cm)\\b|\\d g\\b|[mc]m[²³]");
  private static final Pattern INCHES =
      Pattern.compile("\\d\\)? in(?:²|[.,;:)]| \\(|$)|\\d[\"″]|\\b\\d+/\\d+\\b");
  private static final Pattern UNIT = Pattern.compile("^(?:(?:mm|cm)\\b|\\d+/\\d+)");
  private static final Pattern NUMBER = Pattern.compile(".*\\d[),]?$", Pattern.DOTALL);

  private int told;

  private void isOf(Unit unit, String words, String whence) {
    told++;
    String plain = ASIDE.matcher(words).replaceAll("…");
    assertThat(plain).as(whence).doesNotContainPattern(unit.isMetric() ? INCHES : METRIC);
    for (int width : new int[] {60}) {
      List<String> lines = Lettering.wrap(words, Mark.Weight.REGULAR, 4, width);
      for (int i = 1; i < lines.size(); i++) {
        assertThat(NUMBER.matcher(lines.get(i - 1)).matches() && UNIT.matcher(lines.get(i)).find())
            .as(lines.get(i - 1) + " | " + lines.get(i))
            .isFalse();
      }
    }
  }

  private void everything(String script) {
    Design design;
    try {
      design = Facetwright.evaluate("unit.js", script, Map.of(), Budget.USUAL);
    } catch (ScriptException e) {
      // A dial is typed in the design's own unit, and so are the ends of its range.
      boolean isOfDial = e.getMessage().startsWith("dial \"");
      for (Unit unit : isOfDial ? new Unit[0] : Unit.values()) {
        ScriptException read = e.in(unit, e.said());
        isOf(unit, read.getMessage(), script);
        isOf(unit, read.remedy(), script);
      }
      return;
    }
    for (Unit unit : Unit.values()) {
      isOf(unit, Verdict.of(design.laid(), design.folded(), design.findings()).text(unit), script);
      for (Finding finding : design.findings()) {
        // What an aim tells are dials and goals as they are typed, in the design's own unit.
        if (finding.rule().equals("aim") && unit != design.unit()) {
          continue;
        }
        for (Message words : List.of(finding.what(), finding.remedy(), finding.verdict())) {
          isOf(unit, words.text(unit), finding.rule() + ": " + script);
        }
      }
    }
  }

  @Test
  void ofTheTablesOfVerdictsAndSlips() throws IOException {
    List<String> scripts = new ArrayList<>();
    VerdictsOfDesignsTest.designs().forEach(a -> scripts.add((String) a.get()[4]));
    SlipsTest.slips().forEach(a -> scripts.add("design(\"T\");\n" + a.get()[1]));
    scripts.forEach(this::everything);
    assertThat(told).isGreaterThan(900);
  }

  @Test
  void ofTheLibrary() throws IOException {
    for (Path file : LibraryDesigns.files()) {
      everything(LibraryDesigns.text(file));
    }
    assertThat(told).isGreaterThan(50);
  }

  @Test
  void ofRandomOnesThatAreBroken() {
    Random random = new Random(20261201);
    for (int i = 0; i < 40; i++) {
      everything(broken(random));
    }
    assertThat(told).isGreaterThan(250);
  }

  private static double of(Random random, double from, double to) {
    return Math.rint(1e3 * (from + (to - from) * random.nextDouble())) / 1e3;
  }

  /** One way in a time, its measures such that something is wrong more often than not. */
  private static String broken(Random random) {
    String unit = random.nextBoolean() ? "mm" : "in";
    double k = unit.equals("mm") ? 25.4 : 1;
    String head =
        "design(\"B\", { units: \"%s\" });%nsheet(\"A5\", { weight: 200 });%n".formatted(unit);
    double[] n = random.doubles(6, 0.4, 3).map(d -> Math.rint(1e3 * k * d) / 1e3).toArray();
    String body =
        switch (random.nextInt(6)) {
          case 0 ->
              "const f = panel('f', { width: %s, height: %s }); const a = f.attach('top', 'a', {"
                  + " depth: %s, fold: %s }); const b = f.attach('right', 'b', { depth: %s, fold:"
                  + " 90 }); a.join('left', b, 'right', { depth: %s });";
          case 1 ->
              "const w = wrap({ columns: 6, width: %s, rows: [%s, %s, %s], seam: %s });"
                  + " w.columns('even').rows('wall').gusset(); w.columns('odd').rows('rim').tabs({"
                  + " hole: %s });";
          case 2 ->
              "const b = blank({ width: %s, height: %s }); b.score({ from: 'left', at: %s, fold: 90"
                  + " }); b.score({ from: 'bottom', at: %s, fold: 90 }); b.hole([%s, %s], { across:"
                  + " 0.4 });";
          case 3 ->
              "prism({ sides: 5, side: %s, height: %s }).window('side', { border: %s"
                  + " }).layer('top', { reveal: %s }).raise('top', %s).unfold({ tab: %s });";
          case 4 ->
              "const b = prism({ sides: 4, side: %s, height: %s }).open('top').unfold({ part: 'box'"
                  + " }); const l = prism({ sides: 4, side: %s, height: %s }).open('base').unfold({"
                  + " part: 'lid' }); l.over(b); say(%s + %s);";
          default ->
              "const w = panel('w', { width: %s, height: %s }); const a = w.attach('right', 'a', {"
                  + " depth: %s, fold: 100 }); const c = a.attach('top', 'c', { depth: %s, fold: 90"
                  + " }); const f = c.attach('top', 'f', { depth: %s, fold: 150 }); f.lap(w);"
                  + " w.hole([%s, 0.1], { across: 3 });";
        };
    return head
        + String.format(
            Locale.ROOT,
            body,
            n[0],
            n[1],
            n[2],
            body.contains("fold: %s") ? of(random, 20, 170) : n[3],
            n[4],
            n[5]);
  }
}
