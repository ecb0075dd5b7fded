package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.script.scope.Scope;
import facetwright.script.text.Stretch;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SteppingTest {
  private static Stepping at(String marked) {
    int caret = marked.indexOf('|');
    Scope scope = Scope.of(marked.replace("|", ""));
    return Stepping.at(scope, caret).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      textBlock =
          """
          a(28|)            ; 1  ; 29   ; 28.1
          a(|28)            ; -3 ; 25   ; 27.7
          a(1.50|)          ; 1  ; 1.51 ; 1.501
          a(2|)             ; -9 ; 0    ; 1.1
          a(-2|)            ; 1  ; -1   ; -1.9
          a(9 - 2|)         ; 1  ; 3    ; 2.1
          prism({ sides: 6| }) ; 1 ; 7   ; 7
          a("1 |7/8 in")    ; 1  ; 1 15/16 in ; 1 57/64 in
          a("1 7/8 in|")    ; 2  ; 2 in ; 1 29/32 in
          a("1-7/8|")       ; -1 ; 1-13/16 ; 1-55/64
          a("2 in|")        ; 1  ; 2 1/16 in ; 2 1/64 in
          a("1/16|")        ; -5 ; 0 ; 0
          a("1 1/32 in|")   ; 1  ; 1 1/16 in ; 1 5/128 in
          a("1.5 in|")      ; 1  ; 1.6 in ; 1.51 in
          a("48 mm|")       ; 1  ; 49 mm ; 48.1 mm
          a("4.8cm|")       ; -1 ; 4.7cm ; 4.79cm
          """)
  void turns(String marked, int steps, String coarse, String fine) {
    Stepping number = at(marked);
    assertThat(number.turned(steps, false)).isEqualTo(coarse);
    assertThat(number.turned(steps, true)).isEqualTo(fine);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\u0000',
      textBlock = "a(\"wall 2|\")\nside2|\n// 28|\na(0x1f|)\na(\"A4|\")")
  void isNoNumber(String marked) {
    Scope scope = Scope.of(marked.replace("|", ""));
    assertThat(Stepping.at(scope, marked.indexOf('|'))).isEmpty();
  }

  @Test
  void standsWhereTheNumberStands() {
    assertThat(at("a(-2|)").at()).isEqualTo(new Stretch(2, 4));
    assertThat(at("a(\"1 7/8 in|\")").at()).isEqualTo(new Stretch(3, 11));
  }

  @Property(seed = "20261125")
  void sixteenthsAddUp(@ForAll @IntRange(max = 200) int start, @ForAll @IntRange(max = 90) int by) {
    String from = start / 16 + " " + (start % 16 == 0 ? "0/16" : start % 16 + "/16") + " in";
    String to = at("a(\"" + from + "|\")").turned(by, false);
    double inches = Length.parse(to, Unit.MM).in(Unit.INCH);
    assertThat(inches).isCloseTo((start + by) / 16.0, Assertions.within(1e-12));
  }
}
