package facetwright.geom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SteadyOrderTest {
  @Test
  void equalButForRoundingKeepsItsPlace() {
    List<Double> lengths = List.of(0.1 + 0.2, 0.3, 0.2, 0.3 - 1e-15, 0.1);
    assertThat(SteadyOrder.by(lengths, 1e-9, l -> l))
        .containsExactly(0.1, 0.2, 0.1 + 0.2, 0.3, 0.3 - 1e-15);
    assertThat(SteadyOrder.by(lengths, 0, l -> l))
        .containsExactly(0.1, 0.2, 0.3 - 1e-15, 0.3, 0.1 + 0.2);
  }

  // 1, 1.6 and 2.2 lie each within 0.8 of the next; the first rank ends 0.8 above its least, at
  // 1.8.
  @Test
  void aRankIsNoWiderThanTheAmount() {
    assertThat(SteadyOrder.by(List.of(2.2, 1.6, 1.0), 0.8, l -> l)).containsExactly(1.6, 1.0, 2.2);
  }

  @Test
  void nothingStaysNothing() {
    assertThat(SteadyOrder.by(List.<Double>of(), 1, l -> l)).isEmpty();
  }
}
