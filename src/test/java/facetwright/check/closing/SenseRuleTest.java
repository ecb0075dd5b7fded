package facetwright.check.closing;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Looks;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.fold.Card;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SenseRuleTest {
  private static List<Finding> tray(FoldAngle asked, Sense sense) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 60);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Sense its = i == 2 ? sense : Sense.MOUNTAIN;
      FoldAngle angle = i == 2 ? asked : FoldAngle.TO_SOLVE;
      walls.add(card.flap(base.edge(i), "wall " + (i + 1), 20, its, angle));
    }
    for (int i = 0; i < 4; i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % 4).edge(1));
    }
    card.draft.standOn(base);
    return Looks.of("sense", Looks.at(card));
  }

  @Test
  void aScoreThatFoldsAgainstWhatWasAskedIsNamedWithBothSenses() {
    List<Finding> found = tray(FoldAngle.TO_SOLVE_AS_SAID, Sense.VALLEY);
    assertThat(found).hasSize(1);
    Finding finding = found.getFirst();
    assertThat(finding.severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(finding.message())
        .isEqualTo(
            "The score between \"base\" and \"wall 3\" is to be a valley, but the form as it was"
                + " found folds it by 90.0° as a mountain.");
    assertThat(finding.fix()).startsWith("Ask for a mountain there");
    assertThat(finding.place()).isEqualTo(new Place.AtScore(2));
    // The base is made on line 1, the third wall on line 4.
    assertThat(finding.site().line()).isEqualTo(4);
  }

  @Test
  void guessesAndAgreementAreNoFindings() {
    assertThat(tray(FoldAngle.TO_SOLVE, Sense.VALLEY)).isEmpty();
    assertThat(tray(FoldAngle.TO_SOLVE_AS_SAID, Sense.MOUNTAIN)).isEmpty();
    assertThat(tray(FoldAngle.degrees(90), Sense.MOUNTAIN)).isEmpty();
  }
}
