package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is refused is told with what was given, the limit, and what to do; the limit obeyed is
 * taken.
 */
class RefusalsTest {

  private static String refusal(String unit, String lines) {
    ScriptException why = catchThrowableOfType(ScriptException.class, () -> evaluate(unit, lines));
    assertThat(why).as(lines).isNotNull();
    return why.getMessage() + " | " + why.remedy();
  }

  private static void evaluate(String unit, String lines) throws ScriptException {
    String script = "design(\"D\", { units: \"" + unit + "\" });\n" + lines;
    Facetwright.evaluate("d.js", script, Map.of(), Budget.USUAL);
  }

  /** What the language itself refuses is told in words of ours. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "must(false, \"m\".repeat(2e9)); | a text would come out longer than a text can be",
        "const a = new Array(-1); | a list can't have so many places",
        "const a = []; a.length = -1; | a list can't have so many places",
        "say(\"m\".repeat(-1)); | a text can't be repeated so often",
      })
  void limitsOfTheLanguage(String line, String told) {
    assertThat(refusal("mm", line)).contains(told).doesNotContain("Invalid", "Look at the values");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "box({ width: 60, depth: 50, height: 40 }).window(\"side 1\", { border: @ }).unfold();| 40"
            + " | 19.9 | a border of 40 mm leaves no window in facet \"side 1\": it must be under"
            + " 20 mm",
        "panel(\"a\", { width: 60, height: 40 }).window({ border: @ });"
            + "| 21 | 19.9 | a border of 21 mm leaves no window in \"a\": it must be under 20 mm",
        "wrap({ columns: 6, width: 40, rows: [60], seam: @ });| 40 | 39.9 | a seam of 40 mm can't"
            + " be glued under the first column, which is 40 mm wide: give it less than 40 mm, or 0"
            + " for none",
        "sheet({ width: 80, height: 120, margin: @ }); panel(\"a\", { width: 9, height: 9 });| 40 |"
            + " 30 | a margin of 40 mm on both sides leaves nothing of a sheet that is 80 mm the"
            + " shorter way: it must be less than 40 mm",
        "prism({ sides: 4, side: 40, height: 20 }).raise(\"top\", @).unfold();| -25 | -19 | facet"
            + " \"top\" sunk by 25 mm goes through \"base\", 20 mm below it: sink it less than 20"
            + " mm",
        "box({ width: 60, depth: 60, height: 60 }).hole(\"side 1\", { across: 10, at: [@, 0] })"
            + ".unfold();| 28 | 22 | a hole in facet \"side 1\" reaches 3 mm over the edge: make it"
            + " smaller or move it inward, by 6 mm to leave a border that holds",
      })
  void limits(String line, String wrong, String right, String told) throws ScriptException {
    assertThat(refusal("mm", line.replace("@", wrong))).contains(told);
    evaluate("mm", line.replace("@", right));
    // Read in inches, millimetres stand in brackets beside what lies on no mark, nowhere else.
    String inches =
        refusal("in", line.replace("@", wrong)).replaceAll("\\(\\S+ mm\\)|\"[^\"]*\"", "");
    assertThat(inches).contains(" in").doesNotContainPattern("\\d mm\\b");
  }

  @Test
  void tooMuchGiven() {
    assertThat(refusal("mm", "wrap({ columns: 6, width: 40, widths: [40, 40, 40], rows: [60] });"))
        .isEqualTo(
            "wrap needs columns and width, or widths, and was given columns and width and widths |"
                + " For columns that are alike write columns: 6, width: 30; for others widths: [30,"
                + " 20, 30, 20] and neither columns nor width.");
    assertThat(refusal("mm", "sheet(\"A4\", { width: 200, height: 300 });"))
        .startsWith(
            "sheet needs either a size by name or both a width and a height, and was given the name"
                + " \"A4\" and a width and a height");
    assertThat(refusal("mm", "wrap({ rows: [60] });")).contains("was given none of them");
  }
}
