package facetwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An inch is exactly 25.4 mm (international yard and pound agreement, 1959). */
class LengthWordsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      textBlock =
          """
          It is 9.525 mm long.                   | It is 3/8 in long.
          It is 9.53 mm wide and 50.8 mm high.   | It is 3/8 in wide and 2 in high.
          misses by 0.2 mm.                      | misses by 0.008 in (0.2 mm).
          at most 5000 mm, not 0 mm              | at most 196.85 in (5000 mm), not 0 in
          less than 0.01 mm                      | less than 0.01 mm
          within 0.001 mm.                       | within 0.001 mm.
          not -12.7 mm                           | not -1/2 in
          the 304.8 × 203.2 mm sheet             | the 12 × 8 in sheet
          an overlap of 12 mm².                  | an overlap of 0.019 in² (12 mm²).
          lies (2 mm off) there                  | lies (0.079 in off) there
          not "48 mm"; 25.4 mm of "12 mm high"   | not "48 mm"; 1 in of "12 mm high"
          75 mm³ and 3 mmx                       | 75 mm³ and 3 mmx
          """)
  void tellsInches(String metric, String inches) {
    assertThat(LengthWords.in(Unit.INCH, metric)).isEqualTo(inches);
    assertThat(LengthWords.in(Unit.MM, metric)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource({"It is 9.5 mm long.,It is 0.95 cm long.", "12 mm² lie there.,0.12 cm² lie there."})
  void tellsCentimetres(String metric, String centimetres) {
    assertThat(LengthWords.in(Unit.CM, metric)).isEqualTo(centimetres);
  }
}
