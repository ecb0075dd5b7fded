package facetwright.papers.facets;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which way facets face, and numbers in runs. */
class FacingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|-1|0|front",
        "1|0|0|right",
        "0|1|0|back",
        "-1|0|0|left",
        "0|0|1|up",
        "0|0|-1|down",
        "0.6|-0.6|0|front right",
        "-0.6|0.6|0|back left",
        "0|-1|1|front, 45° up",
        "-1|0|-0.57735|left, 30° down"
      })
  void inWords(double x, double y, double z, String words) {
    assertThat(Facing.of(new Vec3(x, y, z).unit()).text()).isEqualTo(words);
  }

  @Test
  void numbersInRuns() {
    assertThat(FacetText.numbers(List.of(1, 2, 3, 5, 6, 9))).isEqualTo("1 to 3, 5, 6, 9");
    assertThat(FacetText.numbers(List.of(7))).isEqualTo("7");
  }
}
