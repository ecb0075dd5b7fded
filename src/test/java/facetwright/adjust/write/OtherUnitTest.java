package facetwright.adjust.write;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.script.DialSetting;
import facetwright.script.LibraryDesigns;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A script comes to count inches, or millimetres, and makes the same design. */
class OtherUnitTest {
  private static WhatIf what(String source) throws ScriptException {
    return WhatIf.of("a.js", source, Map.of(), Budget.USUAL);
  }

  private static Optional<String> written(String source, Ruler ruler) throws ScriptException {
    WhatIf what = what(source);
    Set<String> lengths = what.lengths().stream().map(k -> k.name()).collect(Collectors.toSet());
    return OtherUnit.of(what, source, ruler, lengths);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          prism({ sides: 6, side: 25.4, height: 60 }).unfold();              | prism({ sides: 6, side: "1 in", height: "60 mm" }).unfold();
          prism({ sides: 6, side: 30, height: 50 }).hole("top", { across: 3.175, at: [0, -5] }).unfold(); | prism({ sides: 6, side: "30 mm", height: "50 mm" }).hole("top", { across: "1/8 in", at: [0, "-5 mm"] }).unfold();
          wrap({ columns: 6, width: 20, rows: [12.7, 40] });                 | wrap({ columns: 6, width: "20 mm", rows: ["1/2 in", "40 mm"] });
          panel("a", { width: 60, height: "30" }).hole({ across: 4, at: [- 6, 0] }); | panel("a", { width: "60 mm", height: "30 mm" }).hole({ across: "4 mm", at: ["-6 mm", 0] });
          blank({ width: 80, height: 50 }).hole([40, 38.1], { across: 5 });  | blank({ width: "80 mm", height: "50 mm" }).hole(["40 mm", "1 1/2 in"], { across: "5 mm" });
          const lip = 12.7; panel("a", { width: 60, height: lip });          | const lip = 0.5; panel("a", { width: "60 mm", height: lip });
          const n = 6; prism({ sides: n, side: "30", height: 50 * 1 }).unfold(); |
          panel("a", { width: 60, height: 30 + 10 });                        |
          const w = dial("w", 50.8, { from: 40, to: 90 }); panel("a", { width: w, height: w / 2 }); | const w = dial("w", "2 in", { from: "40 mm", to: "90 mm" }); panel("a", { width: w, height: w / 2 });
          blank({ width: 100, height: 80 }).score({ from: "left", at: 50.8, fold: 90 }); /* 12 */ | blank({ width: "100 mm", height: "80 mm" }).score({ from: "left", at: "2 in", fold: 90 }); /* 12 */
          """)
  void lengthsTakeTheUnitOrKeepTheirOwn(String calls, String wanted) throws ScriptException {
    String source = "design(\"a\", { units: \"mm\" });\n" + calls + "\nsheet(\"A4\");\n";
    String inches = "design(\"a\", { units: \"in\" });\n" + wanted + "\nsheet(\"A4\");\n";
    assertThat(written(source, Ruler.SIXTEENTHS))
        .isEqualTo(wanted == null ? Optional.empty() : Optional.of(inches));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "beacon-dodecahedron",
        "boathouse",
        "cut-gem",
        "fog-drum",
        "gull-bauble",
        "harbour-lantern",
        "twisted-tower"
      })
  void mostOfTheLibraryCanComeToInches(String name) throws IOException, ScriptException {
    String source = LibraryDesigns.text(name);
    String text = written(source, Ruler.SIXTEENTHS).orElseThrow();
    Design was = what(source).design();
    Design is = what(text).design();
    assertThat(is.unit()).isEqualTo(Unit.INCH);
    assertThat(is.laid().stock()).isEqualTo(was.laid().stock());
    assertThat(is.folded().measures().height())
        .isCloseTo(was.folded().measures().height(), org.assertj.core.data.Offset.offset(0.01));
    assertThat(is.findings()).hasSameSizeAs(was.findings());
  }

  @Test
  void inchesComeToMillimetres() throws ScriptException {
    String source =
        "design('a', { units: 'in' });\nprism({ sides: 6, side: 2, height: 1.5 }).unfold();\n";
    assertThat(written(source, Ruler.MM))
        .hasValueSatisfying(
            t ->
                assertThat(t)
                    .contains("units: \"mm\"")
                    .contains("side: \"2 in\", height: \"1.5 in\"")
                    .as("the sheet that was taken for want of a name")
                    .contains("sheet(\"Letter\");"));
  }

  @Test
  void fractionsWithoutAUnitKeepTheirOwn() throws ScriptException {
    String source =
        "design(\"a\", { units: \"in\" });\npanel(\"a\", { width: \"2 3/8\", height: 2 });\n";
    assertThat(written(source, Ruler.MM))
        .hasValueSatisfying(t -> assertThat(t).contains("width: \"2 3/8 in\", height: \"2 in\""));
  }

  @Test
  void theSettingsInTheHeadStayAsTheyAre() throws ScriptException {
    String source =
        """
        /*
         * setting: Tall = sides 8, tall 70
         */
        design("a");
        const sides = dial("sides", 6, { from: 5, to: 12, step: 1 });
        const tall = dial("tall", 50, { from: 40, to: 90 });
        prism({ sides, side: 25, height: tall }).unfold();
        sheet("A3");
        """;
    String text = written(source, Ruler.SIXTEENTHS).orElseThrow();
    assertThat(text).contains("design(\"a\", { units: \"in\" });");
    assertThat(DialSetting.read(text).getFirst().values())
        .isEqualTo(Map.of("sides", "8", "tall", "70 mm"));
  }
}
