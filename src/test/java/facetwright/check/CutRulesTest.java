package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.words.Site;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Rules about the flat net on its sheet. Limits are common practice, no source. */
class CutRulesTest {
  private static final Stock A3 = SheetSizes.named("A3").stock(220);

  @Test
  void aSoundTrayIsFoundSound() {
    assertThat(Looks.at(Card.tray(60, 40, 25, Card.SQUARE))).isEmpty();
  }

  private static PanelDraft innerCorner(Card card) {
    return card.panel("base", 0, 0, 60, 0, 60, 60, 50, 60, 50, 10, 0, 10);
  }

  /** Two flaps hung in the inner corner of an L: they collide. */
  private static Card collidingWalls(double depth) {
    Card card = new Card();
    PanelDraft base = innerCorner(card);
    card.wall(base.edge(3), "inner wall", depth);
    card.wall(base.edge(4), "inner floor", depth);
    return card;
  }

  @Test
  void overlapNamesBothPanelsAndTheArea() {
    Finding found = Looks.of("overlap", Looks.at(collidingWalls(20))).getFirst();
    assertThat(found.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(found.message())
        .isEqualTo(
            "\"inner wall\" and \"inner floor\" share 400 mm² of the sheet: they can't both be cut"
                + " from it.");
    assertThat(found.place()).isEqualTo(new Place.AtPanel(2));
    assertThat(found.site().line()).isEqualTo(3);
    assertThat(found.fix()).contains("Cut one of them loose");
    Card mended = new Card();
    mended.wall(innerCorner(mended).edge(3), "inner wall", 20);
    assertThat(Looks.of("overlap", Looks.at(mended))).isEmpty();
  }

  @Test
  void overlapOfATabTellsHowToMendATab() {
    Card card = collidingWalls(20);
    card.draft.panels().get(2).become(PanelRole.TAB);
    assertThat(Looks.of("overlap", Looks.at(card)).getFirst().fix())
        .isEqualTo(
            "There is no room for \"inner floor\" there: take it out, or put it on the other side"
                + " of its seam.");
  }

  /** A tab and a flap hung on two sides that turn by so many degrees, toward each other. */
  private static Card tabBesideFlap(double turn, double bevel, double depth) {
    double x = 60 * Math.cos(Math.toRadians(turn));
    double y = -60 * Math.sin(Math.toRadians(turn));
    Card card = new Card();
    PanelDraft base = card.panel("base", -60, 0, 0, 0, x, y, x, 60, -60, 60);
    card.wall(base.edge(1), "flap", 20);
    double in = depth * Math.tan(Math.toRadians(bevel));
    card.tab(base.edge(0), base.edge(2), depth, in, FoldAngle.TO_SOLVE);
    return card;
  }

  /** The bevel told is how far the sides turn: followed, the tab can be cut; less, it can't. */
  @Property(tries = 20, seed = "20261201")
  void aBevelThatMendsAnOverlapIsTold(
      @ForAll @DoubleRange(min = 3, max = 50) double turn,
      @ForAll @DoubleRange(min = 5, max = 20) double depth) {
    List<Finding> found = Looks.of("overlap", Looks.at(tabBesideFlap(turn, 0, depth)));
    assertThat(found).hasSize(1);
    Matcher told = Pattern.compile("[bB]evel .* by (\\d+)°").matcher(found.getFirst().fix());
    assertThat(told.find()).as(found.getFirst().fix()).isTrue();
    int bevel = Integer.parseInt(told.group(1));
    assertThat(bevel).isEqualTo((int) Math.ceil(turn));
    assertThat(Looks.of("overlap", Looks.at(tabBesideFlap(turn, bevel, depth)))).isEmpty();
    assertThat(Looks.of("overlap", Looks.at(tabBesideFlap(turn, bevel - 2, depth)))).isNotEmpty();
  }

  @Test
  void offSheetTellsByHowMuchAndWhatWouldDo() {
    Card card = new Card();
    card.rectangle("banner", 0, 0, 310, 200);
    List<Finding> found = Looks.at(card.net(), SheetSizes.named("A4").stock(220));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(found.getFirst().message())
        .startsWith("The piece with \"banner\" is 310 mm wide and 200 mm high; the A4 sheet is ")
        .containsPattern("(13 mm|100 mm) too wide");
    assertThat(found.getFirst().fix()).startsWith("Use a larger sheet: A3 would do.");
    assertThat(Looks.at(card.net(), A3)).isEmpty();
  }

  @Test
  void offSheetOfAnInchSheetNamesAnyThatWouldDo() {
    Card card = new Card();
    card.rectangle("banner", 0, 0, 290, 200);
    List<Finding> found = Looks.at(card.net(), SheetSizes.named("Letter").stock(220));
    assertThat(found.getFirst().fix()).contains("would do").doesNotContain("Letter would");
    Card vast = new Card();
    vast.rectangle("vast", 0, 0, 3000, 2000);
    assertThat(Looks.of("off-sheet", Looks.at(vast)).getFirst().fix())
        .isEqualTo(
            "Make it smaller, at 14 % or less of every length, tabs and borders too, or divide it"
                + " into more pieces.");
  }

  @Test
  void offSheetForWantOfAMargin() {
    Card card = new Card();
    card.rectangle("full", 0, 0, 420, 297);
    Laid laid = new Laid(card.net(), A3.turned(), 1, false, new Room(0, 0));
    List<Finding> found = Checks.all(laid, GlueOrder.of(laid.net(), Folding.fold(card.net())));
    assertThat(found.getFirst().message()).contains("with its margin");
    assertThat(found.getFirst().place()).isEqualTo(new Place.WholeNet());
  }

  private static Card windowed(Opening opening) {
    Card card = Card.tray(60, 60, 30, Card.SQUARE);
    card.draft.panels().get(1).open(opening);
    return card;
  }

  @Test
  void windowNearAScoreTellsTheRoomLeft() {
    // Wall 1 hangs on the base's lower side: it lies between y = −30 and y = 0.
    Site site = new Site(44, 3);
    Card near = windowed(new Opening.Window(Polygon2.rectangle(20, -22, 20, 20), site));
    Finding found = Looks.of("window-near-score", Looks.at(near)).getFirst();
    assertThat(found.message()).isEqualTo("A window in \"wall 1\" comes within 2 mm of a score.");
    assertThat(found.fix()).startsWith("Leave at least 5 mm");
    assertThat(found.severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(found.site()).isEqualTo(site);
    assertThat(Looks.at(windowed(new Opening.Window(Polygon2.rectangle(20, -22, 20, 16), site))))
        .isEmpty();
  }

  @Test
  void holeNearTheEdgeTellsTheRoomLeft() {
    Card near = windowed(new Opening.Hole(new Vec2(30, -27), 4, Site.NONE));
    Finding found = Looks.of("hole-near-edge", Looks.at(near)).getFirst();
    assertThat(found.message()).startsWith("A hole in \"wall 1\" comes within ").endsWith("edge.");
    assertThat(found.site().isKnown()).isTrue();
    assertThat(Looks.at(windowed(new Opening.Hole(new Vec2(30, -24), 4, Site.NONE)))).isEmpty();
  }

  private static Card strip(double width) {
    Card card = new Card();
    PanelDraft left = card.rectangle("left", 0, 0, 50, 50);
    PanelDraft spine =
        card.flap(left.edge(1), "spine", width, Sense.MOUNTAIN, FoldAngle.degrees(90));
    card.flap(spine.edge(2), "right", 50, Sense.MOUNTAIN, FoldAngle.degrees(90));
    return card;
  }

  @Test
  void scoresTooCloseForTheCard() {
    // 220 g/m² is 0.275 mm thick: five thicknesses are 1.375 mm.
    List<Finding> found = Looks.at(strip(1));
    assertThat(Looks.of("scores-too-close", found).getFirst().message())
        .isEqualTo(
            "Two scores of \"spine\" are only 1 mm apart; card 0.28 mm thick needs 1.38 mm to fold"
                + " twice.");
    assertThat(Looks.of("scores-too-close", Looks.at(strip(1.5)))).isEmpty();
  }

  @Test
  void slivers() {
    assertThat(Looks.of("sharp-sliver", Looks.at(strip(1.5))).getFirst().message())
        .isEqualTo("\"spine\" is only 1.5 mm wide: it is hard to cut and to crease.");
    assertThat(Looks.at(strip(2.5))).isEmpty();
  }

  @Test
  void grainAcrossTheLongScores() {
    // Scores run upright.
    Card card = strip(30);
    Stock along = new Stock("A3", 420, 297, 220, 0.275, Stock.Grain.SHORT);
    Stock across = new Stock("A3", 420, 297, 220, 0.275, Stock.Grain.LONG);
    Finding found = Looks.asDrawn(card.net(), across).getFirst();
    assertThat(found.rule()).isEqualTo("grain");
    assertThat(found.severity()).isEqualTo(Finding.Severity.NOTE);
    assertThat(found.message()).startsWith("2 of the 2 long scores run across the grain");
    assertThat(Looks.asDrawn(card.net(), along)).isEmpty();
    assertThat(Looks.asDrawn(card.net(), across.turned())).isEmpty();
    Card bare = new Card();
    bare.rectangle("bare", 0, 0, 10, 10);
    assertThat(Looks.asDrawn(bare.net(), across)).isEmpty();
  }

  @Test
  void manyOfAKindAreCounted() {
    Card card = new Card();
    for (int i = 0; i < 30; i++) {
      card.rectangle("slip " + i, 0, 3 * i, 40, 0.5 + 0.01 * i);
    }
    List<Finding> found = Looks.of("sharp-sliver", Looks.at(card));
    assertThat(found).hasSize(26);
    assertThat(found.getLast().message()).isEqualTo("5 more like this.");
  }

  /** Alike but for the names, and made in one place of the script: said once. */
  @Test
  void whatReadsAlikeIsToldOnce() {
    Card card = new Card();
    for (int i = 0; i < 6; i++) {
      double y = 3 * i;
      card.draft.panel(
          "slip " + i,
          PanelRole.FACET,
          List.of(new Vec2(0, y), new Vec2(40, y), new Vec2(40, y + 1), new Vec2(0, y + 1)),
          Site.NONE);
    }
    List<Finding> found = Looks.of("sharp-sliver", Looks.at(card));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().message())
        .contains("\"slip 0\"")
        .endsWith("The same holds for \"slip 1\"; \"slip 2\"; \"slip 3\"; and 2 more.");
  }

  /** A square of 50 mm has 25 mm of room about its middle; at 24.75 mm nothing is left. */
  @Test
  void layersThatTheRevealTakesAreTold() {
    for (double reveal : new double[] {24.8, 24.9, 24.999, 25, 30}) {
      Card card = new Card();
      card.panel("lid", 0, 0, 50, 0, 50, 50, 0, 50).layer(reveal, "wave", Site.NONE);
      Finding found = Looks.of("layer-lost", Looks.at(card)).getFirst();
      assertThat(found.message()).contains("leaves no paper on \"lid\" as wide as 0.5 mm");
      assertThat(found.fix()).contains("24.74 mm or less");
      assertThat(found.place()).isEqualTo(new Place.AtPanel(0));
    }
    Card kept = new Card();
    kept.panel("lid", 0, 0, 50, 0, 50, 50, 0, 50).layer(24.7, "wave", Site.NONE);
    assertThat(Looks.of("layer-lost", Looks.at(kept))).isEmpty();
  }

  @Test
  void ticksOffTheCardAreTold() {
    Card card = new Card();
    PanelDraft tag = card.rectangle("tag", 0, 0, 20, 20);
    card.draft.tick(tag, new Segment2(new Vec2(5, 5), new Vec2(15, 5)), Site.NONE);
    assertThat(Looks.of("tick-off-card", Looks.at(card))).isEmpty();
    card.draft.tick(tag, new Segment2(new Vec2(-100, 10), new Vec2(500, 10)), Site.NONE);
    assertThat(Looks.of("tick-off-card", Looks.at(card)).getFirst().message())
        .isEqualTo("580 mm of a tick, 600 mm long in all, lies off the card.");
  }
}
