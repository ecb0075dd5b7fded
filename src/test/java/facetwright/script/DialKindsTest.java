package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.adjust.write.WholeScript;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dials of every kind: declared, set, refused. */
class DialKindsTest {
  private static final String SCRIPT =
      """
      design("Drum", { units: "in" });
      const sides = dial("sides", 6, { from: 5, to: 12 });
      const side = dial("side", 1.25, { from: 1, to: 2 });
      const turn = dial("turn", "15 deg", { from: 0, to: "30°" });
      const part = dial("part", 0.5, { from: 0.2, to: 0.9 });
      const many = dial("many", 2, { from: 1, to: 4, whole: true });
      const top = dial("top", "shut", { of: ["shut", "left open"] });
      const lit = dial("lit", false);
      say([turn, part * 10, many, top, lit ? "lit" : "dark"]);
      let drum = prism({ sides, side, height: 3 }).twist(turn);
      if (top === "left open") drum = drum.open("top");
      if (lit === true) drum = drum.hole("base", { across: 0.5 });
      drum.unfold();
      sheet("A3");
      """;

  private static Design design(Map<String, String> settings) throws ScriptException {
    return Facetwright.evaluate("drum.js", SCRIPT, settings, Budget.USUAL);
  }

  private static Dial dial(Design design, String name) {
    return design.dials().stream().filter(d -> d.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void eachIsOfItsKind() throws Exception {
    Design drum = design(Map.of());
    assertThat(drum.dials())
        .extracting(Dial::kind)
        .containsExactly(
            Dial.Kind.WHOLE,
            Dial.Kind.LENGTH,
            Dial.Kind.ANGLE,
            Dial.Kind.NUMBER,
            Dial.Kind.WHOLE,
            Dial.Kind.CHOICE,
            Dial.Kind.SWITCH);
    assertThat(drum.dials())
        .extracting(d -> DialText.angled(d, d.value(), Unit.INCH))
        .containsExactly("6", "1 1/4", "15°", "0.5", "2", "shut", "off");
    assertThat(drum.said()).containsExactly("15 5 2 shut dark");
  }

  @ParameterizedTest
  @CsvSource({
    "turn, 20, 20",
    "turn, 20 deg, 20",
    "turn, 20°, 20",
    "turn, 20.5 degrees, 20.5",
    "sides, 8, 8",
    "side, 1 1/2, 1.5",
    "side, 38.1 mm, 1.5",
    "many, 3, 3",
    "top, left open, 1",
    "top, Left Open, 1",
    "lit, on, 1",
    "lit, yes, 1",
    "lit, true, 1",
    "lit, OFF, 0",
  })
  void isSetAsAPersonTypesIt(String name, String typed, double value) throws Exception {
    assertThat(dial(design(Map.of(name, typed)), name).value()).isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "turn|2 in|\"2 in\" is not an angle such as 50 or \"50 deg\"|from 0 to 30°",
        "turn|40|the value set, 40°, is outside its range|from 0 to 30°",
        "sides|6.4|not one of its steps of 1|The nearest is 6",
        "sides|six|\"six\" is not a whole number|from 5 to 12",
        "sides|50 mm|\"50 mm\" is not a whole number|from 5 to 12",
        "side|20 deg|20 deg|from 1 to 2 in",
        "top|ajar|\"ajar\" is not one of shut, left open|to one of shut, left open",
        "top|left opn|Did you mean \"left open\"?|to one of",
        "lit|perhaps|\"perhaps\" is not on or off|to one of off, on",
      })
  void refusesWhatIsNotOfItsKind(String name, String typed, String wrong, String fix) {
    assertThatThrownBy(() -> design(Map.of(name, typed)))
        .isInstanceOfSatisfying(
            ScriptException.class,
            e -> {
              assertThat(e.getMessage()).contains("dial \"" + name + "\"").contains(wrong);
              assertThat(e.remedy()).contains(fix);
              assertThat(e.site().line()).isPositive();
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dial('a', 'out', { of: ['in', 'Out'] })|not among its words",
        "dial('a', 'in', { of: ['in', 'in', 'out'] })|stands twice",
        "dial('a', 'in', { of: ['in'] })|is too short",
        "dial('a', 'in', { of: ['in', 'out'], from: 2 })|has no from, to, step or whole",
        "dial('a', true, { of: ['in', 'out'] })|has words to choose from",
        "dial('a', true, { to: 3 })|has no from, to, step or whole",
        "dial('a', '50 deg', { from: '3 mm' })|\"3 mm\" is not an angle",
        "dial('a', '50 mm', { whole: true })|whole numbers only",
        "dial('a', 3.5, { whole: true })|whole numbers only",
        "dial('a', 'in')|a word with of:",
      })
  void refusesADeclarationThatMakesNoSense(String call, String wrong) {
    String script = "design('A');\n" + call + ";\nbox({ width: 9, depth: 9, height: 9 }).unfold();";
    assertThatThrownBy(() -> Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL))
        .isInstanceOfSatisfying(
            ScriptException.class,
            e -> {
              assertThat(e.getMessage() + " " + e.remedy()).contains(wrong);
              assertThat(e.site().line()).isEqualTo(2);
            });
  }

  /** What a mend names can be written in its place, words and angles among it. */
  @Test
  void aSettingIsWrittenIntoTheScript() throws Exception {
    Map<String, String> set =
        Map.of("turn", "20", "top", "left open", "lit", "on", "side", "1 1/2", "sides", "8");
    WhatIf what = WhatIf.of("drum.js", SCRIPT, set, Budget.USUAL);
    String written = WholeScript.of(what, Map.of(), Ruler.SIXTEENTHS, List.of()).text();
    assertThat(written)
        .contains("dial(\"turn\", 20,")
        .contains("dial(\"top\", \"left open\",")
        .contains("dial(\"lit\", true)")
        .contains("dial(\"side\", \"1 1/2 in\",")
        .contains("dial(\"sides\", 8,");
    Design again = Facetwright.evaluate("drum.js", written, Map.of(), Budget.USUAL);
    assertThat(again.dials()).extracting(Dial::value).isEqualTo(values(what.design()));
  }

  private static List<Double> values(Design design) {
    return design.dials().stream().map(Dial::value).toList();
  }

  @Test
  void settingsOfAllKindsStandInTheHead() {
    Map<String, String> values =
        new java.util.LinkedHashMap<>(
            Map.of("turn", "20 deg", "top", "left open", "lit", "on", "side", "1 1/2 in"));
    String script = new DialSetting("Lit", values).addedTo(SCRIPT);
    assertThat(DialSetting.read(script).getFirst().values()).isEqualTo(values);
  }
}
