package facetwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassTest {
  /** A square metre of 80 g/m² weighs 80 g, and 16 sheets of A4 are one of A0, nearly 1 m². */
  @Test
  void grammageIsTheMassOfASquareMetre() {
    assertThat(Mass.of(1e6, 80).grams()).isEqualTo(80);
    // ISO 216: A4 is 210 mm by 297 mm; ISO 536: grammage. A sheet of letter paper weighs 5 g.
    assertThat(Mass.of(210.0 * 297, 80).grams()).isCloseTo(5, within(0.02));
  }

  /**
   * NIST Handbook 44, appendix C: an ounce avoirdupois is 28.349523125 g. Cover stock of 65 lb is
   * 500 sheets of 20 by 26 in, about 176 g/m² (from memory).
   */
  @Test
  void ouncesAreThoseOfTheHandbook() {
    assertThat(Mass.OUNCE).isCloseTo(28.349523125, within(1e-12));
    double sheet = 20 * 26 * 25.4 * 25.4;
    assertThat(500 * Mass.of(sheet, 176).grams() / Mass.OUNCE / 16).isCloseTo(65, within(0.2));
  }

  @ParameterizedTest
  @CsvSource({
    "12.34, MM, 12 g",
    "12.34, CM, 12 g",
    "12.34, INCH, 0.44 oz",
    "0.456, MM, 0.46 g",
    "0.456, INCH, 0.016 oz",
    "123.4, MM, 120 g",
    "1234, INCH, 44 oz",
    "0, MM, 0 g"
  })
  void itIsToldToTwoDigits(double grams, Unit unit, String told) {
    assertThat(new Mass(grams).rounded(unit)).isEqualTo(told);
  }
}
