package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.scope.Scope;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A fault of a script is put right by the change of the text that it offers. */
class RepairsTest {
  private static ScriptException fault(String source) {
    return catchThrowableOfType(
        ScriptException.class, () -> Facetwright.evaluate("a.js", source, Map.of(), Budget.USUAL));
  }

  private static List<Repair> repairs(String source, ScriptException e) {
    return Repairs.of(Scope.of(source), e.site(), e.mends());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      textBlock =
          """
          prims({ sides: 6, side: 9, height: 9 }).unfold()                     ; prims          ; Write prism
          prism({ sides: 6, side: 9, hieght: 9 }).unfold()                     ; hieght         ; Write height
          prism({ sides: 2, side: 9, height: 9 }).unfold()                     ; 2              ; Write 3
          prism({ side: -1, sides: 6, height: 9 }).unfold()                    ; -1             ; Write 0.01
          prism({ sides: n, side: 9, height: 9 }).unfold()                     ; 70             ; Write 64
          wrap({ columns: 6, width: 20, rows: [20, 0, 20] })                   ; 0              ; Write 0.01
          wrap({ columns: 6, width: 20, rows: [20] }).columns("evn").layer()   ; "evn"          ; Write "even"
          wrap({ columns: 6, width: 20, rows: [20] }).colums("even").layer()   ; colums         ; Write columns
          dial("tall", 90, { from: 20, to: 80 }), prism({ sides: 3, side: 9, height: 9 }).unfold() ; 90 ; Write 80
          prism({ sides: 6, side: 9 mm, height: 9 }).unfold()                  ; 9 mm           ; Put 9 mm in quotes
          prism({ sides: 6, side: 9mm, height: 9 }).unfold()                   ; 9mm            ; Put 9 mm in quotes
          prism({ sides: 6 side: 9, height: 9 }).unfold()                      ; 6 side         ; Put a comma after 6
          panel(“foot”, { width: 80, height: 50 })                             ; “              ; Make the quotes straight
          """)
  void mendsTheScript(String call, String wrong, String label) {
    String source = "design(\"a\");\nconst n = 70;\n" + call + ";\n";
    ScriptException e = fault(source);
    assertThat(e).as("it is wrong to begin with").isNotNull();
    assertThat(repairs(source, e))
        .as(e.getMessage() + " at " + e.site())
        .first()
        .satisfies(
            r -> {
              assertThat(r.label()).isEqualTo(label);
              assertThat(source.substring(r.at().start(), r.at().end())).startsWith(wrong);
              assertThat(fault(r.edit().in(source))).isNull();
            });
  }

  @Test
  void nothingIsOfferedWhereTheTextHasChanged() {
    ScriptException e = fault("design(\"a\");\nprism({ sides: 2, side: 9, height: 9 });");
    assertThat(repairs("design(\"a\");\nconst n = 3;", e)).isEmpty();
    assertThat(repairs("", e)).isEmpty();
  }

  @Test
  void aValueThatIsReckonedIsLeftAlone() {
    String source = "design(\"a\");\nconst n = 3;\nprism({ sides: n - 2, side: 9, height: 9 });";
    ScriptException e = fault(source);
    assertThat(e.mends()).isNotEmpty();
    assertThat(repairs(source, e)).isEmpty();
  }

  @Test
  void theCallMeantIsTheOneAtTheSite() {
    String source = "prism({ sides: 2 }); prism({ sides: 2 });";
    Mend mend = new Mend.Value("sides", 0, List.of(), "3");
    assertThat(Repairs.of(Scope.of(source), new Site(1, 22), List.of(mend)))
        .first()
        .satisfies(r -> assertThat(r.edit().from()).isEqualTo(36));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '\u0000',
      textBlock =
          """
          prism();sheet("A4", { weight: 220 })   ~ prism();sheet("A3", { weight: 220 })
          prism()                                ~ prism()|sheet("A3");|
          prism();sheet(mine)                    ~
          """)
  void anotherSheetIsTakenWhereTheScriptSaysWhich(String source, String wanted) {
    List<Repair> repairs = Repairs.of(Scope.of(source), Site.NONE, List.of(new Mend.Sheet("A3")));
    assertThat(repairs.stream().map(r -> r.edit().in(source).replace('\n', '|')).toList())
        .isEqualTo(wanted == null ? List.of() : List.of(wanted));
  }
}
