package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.net.Panel;
import facetwright.net.sheet.Stock;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines as a script says them. */
class OutlineWordsTest {
  private static final String STAR =
      """
      design("Star box with lid", { units: "in" });
      sheet("A3", { weight: %s });
      const five = star({ points: 5, across: 4, inner: 0.5 });
      prism({ outline: five, height: 1.5 }).open("top").unfold({ part: "box" });
      prism({ outline: five.offset("card"), height: 0.5 }).open("top").unfold({ part: "lid" });
      """;

  private static Design run(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static ScriptException fails(String script) {
    return catchThrowableOfType(ScriptException.class, () -> run(script));
  }

  /** The lid slides over its box, whatever card they are cut from. */
  @ParameterizedTest
  @ValueSource(strings = {"120", "220", "300", "400"})
  void aLidSetOffByTheCardSlidesOver(String weight) throws Exception {
    Design design = run(STAR.formatted(weight));
    assertThat(STAR.lines().count()).isLessThanOrEqualTo(12);
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(design.findings())
        .noneMatch(f -> f.rule().equals("fit"))
        .noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    assertThat(design.laid().fits()).isTrue();
  }

  /** Without its play, and a thickness less, it is told to be too tight. */
  @Test
  void aLidSetOffByLessIsTooTight() throws Exception {
    String tight = STAR.formatted(220).replace("\"card\"", "\"0.3 mm\"");
    assertThat(run(tight).findings())
        .anyMatch(f -> f.rule().equals("fit") && f.severity() == Finding.Severity.ERROR);
  }

  @Test
  void anInsertSetOffInwardGoesIn() throws Exception {
    Design design =
        run(
            """
            design("Box with insert");
            sheet("A3");
            const six = regular({ sides: 6, side: 40 });
            prism({ outline: six, height: 30 }).open("top").unfold({ part: "box" });
            prism({ outline: six.offset("-card"), height: 20 }).open("top").unfold({ part: "insert" });
            """);
    assertThat(design.findings()).noneMatch(f -> f.rule().equals("fit"));
  }

  @Test
  void theCardIsTheOneThatTheSheetNames() throws Exception {
    String script =
        """
        design("Set off");
        %s
        const six = regular({ sides: 4, side: 40 }).offset("card");
        say([six.width()]);
        panel("a", { outline: six });
        """;
    double usual = Stock.usualCaliper(Stock.USUAL_WEIGHT);
    for (String sheet : new String[] {"", "sheet(\"A4\");", "sheet(\"A4\", { caliper: 0.5 });"}) {
      double caliper = sheet.contains("0.5") ? 0.5 : usual;
      Panel panel = run(script.formatted(sheet)).net().panels().getFirst();
      assertThat(panel.outline().side(0).length())
          .isEqualTo(40 + 2 * Stock.slidesOver(caliper, caliper), within(1e-9));
    }
    ScriptException late = fails(script.formatted("") + "sheet(\"A4\", { weight: 300 });");
    assertThat(late.line()).isEqualTo(6);
    assertThat(late).hasMessageContaining("after an outline was set off");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "star({ points: 2, across: 40 }) | 2 is too small",
        "star({ points: 5, across: 40, inner: 1.2 }) | 1.2 is too large",
        "regular({ sides: 5 }) | regular needs one measure",
        "regular({ sides: 5, side: 10, across: 20 }) | regular needs one measure",
        "rectangle({ width: 40 }) | rectangle needs height",
        "circle({ across: -4 }) | too small",
        "circle({ diameter: 4 }) | no option \"diameter\"",
        "outline([[0, 0], [10, 0]]) | is too short",
        "outline([[0, 0], [10, 10], [10, 0], [0, 10]]) | crosses or touches itself",
        "outline([[0, 0], [10, 0], [20, 0]]) | one line",
        "regular({ sides: 5, side: 10 }).offset(-9) | at most by 6.8",
        "regular({ sides: 5, side: 10 }).offset(\"cord\") | is none of the words it takes",
        "regular({ sides: 5, side: 10 }).rounded(9) | at most by 6.8",
        "regular({ sides: 5, side: 10 }).rounded(1, { corners: [6] }) | 1 to 5",
        "regular({ sides: 5, side: 10 }).turned(700) | too large",
        "prism({ outline: 5, height: 10 }) | is not an outline",
        "prism({ outline: circle({ across: 9 }), height: 10 }) | straight sides only",
        "prism({ outline: star({ points: 5, across: 40 }), sides: 5, height: 10 }) | one base",
        "prism({ side: 5, height: 10 }) | needs sides",
        "frustum({ outline: star({ points: 5, across: 40 }), top: 5, height: 9 }) | for its top",
        "frustum({ sides: 5, side: 9, top: circle({ across: 9 }), height: 9 }) | for the base",
        "panel('a', { outline: circle({ across: 9 }), width: 5, height: 4 }) | one shape",
        "panel('a', { outline: circle({ across: 9 }) }).tab('1') | nothing hangs on it",
        "panel('a', { width: 40, height: 20 }).rounded(30) | at most by 9.99",
        "panel('a', { width: 40, height: 20 }).rounded(3).rounded(3) | no corner that is free",
        "panel('a', { width: 40, height: 20 }).rounded(3).chamfer(1, 2) | round already",
        "panel('a', { width: 40, height: 20 }).rounded(3, { corners: [7] }) | 1 to 4",
      })
  void whatMakesNoSenseIsRefusedWithItsPlace(String call, String told) {
    ScriptException wrong = fails("design(\"Trial\");\n\n" + call + ";\n");
    assertThat(wrong).as(call).isNotNull();
    assertThat(wrong.getMessage()).contains(told);
    assertThat(wrong.line()).isEqualTo(3);
  }

  /** A name that a script gives hides the function of that name. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "const star = star({ points: 5, across: 40 });",
        "let box = box({ width: 9, depth: 9, height: 9 });",
        "const prism = 5; prism({ sides: 4, side: 9, height: 9 });",
      })
  void aFunctionHiddenBehindANameIsTold(String script) {
    ScriptException wrong = fails("design(\"Trial\");\n" + script);
    assertThat(wrong).hasMessageContaining("the function is hidden");
    assertThat(wrong.remedy()).contains("another name");
    assertThat(wrong.line()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "const five = star({ points: 5, across: 40 });",
        "star({ points: 5, across: 40 }).mirrored();",
        "const r = rectangle({ width: 9, height: 9 }); r.offset(2); panel('p', { outline: r });",
      })
  void anOutlineOfWhichNothingIsMadeIsFound(String script) throws Exception {
    assertThat(run("design(\"Trial\"); panel('a', { width: 9, height: 9 });\n" + script).findings())
        .filteredOn(f -> f.rule().equals("unused"))
        .hasSize(1)
        .allSatisfy(f -> assertThat(f.place().toString()).isNotEmpty());
  }

  /** What hangs on a panel takes no harm: its corners are not free, and stay. */
  @Test
  void cornersOfAPanelAreRoundedWhereTheyAreFree() throws Exception {
    Design design =
        run(
            """
            design("Round flap");
            const back = panel("back", { width: 90, height: 120 });
            back.notch("right", { at: 60, width: 24, depth: 12, shape: "round" });
            back.attach("top", "flap", { depth: 40, fold: 180, sense: "valley" }).rounded(15);
            back.rounded(8);
            """);
    Panel back = design.net().panels().getFirst();
    Panel flap = design.net().panels().getLast();
    assertThat(back.outline().arcs()).hasSize(3);
    assertThat(flap.outline().arcs()).hasSize(2);
    double rounding = 1 - Math.PI / 4;
    double backArea = 90 * 120 - Math.PI * 72 - 2 * 64 * rounding;
    assertThat(back.outline().area()).isCloseTo(backArea, within(0.02 * 100));
    assertThat(flap.outline().area()).isCloseTo(40 * 90 - 2 * 225 * rounding, within(0.02 * 50));
    assertThat(design.net().scores()).hasSize(1);
    // Three straight sides, one of them parted, three arcs; three sides and two arcs.
    assertThat(design.net().cuts()).isEqualTo(4 + 3 + 3 + 2);
  }

  /** Lengths take numbers, text and dials. */
  @Test
  void lengthsAreReadAsEverywhere() throws Exception {
    Design design =
        run(
            """
            design("Said", { units: "in" });
            const wide = dial("wide", 2, { from: 1, to: 3 });
            const card = rectangle({ width: wide, height: "1 1/2 in" }).offset("2 mm");
            panel("a", { outline: card });
            """);
    assertThat(design.net().box().width()).isEqualTo(54.8, within(1e-9));
    assertThat(design.net().box().height()).isEqualTo(42.1, within(1e-9));
  }
}
