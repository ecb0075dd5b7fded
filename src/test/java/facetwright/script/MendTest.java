package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A fault that a change of the text would put right brings that change along. */
class MendTest {
  private static ScriptException fault(String source) {
    return catchThrowableOfType(
        ScriptException.class, () -> Facetwright.evaluate("a.js", source, Map.of(), Budget.USUAL));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          prims({ sides: 6 })                                                | prims  | prism
          const side = 3; prism({ sides: 6, side: sied, height: 9 })         | sied   | side
          prism({ sides: 6, side: 9, hieght: 9 })                            | hieght | height
          prism({ sides: 6, side: 9, height: 9 }).unfodl()                   | unfodl | unfold
          wrap({ columns: 6, width: 20, rows: [20, 9, 9] }).rows("rimm")       | rimm   | rim
          wrap({ columns: 6, width: 20, rows: [20] }).columns("evn")           | evn    | even
          sheet("Leter")                                                     | Leter  | Letter
          panel("a", { width: 9, height: 9 }).attach("tpo", "b", { depth: 9 }) | tpo  | top
          prism({ sides: 6, side: 9, height: 9 }).open("tpo")                | tpo    | top
          """)
  void aMisspeltWord(String call, String written, String meant) {
    assertThat(fault("design(\"a\");\n" + call + ";").mends())
        .containsExactly(new Mend.Word(written, meant));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          mm | prism({ sides: 2, side: 9, height: 9 })            | sides  | 0 |   | 3
          mm | prism({ sides: 6.4, side: 9, height: 9 })          | sides  | 0 |   | 6
          mm | sheet("A4", { weight: 2000 })                      | weight | 1 |   | 1000
          mm | sheet("A4", { grain: "lnog" })                     | grain  | 1 |   | "long"
          in | sheet("A4", { caliper: 9 })                        | caliper | 1 |  | 0.1968
          in | sheet("A4", { caliper: "3 in" })                   | caliper | 1 |  | "5 mm"
          mm | wrap({ columns: 6, width: 20, rows: [20, 0, 9] })    | rows   | 0 | 1 | 0.01
          mm | dial("tall", 90, { from: 20, to: 80 })             |        | 1 |   | 80
          mm | dial("tall", "9 cm", { from: 20, to: 80 })         |        | 1 |   | "80 mm"
          mm | dial("n", 7, { from: 6, to: 12, step: 2 })         |        | 1 |   | 6
          """)
  void aValueOutOfItsRange(
      String unit, String call, String option, int place, Integer item, String value) {
    String head = "design(\"a\", { units: \"" + unit + "\" });\n";
    String named = option == null ? "" : option;
    assertThat(fault(head + call + ";").mends())
        .containsExactly(
            new Mend.Value(named, place, item == null ? List.of() : List.of(item), value));
  }

  @Test
  void aUnitByItsLongName() {
    assertThat(fault("design(\"a\", { units: \"inches\" });").mends())
        .containsExactly(new Mend.Value("units", 1, List.of(), "\"in\""));
  }

  @Test
  void aCallCaughtByTheScriptBringsNothingAlong() {
    ScriptException e =
        fault(
            """
            design("a");
            try { prims(); } catch (e) {}
            try { prism({ sides: 2 }); } catch (e) {}
            throw new Error("my own");
            """);
    assertThat(e.getMessage()).isEqualTo("my own");
    assertThat(e.mends()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          w.columns("odd").rows("(.rows").remove()       | 3 | 18
          w.columns("odd") /* .rows("x") */ .rows("x")   | 3 | 36
          w.columns("odd")~  .rows([1])~  .hole({ oops: 3 }) | 5 | 4
          """)
  void theSiteIsTheCallThatWentWrong(String call, int line, int column) {
    String head = "design(\"a\");\nconst w = wrap({ columns: 6, width: 20, rows: [20] });\n";
    assertThat(fault(head + call.replace('~', '\n') + ";").site())
        .isEqualTo(new Site(line, column));
  }

  /** A name whose line was taken out is not misspelt: nothing else is written in its place. */
  @ParameterizedTest
  @MethodSource("withoutADial")
  void aNameWhoseDialIsGoneIsNoSlip(String script) {
    ScriptException e = fault(script);
    assertThat(e.mends()).as(e.getMessage()).noneMatch(Mend.Word.class::isInstance);
    assertThat(e.remedy()).doesNotContain("Did you mean");
  }

  /** Every design of the library with each of its dials' lines taken out. */
  static Stream<String> withoutADial() throws IOException {
    List<String> all = new ArrayList<>();
    for (Path file : LibraryDesigns.files()) {
      List<String> lines = Files.readAllLines(file);
      for (int i = 0; i < lines.size(); i++) {
        if (lines.get(i).startsWith("const ") && lines.get(i).contains(" = dial(")) {
          List<String> less = new ArrayList<>(lines);
          less.remove(i);
          all.add(String.join("\n", less));
        }
      }
    }
    assertThat(all).hasSizeGreaterThan(20);
    return all.stream();
  }

  /** What is in force at the place may be meant: not what stands in other brackets or below. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          { const tall = 4; } prism({ sides: 6, side: 9, height: tal });
          prism({ sides: 6, side: 9, height: tal }); const tall = 4;
          const f = (tall) => tall; prism({ sides: 6, side: 9, height: tal });
          prism({ sides: 6, side: prims, height: 9 });
          """)
  void whatIsNotInForceIsNotMeant(String call) {
    assertThat(fault("design(\"a\");\n" + call).mends()).isEmpty();
  }
}
