package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.ScoreAngles;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSizes;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A form that closes in two ways stays, turned a little, on the one that it is on. */
class BranchTest {
  /** Three faces round a corner, whose two scores may both be mountains or both be valleys. */
  private static Laid corner(double last, Sense sense) {
    NetDraft draft = new NetDraft();
    List<PanelDraft> panels = new ArrayList<>();
    double at = 0;
    for (double face : new double[] {50, 60, last}) {
      double to = at + Math.toRadians(face);
      panels.add(draft.panel("face", PanelRole.FACET, Fan.sector(at, to), Site.NONE));
      at = to;
    }
    for (int i = 0; i < 2; i++) {
      draft.score(
          panels.get(i).edge(3), panels.get(i + 1).edge(0), sense, FoldAngle.TO_SOLVE, Site.NONE);
    }
    draft.seam(panels.get(2).edge(3), panels.get(0).edge(0), null, Site.NONE);
    Net net = draft.build();
    return SheetLayout.lay(
        net, SheetSizes.named("A2").stock(220), new Room(0, SheetLayout.USUAL_GAP));
  }

  private static List<Double> angles(Laid laid, FoldedForm form) {
    return ScoreAngles.of(laid.net(), form).radians();
  }

  @Test
  void staysOnTheBranchItIsOn() {
    for (Sense on : Sense.values()) {
      FoldedForm form = Folding.fold(corner(70, on));
      assertThat(form.closure()).isEqualTo(Closure.CLOSES);
      double sign = on == Sense.MOUNTAIN ? 1 : -1;
      for (double more : new double[] {-0.5, -0.01, 0.01, 0.5}) {
        // The net's own guess is a mountain, whatever the form is.
        Laid turned = corner(70 + more, Sense.MOUNTAIN);
        FoldedForm beside = Folding.beside(turned, corner(70, Sense.MOUNTAIN).net(), form);
        assertThat(beside.closure()).isEqualTo(Closure.CLOSES);
        List<Double> from = angles(corner(70, on), form);
        List<Double> to = angles(turned, beside);
        for (int s = 0; s < 2; s++) {
          assertThat(Math.signum(to.get(s))).isEqualTo(sign);
          assertThat(to.get(s)).isCloseTo(from.get(s), within(0.1));
        }
      }
    }
  }

  /** Where the other can't be begun from, it is folded as if nothing were known. */
  @Test
  void anotherNetIsFoldedFromNothing() {
    Laid laid = corner(70, Sense.VALLEY);
    Net other = Card.tray(60, 40, 25, Card.SQUARE).net();
    assertThat(Folding.beside(laid, other, Folding.fold(other))).isEqualTo(Folding.fold(laid));
    Laid wide = corner(115, Sense.VALLEY);
    FoldedForm form = Folding.fold(laid);
    assertThat(Folding.beside(wide, laid.net(), form).closure())
        .isEqualTo(Folding.fold(wide).closure());
  }
}
