package facetwright.adjust;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.adjust.ring.RingOffer;
import facetwright.adjust.ring.RingOffers;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rings by other counts of sides. */
class RingOffersTest {
  private static List<RingOffer> offers(String script, int count) throws Exception {
    return RingOffers.of(WhatIf.of("ring.js", script, Map.of(), Budget.USUAL), count, false);
  }

  /**
   * A ring of n upright pieces of m equal sides is flush just where 2n divides m(n − 2): the
   * normals of two sides k apart make k · 360°/m, which has to be 180° − 360°/n.
   */
  @ParameterizedTest
  @CsvSource({"6, 8", "7, 8", "4, 5", "7, 12"})
  void thoseAndNoOtherCountsOfADrumSeatFlush(int sides, int count) throws Exception {
    List<Integer> found =
        offers(
                "design(\"Drum\");\nconst sides = dial(\"sides\", %d, { from: 4, to: 16, whole: true });\n"
                        .formatted(sides)
                    + "prism({ sides, radius: 30, height: 40 }).unfold();",
                count)
            .stream()
            .filter(o -> o.plan().seating().isFlush())
            .map(o -> (int) Math.round(o.value()))
            .toList();
    List<Integer> flush =
        IntStream.rangeClosed(4, 16)
            .filter(m -> m != sides && m * (count - 2) % (2 * count) == 0)
            .boxed()
            .toList();
    assertThat(found).containsExactlyInAnyOrderElementsOf(flush);
  }

  /** Nothing is offered where no dial goes by steps, and none that is worse. */
  @Test
  void nothingWithoutADialOfSteps() throws Exception {
    assertThat(
            offers(
                "design(\"Drum\");\nconst tall = dial(\"tall\", 40, { from: 30, to: 60 });\n"
                    + "prism({ sides: 6, radius: 30, height: tall }).unfold();",
                8))
        .isEmpty();
  }
}
