package facetwright.geom;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Area;
import facetwright.measure.Unit;
import facetwright.words.Count;
import org.junit.jupiter.api.Test;

class CountedWordsTest {
  @Test
  void oneIsOne() {
    assertThat(Count.of(1, "seam")).isEqualTo("1 seam");
    assertThat(Count.of(0, "seam")).isEqualTo("0 seams");
    assertThat(Count.of(2, "seam has", "seams have")).isEqualTo("2 seams have");
    assertThat(Count.of(1, "seam has", "seams have")).isEqualTo("1 seam has");
  }

  /** One inch is 25.4 mm (international yard and pound agreement, 1959). */
  @Test
  void areasAreToldInTheReadersUnit() {
    assertThat(new Area(25.4 * 25.4 * 12).text(Unit.INCH, 1)).isEqualTo("12 in²");
    assertThat(new Area(1250).text(Unit.MM, 1)).isEqualTo("12.5 cm²");
    assertThat(new Area(1250).text(Unit.CM, 0)).isEqualTo("13 cm²");
  }
}
