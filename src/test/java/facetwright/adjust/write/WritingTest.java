package facetwright.adjust.write;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.Budget;
import facetwright.script.text.Edit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Scripts are changed where they say a thing plainly, and left alone elsewhere. */
class WritingTest {
  private static final SheetSize LETTER = SheetSizes.named("Letter");

  private static String onto(String source, SheetSize sheet) {
    return Writing.sheet(source, sheet).map(e -> Edit.all(source, List.of(e))).orElse("left alone");
  }

  @Test
  void anotherSheetIsNamedWhereTheScriptNamesIt() {
    assertThat(onto("sheet('A4', { weight: 200 });", LETTER))
        .isEqualTo("sheet(\"Letter\", { weight: 200 });");
    assertThat(onto("// sheet(\"A3\")\nsheet(\"A4\");\n", LETTER))
        .isEqualTo("// sheet(\"A3\")\nsheet(\"Letter\");\n");
    assertThat(onto("const a = 1;", LETTER)).isEqualTo("const a = 1;\nsheet(\"Letter\");\n");
    assertThat(onto("sheet(name);", LETTER)).isEqualTo("left alone");
    assertThat(onto("sheet(\"A4\");\nsheet(\"A5\");", LETTER)).isEqualTo("left alone");
    assertThat(onto("panel().sheet(\"A4\");", LETTER)).contains("panel().sheet(\"A4\");\nsheet(");
  }

  @Test
  void aSheetWithoutANameIsWrittenByItsSides() {
    SheetSize own = SheetSize.custom(190.5, 254, Unit.MM);
    assertThat(onto("sheet(\"A4\", { weight: 200 });", own))
        .isEqualTo("sheet({ width: \"190.5 mm\", height: \"254 mm\", weight: 200 });");
    assertThat(onto("sheet(\"A4\");", own))
        .isEqualTo("sheet({ width: \"190.5 mm\", height: \"254 mm\" });");
    assertThat(onto("", own)).isEqualTo("sheet({ width: \"190.5 mm\", height: \"254 mm\" });\n");
  }

  @Test
  void anAimBecomesAComment() {
    String source = "a();\naim({ fits: \"A4\" /* all */ });\nsay(\"aim(1)\");";
    assertThat(Edit.all(source, Writing.withoutAim(source)))
        .isEqualTo("a();\n/* aim({ fits: \"A4\" /* all * / }); */\nsay(\"aim(1)\");");
    assertThat(Writing.lineOfAim(source)).isEqualTo(2);
    assertThat(Writing.lineOfAim("say(\"aim(1)\");")).isZero();
  }

  @Test
  void whatAScriptReckonsIsNotWritten() throws Exception {
    WhatIf what =
        what("const start = 30;\nconst side = dial(\"side\", start, { from: 20, to: 60 });");
    Written written =
        WholeScript.of(what, Map.of("side", 40.0), facetwright.measure.Ruler.MM, List.of());
    assertThat(written.isThere()).isFalse();
    assertThat(written.why()).isEqualTo(Written.NOT_PLAIN);
  }

  /** The second of two dials of a name is never reached. */
  @Test
  void aScriptThatComesToAnotherDesignIsNotTaken() throws Exception {
    WhatIf what =
        what(
            """
            const wide = 30;
            const side = dial("side", wide > 20 ? 30 : 25, { from: 20, to: 60 });
            if (false) { dial("side", 25, { from: 20, to: 60 }); }\
            """);
    Written written =
        WholeScript.of(what, Map.of("side", 40.0), facetwright.measure.Ruler.MM, List.of());
    assertThat(written.why()).isEqualTo(Written.NOT_TAKEN);
    assertThat(WholeScript.onSheet(what, LETTER, Map.of()).text()).endsWith("sheet(\"Letter\");\n");
  }

  private static WhatIf what(String dials) throws Exception {
    String source =
        "design(\"Box\", { units: \"mm\" });\n"
            + dials
            + "\nprism({ sides: 4, side, height: 30 }).unfold({ tab: 6 });\n";
    return WhatIf.of("box.js", source, Map.of(), Budget.USUAL);
  }
}
