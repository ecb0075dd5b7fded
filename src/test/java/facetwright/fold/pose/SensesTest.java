package facetwright.fold.pose;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.fold.GussetedWrapTest;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.net.wrap.Pinch;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SensesTest {
  /** Four walls seamed at the corners: they can only rise all together. */
  private static Card tray(FoldAngle first) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 40, 60);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      walls.add(
          card.flap(
              base.edge(i),
              "wall " + (i + 1),
              25,
              i == 0 ? Sense.VALLEY : Sense.MOUNTAIN,
              i == 0 ? first : FoldAngle.TO_SOLVE_AS_SAID));
    }
    for (int i = 0; i < 4; i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % 4).edge(1));
    }
    card.draft.standOn(base);
    return card;
  }

  @Test
  void aGuessTakesTheSenseOfTheForm() {
    Net net = tray(FoldAngle.TO_SOLVE).net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(Senses.contrary(net, form)).isEmpty();
    Net folded = Senses.asFolded(net, form);
    assertThat(folded.scores()).allMatch(s -> s.sense() == Sense.MOUNTAIN);
    assertThat(folded.panels()).isEqualTo(net.panels());
    assertThat(folded.scores().getFirst().angle()).isEqualTo(FoldAngle.TO_SOLVE);
    assertThat(Senses.asFolded(folded, form)).isSameAs(folded);
  }

  @Test
  void whatWasAskedForStaysAndIsTold() {
    Net net = tray(FoldAngle.TO_SOLVE_AS_SAID).net();
    FoldedForm form = Folding.fold(net);
    assertThat(Senses.asFolded(net, form)).isSameAs(net);
    assertThat(Senses.contrary(net, form)).containsExactly(0);
  }

  @Test
  void anUnsolvedFormDecidesNothing() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 40, 60);
    card.flap(base.edge(0), "wall", 25, Sense.VALLEY, FoldAngle.TO_SOLVE);
    Net net = card.net();
    FoldedForm form = Folding.fold(net);
    assertThat(Senses.asFolded(net, form)).isSameAs(net);
    assertThat(Senses.contrary(net, form)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"90,MOUNTAIN", "-0.001,VALLEY", "0,", "1e-9,", "180,", "-180,", "179.9,MOUNTAIN"})
  void flatAndFoldedRightOverHaveNoSide(double degrees, Sense sense) {
    assertThat(Senses.of(degrees).orElse(null)).isEqualTo(sense);
  }

  /** Gussets keep the way they were asked to go, columns beside them what the form needs. */
  @ParameterizedTest
  @CsvSource({"6", "8", "10", "12", "14", "16"})
  void gussetedWrapsAgreeWithTheirFormsOnceSolved(int n) {
    for (Pinch pinch : Pinch.values()) {
      Net net = GussetedWrapTest.wrap(n, 24, 72, pinch);
      FoldedForm form = Folding.fold(net);
      Net folded = Senses.asFolded(net, form);
      assertThat(Senses.contrary(folded, form)).isEmpty();
      // Folded again from the senses found it is the same form.
      FoldedForm again = Folding.fold(folded);
      for (int p = 0; p < net.panels().size(); p++) {
        for (int c = 0; c < form.corners(net, p).size(); c++) {
          assertThat(again.corners(net, p).get(c).distance(form.corners(net, p).get(c)))
              .isLessThan(1e-6);
        }
      }
      List<Double> folds = Senses.folds(folded, form);
      for (int s = 0; s < folds.size(); s++) {
        Sense sense = folded.scores().get(s).sense();
        assertThat(Senses.of(folds.get(s)).orElse(sense)).isEqualTo(sense);
      }
    }
  }

  /**
   * Six columns pinched outward: at the waist of the three pinched columns the usual mountain is a
   * slight valley in the form.
   */
  @Test
  void aWrapOfSixPinchedOutwardCorrectsItsGuesses() {
    Net net = GussetedWrapTest.wrap(6, 24, 72, Pinch.OUT);
    FoldedForm form = Folding.fold(net);
    Net folded = Senses.asFolded(net, form);
    int waist = 0;
    List<Sense> before = net.scores().stream().map(Score::sense).toList();
    List<Sense> after = folded.scores().stream().map(Score::sense).toList();
    for (int s = 0; s < before.size(); s++) {
      if (before.get(s) != after.get(s)) {
        waist++;
        assertThat(after.get(s)).isEqualTo(Sense.VALLEY);
        assertThat(Senses.folds(net, form).get(s)).isBetween(-10.0, -5.0);
      }
    }
    assertThat(waist).isEqualTo(3);
  }
}
