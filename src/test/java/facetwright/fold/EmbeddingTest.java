package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What closes has no two facets in one place and winds once; what is in itself does not close. */
class EmbeddingTest {
  static Stream<Solid> solids() throws Exception {
    return Solid.all();
  }

  /** Every convex solid, by its angles: glotzerlab/coxeter (BSD-3-Clause, beside the data). */
  @ParameterizedTest
  @MethodSource("solids")
  void everySolidIsEmbedded(Solid solid) {
    Net net = solid.net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    Embedding embedding = new Embedding(net, form);
    assertThat(embedding.through()).isEmpty();
    assertThat(embedding.notOnce()).isEmpty();
  }

  private static Card tube(int columns, double degrees) {
    double[] widths = new double[columns];
    Arrays.fill(widths, 12);
    double[] angles = new double[columns - 1];
    Arrays.fill(angles, degrees);
    return Card.wrap(30, widths, angles);
  }

  /** Turns of k·360°/n: once round for k = 1, walls in each other twice round, a star else. */
  @ParameterizedTest
  @ValueSource(ints = {6, 8, 9, 10, 12, 15})
  void tubesCloseOnlyOnceRound(int columns) {
    for (int times = 1; 2 * times < columns; times++) {
      Net net = tube(columns, times * 360.0 / columns).net();
      FoldedForm form = Folding.fold(net);
      assertThat(form.gap()).isLessThan(1e-9);
      assertThat(form.closure())
          .as("%s of %s", times, columns)
          .isEqualTo(times == 1 ? Closure.CLOSES : Closure.IN_ITSELF);
      assertThat(new Embedding(net, form).notOnce().isEmpty())
          .as("%s of %s", times, columns)
          .isEqualTo(times == 1);
    }
  }

  /** Two flaps that close one opening one over the other are in one place, as they may. */
  @Test
  void flapsInOnePlaceLieInLayers() {
    Card card = Card.tray(40, 30, 20, Card.SQUARE);
    PanelDraft left = card.draft.panels().get(4);
    PanelDraft right = card.draft.panels().get(2);
    card.flap(left.edge(2), "left flap", 40, Sense.MOUNTAIN, Card.SQUARE);
    card.flap(right.edge(2), "right flap", 40, Sense.MOUNTAIN, Card.SQUARE);
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.collisions()).isEmpty();
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
  }

  /** Card folded over and back lies in three layers, the first and the third the same way up. */
  @Test
  void pleatsLieInLayers() {
    Card card = new Card();
    PanelDraft one = card.rectangle("one", 0, 0, 30, 40);
    PanelDraft two = card.flap(one.edge(1), "two", 30, Sense.MOUNTAIN, FoldAngle.degrees(180));
    card.flap(two.edge(2), "three", 30, Sense.VALLEY, FoldAngle.degrees(180));
    assertThat(Folding.fold(card.net()).collisions()).isEmpty();
  }
}
