package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A dial gives a script the number that stands there, whatever unit the design counts in. */
class DialNumberTest {
  private static final String SCRIPT =
      """
      design("Post", { units: "%s" });
      const sides = dial("sides", %d, { from: 3, to: 16, step: 1 });
      const long = dial("long", 1.5, { from: 1, to: 2 });
      say(long);
      prism({ sides, side: long, height: 2 }).unfold({ tabs: false });
      """;

  private static Design design(Unit unit, int sides, Map<String, String> set)
      throws ScriptException {
    String script = SCRIPT.formatted(unit.symbol(), sides);
    return Facetwright.evaluate("post.js", script, set, Budget.USUAL);
  }

  /** Six of an inch are not quite six once they were millimetres in between. */
  @ParameterizedTest
  @EnumSource
  void countsSides(Unit unit) throws ScriptException {
    for (int sides = 3; sides <= 16; sides++) {
      assertThat(design(unit, sides, Map.of()).net().panels()).hasSize(sides + 2);
      Map<String, String> set = Map.of("sides", Integer.toString(sides));
      assertThat(design(unit, 4, set).net().panels()).hasSize(sides + 2);
    }
  }

  @ParameterizedTest
  @EnumSource
  void saysTheNumberThatWasTyped(Unit unit) throws ScriptException {
    for (String typed : new String[] {"1.1", "1.3", "1.7", "1.9"}) {
      assertThat(design(unit, 4, Map.of("long", typed)).said()).containsExactly(typed);
    }
  }

  /** A tenth, sixty times, is a whole number but for rounding. */
  @ParameterizedTest
  @EnumSource
  void takesAReckonedCount(Unit unit) throws ScriptException {
    String script =
        "design(\"Post\", { units: \""
            + unit.symbol()
            + "\" }); let n = 0; for (let i = 0; i < 60; i++) n += 0.1;"
            + " prism({ sides: n, side: 1, height: 2 }).unfold({ tabs: false });";
    Design design = Facetwright.evaluate("post.js", script, Map.of(), Budget.USUAL);
    assertThat(design.net().panels()).hasSize(8);
  }

  /** A dial is a length where one of its numbers is written with a unit. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          "3 in", { from: 2, to: 5 }          | 7      | the value set, 7 in, is outside | Set it from 2 to 5 in.
          "3 in", { from: 2, to: 5 }          | red    | is not a length                 | Set it from 2 to 5 in.
          3, { from: 2, to: 5 }               | 7      | the value set, 7, is outside    | Set it from 2 to 5.
          "8 in", { from: 2, to: 5 }          |        | its own value, 8 in, is outside | Set it from 2 to 5 in.
          "3 in", { from: 2, to: 5, step: 1 } | 3.4    | 3.4 in, is not one of its steps of 1 in | The nearest is 3 in.
          3, { from: 2, to: 5, step: 1 }      | 3.4    | 3.4, is not one of its steps of 1 | The nearest is 3.
          "3 in", { from: 5, to: 2 }          |        | it runs from 5 in to 2 in, which is the wrong way round  | Give from the smaller
          "3 in", { from: 2, to: 5, step: 4 } |        | a step of 4 in does not fit     | Give a step from 0 to 3 in.
          """)
  void tellsLengthsWithTheirUnit(String dial, String set, String wrong, String fix) {
    String script = "design(\"Post\", { units: \"in\" });\ndial(\"long\", " + dial + ");\n";
    Map<String, String> sets = set == null ? Map.of() : Map.of("long", set);
    ScriptException fault =
        catchThrowableOfType(
            ScriptException.class,
            () -> Facetwright.evaluate("post.js", script, sets, Budget.USUAL));
    assertThat(fault).hasMessageContaining(wrong);
    assertThat(fault.remedy()).startsWith(fix);
  }
}
