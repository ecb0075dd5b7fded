package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Unit;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSizes;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whether a form closes, in words. */
class VerdictTest {
  private static String of(Card card) {
    Laid laid =
        SheetLayout.lay(
            card.net(), SheetSizes.named("A3").stock(220), new Room(0, SheetLayout.USUAL_GAP));
    FoldedForm form = Folding.fold(laid);
    return Verdict.of(laid, form, Checks.all(laid, GlueOrder.of(laid.net(), form))).text(Unit.MM);
  }

  private static Card tray(double third, FoldAngle angle) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 40);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double height = i == 2 ? third : 25;
      walls.add(card.flap(base.edge(i), "wall " + (i + 1), height, Sense.MOUNTAIN, angle));
    }
    for (int i = 0; i < 4; i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % 4).edge(1));
    }
    card.draft.standOn(base);
    return card;
  }

  @Test
  void closes() {
    assertThat(of(tray(25, Card.SQUARE))).isEqualTo("Closes: every join meets to within 0.001 mm.");
    Card leaf = new Card();
    leaf.wall(leaf.rectangle("left", 0, 0, 30, 40).edge(1), "right", 30);
    assertThat(of(leaf)).isEqualTo("Closes: it has no joins that could miss.");
  }

  @Test
  void bends() {
    assertThat(of(tray(25.03, Card.SQUARE)))
        .matches(
            "Closes if the card bends by 0\\.0\\d %"
                + " in \"wall \\d\"; card forgives 0\\.2 %\\.");
  }

  @Test
  void missesTellWhichWhyAndHowMany() {
    assertThat(of(tray(27, Card.SQUARE)))
        .isEqualTo(
            "Does not close: the seam between \"wall 2\" and \"wall 3\" misses by 2 mm, for its"
                + " sides differ by 2 mm, and one other join misses too.");
    // 25·cos 80°·√2 = 6.14 mm
    assertThat(of(tray(25, FoldAngle.degrees(80))))
        .matches(
            "Does not close: the seam between \"wall \\d\" and \"wall \\d\" misses by 6.14 mm, and"
                + " 3 other joins miss too\\.");
    // The rim of a wall is 0.06 mm off: less than a hand cuts, more than the card takes up there.
    assertThat(of(tray(25.06, Card.SQUARE)))
        .isEqualTo(
            "Closes: the seam between \"wall 2\" and \"wall 3\" misses by 0.06 mm, less than a"
                + " steady hand holds when cutting.");
  }

  @Test
  void whatBendingItWouldTake() {
    assertThat(of(tray(25, FoldAngle.degrees(89))))
        .matches(
            "Does not close: .* misses by 0\\.6\\d mm, and 3 other joins miss too\\. The joins"
                + " would meet if the card bent by 0\\.\\d\\d % in \"wall \\d\", but it forgives"
                + " 0\\.2 %\\.");
  }

  /** A tube of eight walls that turn by 90° each runs twice round a square. */
  @Test
  void runsRoundTwice() {
    double[] widths = {12, 12, 12, 12, 12, 12, 12, 12};
    double[] angles = {90, 90, 90, 90, 90, 90, 90};
    assertThat(of(Card.wrap(30, widths, angles)))
        .matches(
            "Does not close: every join meets, but \"column \\d\" and \"column \\d\" lie in one"
                + " place, for the card runs round more than once\\.");
  }

  /** Turns of 3·360°/8 make a star, whose walls cross. */
  @Test
  void passesThroughItself() {
    double[] widths = {12, 12, 12, 12, 12, 12, 12, 12};
    double[] angles = {135, 135, 135, 135, 135, 135, 135};
    assertThat(of(Card.wrap(30, widths, angles)))
        .matches(
            "Does not close: every join meets, but \"column \\d\" and \"column \\d\" pass through"
                + " each other, [\\d.]+ mm deep\\.");
  }

  @Test
  void tears() {
    Card card = new Card();
    PanelDraft ne = card.rectangle("ne", 0, 0, 10, 10);
    PanelDraft nw = card.rectangle("nw", -10, 0, 10, 10);
    PanelDraft sw = card.rectangle("sw", -10, -10, 10, 10);
    PanelDraft se = card.rectangle("se", 0, -10, 10, 10);
    card.draft.score(se.edge(2), ne.edge(0), Sense.MOUNTAIN, FoldAngle.degrees(90), card.next());
    card.draft.score(ne.edge(3), nw.edge(1), Sense.MOUNTAIN, FoldAngle.degrees(0), card.next());
    card.draft.score(nw.edge(0), sw.edge(2), Sense.MOUNTAIN, FoldAngle.degrees(60), card.next());
    card.draft.score(sw.edge(1), se.edge(3), Sense.MOUNTAIN, FoldAngle.degrees(0), card.next());
    // 2·10·sin 15° = 5.18 mm
    assertThat(of(card))
        .startsWith(
            "Does not close: the card would tear or buckle by 5.18 mm at the score between");
  }

  @Test
  void notKnown() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 40);
    card.flap(base.edge(0), "lid", 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    String one =
        "Not known: it can't be told whether it closes, because nothing determines how far to fold"
            + " the score between \"base\" and \"lid\"";
    assertThat(of(card)).isEqualTo(one + ".");
    card.flap(base.edge(1), "second", 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    assertThat(of(card)).isEqualTo(one + " and one other.");
    card.flap(base.edge(2), "third", 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    assertThat(of(card)).isEqualTo(one + " and 2 others.");
  }
}
