package facetwright.fold.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laps of random sizes at random places: met only where the one panel lies on the other. */
class LapsTest {
  /** Narrower than this nothing is glued, in mm; common practice, no source. */
  private static final double HOLD = 1;

  /**
   * A base, a middle folded right over onto it, and a flap going on from the middle's far side: the
   * flap comes to lie back from the hinge by the middle's depth.
   *
   * @param size of the base, square to the hinge
   */
  private static Card strip(double size, double middle, double flap, double low, double high) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, size, 50);
    double far = size + middle;
    PanelDraft over = card.panel("middle", size, 0, far, 0, far, low, far, high, far, 50, size, 50);
    PanelDraft tab = card.panel("flap", far, low, far + flap, low, far + flap, high, far, high);
    card.draft.score(base.edge(1), over.edge(5), Sense.MOUNTAIN, FoldAngle.degrees(180), Site.NONE);
    card.draft.score(over.edge(2), tab.edge(3), Sense.MOUNTAIN, FoldAngle.degrees(0), Site.NONE);
    card.draft.lap(tab, base, Site.NONE);
    return card;
  }

  @Test
  void isMetJustWhereThePanelsShareEnough() {
    Random chance = new Random(2718);
    int met = 0;
    int beside = 0;
    for (int i = 0; i < 300; i++) {
      double size = 20 + 60 * chance.nextDouble();
      double middle = size * (0.2 + 1.4 * chance.nextDouble());
      double flap = 3 + 30 * chance.nextDouble();
      double low = 2 + 15 * chance.nextDouble();
      double high = low + 5 + 20 * chance.nextDouble();
      var net = strip(size, middle, flap, low, high).net();
      FoldedForm form = Folding.fold(net);
      // The flap lies from size - middle - flap to size - middle, the base from 0 to size.
      double shared = Math.max(0, Math.min(flap, size - middle));
      double across = high - low;
      double held = shared * across / (shared + across);
      double own = flap * across / (flap + across);
      boolean holds = held >= Math.min(HOLD, own / 2);
      Join.Lap lap = (Join.Lap) net.joins().getFirst();
      assertThat(Laps.isBeside(net, form, lap)).isEqualTo(!holds);
      assertThat(form.closure()).isEqualTo(holds ? Closure.CLOSES : Closure.OPEN);
      if (holds) {
        assertThat(form.gap()).isLessThan(1e-9);
        met++;
      } else {
        double away = Math.max(middle + flap / 2 - size, own / 2);
        assertThat(form.gap()).isCloseTo(away, within(1e-9));
        beside++;
      }
    }
    assertThat(met).isGreaterThan(50);
    assertThat(beside).isGreaterThan(50);
  }

  /** In the plane and touching along a whole side: what is only next to it is not under it. */
  @Test
  void touchingIsNotLyingOn() {
    var net = strip(40, 40, 15, 10, 30).net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    assertThat(form.gap()).isCloseTo(7.5, within(1e-9));
  }
}
