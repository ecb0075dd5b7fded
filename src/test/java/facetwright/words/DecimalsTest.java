package facetwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {
  @ParameterizedTest
  @CsvSource({
    "12.5,2,12.5",
    "12.005,2,12.01",
    "-12.005,2,-12.01",
    "0.004,2,0",
    "-0.004,2,0",
    "-0.0,3,0",
    "1e21,2,1000000000000000000000",
    "1e-7,9,0.0000001",
    "100,0,100",
    "NaN,2,NaN",
    "-Infinity,2,-Infinity"
  })
  void places(double number, int places, String text) {
    assertThat(Decimals.places(number, places)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "1234.5678,6,1234.57",
    "10000.5,7,10000.5",
    "0.000123456,3,0.000123",
    "-0.0,3,0",
    "987654,2,990000",
    "NaN,3,NaN"
  })
  void digits(double number, int digits, String text) {
    assertThat(Decimals.digits(number, digits)).isEqualTo(text);
  }

  @Property(seed = "20261125")
  void placesAreNeverFartherThanHalfTheLast(@ForAll @DoubleRange(min = -1e6, max = 1e6) double n) {
    String text = Decimals.places(n, 3);
    assertThat(text).matches("-?\\d+(\\.\\d{0,2}[1-9])?").isNotEqualTo("-0");
    assertThat(Math.abs(Double.parseDouble(text) - n)).isLessThanOrEqualTo(0.0005 + 1e-9);
  }
}
