package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.fold.Card;
import facetwright.fold.ShortSeam;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules on what bends, folds flat or sways. */
class HonestRulesTest {
  private static final Site AT = new Site(3, 1);

  private static Card tray(double angle) {
    return Card.tray(60, 40, 25, FoldAngle.degrees(angle));
  }

  @Test
  void moreThanAHandHoldsAndCardForgives() {
    List<Finding> found = Looks.of("gap", Looks.at(tray(89)));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    // Following it: fold angles left out are found, and every join meets.
    assertThat(found.getFirst().fix()).startsWith("Leave fold angles out");
    assertThat(Looks.at(Card.tray(60, 40, 25, FoldAngle.TO_SOLVE))).isEmpty();
    assertThat(Looks.at(tray(89.9))).isEmpty();
  }

  @Test
  void gapsBeyondWhatUnlikeSidesExplainAreToldToo() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 60);
    PanelDraft one = card.flap(base.edge(0), "one", 20, Sense.MOUNTAIN, FoldAngle.degrees(40));
    PanelDraft two = card.flap(base.edge(1), "two", 21, Sense.MOUNTAIN, FoldAngle.degrees(90));
    card.seam(one.edge(3), two.edge(1));
    List<Finding> found = Looks.at(card);
    assertThat(Looks.of("seam-lengths", found)).hasSize(1);
    assertThat(Looks.of("gap", found)).hasSize(1);
  }

  /** A seam 2 mm short in a wrap and on a form's net. */
  @Test
  void shortSeamsAreFoundWhereverTheyAre() {
    Net form =
        new Nets(
                Solids.prismBySide(6, 30, 40).withoutFacet("top"),
                Unfolding.as(UnfoldStyle.PETALS).with(Tabs.USUAL))
            .on(0, 0)
            .net();
    Net plain =
        WrapDraft.of(Collections.nCopies(8, 24.0), WrapRow.usual(List.of(60.0)), AT)
            .seam(0, AT)
            .build();
    for (Net net : List.of(form, plain)) {
      Stock stock = SheetSizes.named("A3").stock(220);
      assertThat(Looks.at(net, stock)).isEmpty();
      List<Finding> found = Looks.at(ShortSeam.in(net, 2), stock);
      assertThat(found).hasSize(1);
      assertThat(found.getFirst().rule()).isEqualTo("seam-lengths");
      assertThat(found.getFirst().message()).contains("its sides differ by 2 mm");
      assertThat(found.getFirst().fix()).contains("2 mm longer", "2 mm shorter");
    }
  }

  /** Three badges lapped on one wall: with it four layers, though each lies a caliper inside. */
  @Test
  void lapsStackThoughTheyLieACaliperApart() {
    Card card = Card.tray(60, 60, 30, Card.SQUARE);
    for (int i = 0; i < 3; i++) {
      PanelDraft badge = card.rectangle("badge " + i, 200 + 100 * i, 0, 20, 10);
      card.draft.lap(badge, card.draft.panels().get(1), Site.NONE);
    }
    List<Finding> found = Looks.of("closing-stack", Looks.at(card));
    assertThat(found).hasSize(1);
    // Four times 0.275 mm.
    assertThat(found.getFirst().message()).startsWith("4 panels").contains("1.1 mm thick");
    // None of them is a tab that could be made shallower.
    assertThat(found.getFirst().fix()).startsWith("Take thinner card").doesNotContain("tab");
  }

  /** Triangles round a point, one between each score and the next, every score right over. */
  private static Card fan(double[] sectors, int mountains) {
    return fan(sectors, i -> i < mountains);
  }

  private static Card fan(double[] sectors, IntPredicate isMountain) {
    Card card = new Card();
    List<PanelDraft> panels = new ArrayList<>();
    double at = 0;
    for (int i = 0; i < sectors.length; i++) {
      Vec2 from = Vec2.ZERO.plus(ray(at));
      at += sectors[i];
      // The last ray is the first, to the last digit.
      Vec2 to = ray(i + 1 == sectors.length ? 0 : at);
      panels.add(card.panel("leaf " + (i + 1), 0, 0, from.x(), from.y(), to.x(), to.y()));
    }
    for (int i = 0; i < sectors.length; i++) {
      card.draft.score(
          panels.get(i).edge(2),
          panels.get((i + 1) % sectors.length).edge(0),
          isMountain.test(i) ? Sense.MOUNTAIN : Sense.VALLEY,
          FoldAngle.degrees(180),
          card.next());
    }
    return card;
  }

  private static Vec2 ray(double degrees) {
    double radians = Math.toRadians(degrees);
    return new Vec2(40 * Math.cos(radians), 40 * Math.sin(radians));
  }

  private static List<Finding> flat(Card card) {
    return Looks.of("fold-flat", Looks.at(card));
  }

  private static List<Finding> pinched(double wall) {
    WrapDraft wrap =
        WrapDraft.of(
                Collections.nCopies(10, 24.0), WrapRow.usual(List.of(5.0, wall, wall, 5.0)), AT)
            .seam(12, AT);
    wrap.all().columns("even", AT).rows("rim", AT).remove(AT);
    wrap.all().columns("odd", AT).rows("rim", AT).tabs(AT);
    wrap.all().columns("even", AT).rows("wall", AT).gusset(Pinch.IN, null, AT);
    return Looks.at(wrap.build(), SheetSizes.named("A3").stock(220));
  }

  /** Their points hang as low as the waist where walls are 22.83 mm long (see PinchedWrapsTest). */
  @Test
  void pinchedRowsThatReachThroughEachOther() {
    List<Finding> all = pinched(20.45);
    Finding found = Looks.of("short-wall", all).getFirst();
    assertThat(found.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(found.message()).endsWith("go in below the waist, through the row beyond.");
    assertThat(found.fix()).startsWith("Make the walls 22.83 mm long or longer");
    // One cause, told once.
    assertThat(all).filteredOn(f -> f.severity() == Finding.Severity.ERROR).hasSize(1);
    assertThat(found.site().isKnown()).isTrue();
    assertThat(pinched(23)).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
  }

  /** Kawasaki's condition (from memory): every second angle adds up to 180°. */
  @Test
  void anglesThatDoNotFoldFlat() {
    Finding found = flat(fan(new double[] {70, 80, 120, 90}, 3)).getFirst();
    assertThat(found.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(found.message())
        .isEqualTo(
            "The 4 scores that meet between \"leaf 1\", \"leaf 2\", \"leaf 3\", \"leaf 4\" can't"
                + " all be folded right over: every second angle between them has to add up to"
                + " 180°, and they add up to 190° and 170°.");
    assertThat(found.fix())
        .matches(
            "Turn the score between \"leaf \\d\" and \"leaf \\d\" about that point by 10° toward"
                + " \"leaf \\d\"\\.");
  }

  /** Maekawa's condition (from memory): mountains and valleys differ by two. */
  @Test
  void mountainsAndValleysThatDoNotFoldFlat() {
    double[] sectors = {60, 90, 120, 90};
    Finding even = flat(fan(sectors, 2)).getFirst();
    assertThat(even.message()).endsWith("have to differ by two, and there are 2 and 2.");
    assertThat(even.fix()).isEqualTo("Make the score between \"leaf 2\" and \"leaf 3\" a valley.");
    assertThat(flat(fan(sectors, 1))).isEmpty();
    Finding all = flat(fan(sectors, 4)).getFirst();
    assertThat(all.message()).endsWith("there are 4 and 0.");
    assertThat(all.fix()).isEqualTo("Make the score between \"leaf 1\" and \"leaf 2\" a valley.");
    assertThat(flat(fan(sectors, 3))).isEmpty();
  }

  /** The strictly smallest angle needs one of each beside it (from memory). */
  @Test
  void mountainsAndValleysThatLockTheNarrowestPanel() {
    // The scores after leaves 1 to 4: mountain, mountain, valley, mountain.
    Card card = fan(new double[] {60, 100, 120, 80}, m -> m != 2);
    Finding found = flat(card).getFirst();
    assertThat(found.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(found.message())
        .isEqualTo(
            "The 4 scores that meet between \"leaf 1\", \"leaf 2\", \"leaf 3\", \"leaf 4\" can't"
                + " all be folded right over: \"leaf 1\" has its scores on both sides folded the"
                + " same way, and no room for that between the wider panels beside it.");
    assertThat(found.fix())
        .isEqualTo(
            "Make the score between \"leaf 1\" and \"leaf 2\" a valley and the score between"
                + " \"leaf 2\" and \"leaf 3\" a valley.");
    assertThat(flat(fan(new double[] {60, 100, 120, 80}, m -> m != 0))).isEmpty();
  }

  @Test
  void anOddNumberOfScoresNeverFoldsFlat() {
    Finding found = flat(fan(new double[] {70, 70, 70, 70, 80}, 3)).getFirst();
    assertThat(found.message())
        .contains("5 scores")
        .endsWith("an odd number of scores never lies flat.");
    assertThat(found.fix()).startsWith("Add a score across \"leaf ");
  }

  @Test
  void onlyWhereFlatIsMeant() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 30, 30);
    card.flap(base.edge(0), "over", 30, Sense.MOUNTAIN, FoldAngle.degrees(180));
    assertThat(flat(card)).isEmpty();
    Card cross = new Card();
    PanelDraft ne = cross.rectangle("ne", 0, 0, 10, 10);
    PanelDraft nw = cross.rectangle("nw", -10, 0, 10, 10);
    PanelDraft sw = cross.rectangle("sw", -10, -10, 10, 10);
    PanelDraft se = cross.rectangle("se", 0, -10, 10, 10);
    FoldAngle over = FoldAngle.degrees(180);
    FoldAngle not = FoldAngle.degrees(0);
    cross.draft.score(se.edge(2), ne.edge(0), Sense.MOUNTAIN, over, cross.next());
    cross.draft.score(ne.edge(3), nw.edge(1), Sense.MOUNTAIN, not, cross.next());
    cross.draft.score(nw.edge(0), sw.edge(2), Sense.MOUNTAIN, over, cross.next());
    cross.draft.score(sw.edge(1), se.edge(3), Sense.MOUNTAIN, not, cross.next());
    assertThat(flat(cross)).isEmpty();
  }

  private static Net wrap(int columns, String pinched) {
    WrapDraft wrap =
        WrapDraft.of(
                Collections.nCopies(columns, 28.0),
                WrapRow.usual(List.of(28.0, 60.0, 60.0, 28.0)),
                AT)
            .seam(7, AT);
    wrap.all().columns(pinched, AT).rows("rim", AT).remove(AT);
    wrap.all().columns(pinched, AT).rows("wall", AT).gusset(Pinch.IN, null, AT);
    return wrap.build();
  }

  @ParameterizedTest
  @ValueSource(ints = {7, 9, 11})
  void anOddNumberOfColumnsPinchedInTurn(int columns) {
    List<Finding> found =
        Looks.of(
            "pinched-in-turn", Looks.at(wrap(columns, "even"), SheetSizes.named("A2").stock(220)));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().message())
        .isEqualTo(
            String.format(
                "\"wall %d (row 2)\" (line 3) and \"wall 1 (row 2)\" (line 3) stand side by side"
                    + " with no gusset between them: every second column is pinched, and %d columns"
                    + " are an odd number. Nothing holds the form in one shape: it can be pushed"
                    + " askew. The same holds for \"wall %d (row 3)\" and \"wall 1 (row 3)\".",
                columns, columns, columns));
    assertThat(found.getFirst().fix())
        .isEqualTo(
            "Use an even number of columns: " + (columns - 1) + " or " + (columns + 1) + ".");
  }

  @Test
  void wrapsPinchedEvenlyOrNotAtAllAreLeftAlone() {
    for (Net net :
        List.of(
            wrap(8, "even"),
            wrap(6, "odd"),
            WrapDraft.of(Collections.nCopies(7, 28.0), WrapRow.usual(List.of(60.0)), AT).build())) {
      assertThat(Looks.of("pinched-in-turn", Looks.at(net, SheetSizes.named("A2").stock(220))))
          .isEmpty();
    }
  }
}
