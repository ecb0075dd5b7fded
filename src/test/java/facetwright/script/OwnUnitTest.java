package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.design.DialText;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a design is told of stands in its own unit; an inch is exactly 25.4 mm (1959 agreement). */
class OwnUnitTest {
  private static Design evaluate(String unit, String script) throws ScriptException {
    return Facetwright.evaluate(
        "trial.js",
        "design(\"Tidewell lamp\", { units: \"%s\" });\n".formatted(unit) + script,
        Map.of(),
        Budget.USUAL);
  }

  private static String findings(String unit, String width) throws ScriptException {
    return evaluate(unit, "blank({ width: %s, height: \"50 mm\" });".formatted(width))
        .findings()
        .stream()
        .filter(f -> f.rule().equals("off-sheet"))
        .map(f -> f.message() + " " + f.fix())
        .collect(Collectors.joining(" "));
  }

  @Test
  void findingsTellTheDesignsUnit() throws ScriptException {
    assertThat(findings("in", "60")).contains("60 in wide").contains("1.969 in (50 mm) high");
    assertThat(findings("mm", "1524")).contains("1524 mm wide and 50 mm high");
  }

  @Test
  void faultsTellTheDesignsUnit() {
    String script = "blank({ width: 99999, height: 2 });";
    ScriptException inches =
        catchThrowableOfType(ScriptException.class, () -> evaluate("in", script));
    ScriptException metric =
        catchThrowableOfType(ScriptException.class, () -> evaluate("mm", script));
    assertThat(metric.getMessage() + metric.remedy()).contains("10000 mm");
    assertThat(inches.getMessage() + inches.remedy()).contains("393.701 in (10000 mm)");
    assertThat(inches.line()).isEqualTo(2);
  }

  /** What is refused deeper down, by a net or by a form, and what the maker wrote herself. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      textBlock =
          """
          panel("48 mm", { width: 2, height: 2 }).window({ border: 1 }); | 1 in leaves no window in "48 mm"
          box({ width: 2, depth: 2, height: 2 }).window("top", { border: 1.5 }); | 1 1/2 in leaves no
          prism({ sides: 6, side: 999, height: 2 }); | 393.701 in (10000 mm)
          blank({ width: "99999 mm", height: 2 }); | "99999 mm" is too large
          throw new Error("25.4 mm too tall"); | 25.4 mm too tall
          """)
  void refusalsCarryTheirLengths(String line, String told) {
    ScriptException inches =
        catchThrowableOfType(ScriptException.class, () -> evaluate("in", line));
    assertThat(inches.getMessage() + ". " + inches.remedy()).contains(told);
    assertThat(inches.in(Unit.MM, List.of()).in(Unit.INCH, List.of()))
        .hasMessage(inches.getMessage());
  }

  @Test
  void inchDialsStepBySomeMarksOfTheirRange() throws ScriptException {
    Design design =
        evaluate(
            "in",
            """
            const wide = dial("wide", 2, { from: 1, to: 3 });
            const lip = dial("lip", "1/4 in", { from: "3/16 in", to: "7/16 in" });
            const gap = dial("gap", "1/32 in", { from: "1/64 in", to: "1/16 in" });
            blank({ width: wide, height: 2 + lip + gap });
            """);
    assertThat(design.dials().stream().map(d -> DialText.step(d, design.unit())))
        .containsExactly(1.0 / 16, 1.0 / 32, 1.0 / 64);
  }
}
