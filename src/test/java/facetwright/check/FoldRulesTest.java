package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.fold.Card;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rules about the folded form and what is glued. Limits are common practice, no source. */
class FoldRulesTest {

  private static Card unevenTray(double third) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 60);
    PanelDraft one = card.wall(base.edge(0), "one", 20);
    PanelDraft two = card.wall(base.edge(1), "two", third);
    card.seam(one.edge(3), two.edge(1));
    return card;
  }

  @Test
  void seamOfUnequalSidesTellsBothLengths() {
    List<Finding> found = Looks.at(unevenTray(22));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().rule()).isEqualTo("seam-lengths");
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(found.getFirst().message())
        .isEqualTo(
            "The seam between \"one\" (line 2) and \"two\" (line 3): its sides differ by 2 mm. That"
                + " of \"one\" is 20 mm long, that of \"two\" 22 mm.");
    assertThat(found.getFirst().fix())
        .isEqualTo("Make that side of \"one\" 2 mm longer, or that of \"two\" 2 mm shorter.");
    assertThat(found.getFirst().place()).isEqualTo(new Place.AtJoin(0));
    assertThat(found.getFirst().site().line()).isEqualTo(4);
    assertThat(Looks.at(unevenTray(25)).getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(Looks.at(unevenTray(20))).isEmpty();
  }

  @Test
  void gapTellsHowFarTheSeamMisses() {
    List<Finding> found = Looks.at(Card.tray(60, 40, 25, FoldAngle.degrees(80)));
    assertThat(found).hasSize(1).allMatch(f -> f.rule().equals("gap"));
    // 25·cos 80°·√2 = 6.14 mm
    assertThat(found.getFirst().message())
        .matches(
            "When folded, the seam between \"wall \\d\" and \"wall \\d\" misses by 6.14 mm, and 3"
                + " others miss by up to 6.14 mm: the seam between [^:.]*\\.");
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    List<Finding> small = Looks.at(Card.tray(60, 40, 25, FoldAngle.degrees(88)));
    assertThat(small).hasSize(1).allMatch(f -> f.severity() == Finding.Severity.ERROR);
    assertThat(Looks.at(Card.tray(60, 40, 25, FoldAngle.degrees(89.8)))).isEmpty();
  }

  @Test
  void gapOfALapNamesBothPanels() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 50);
    PanelDraft over = card.flap(base.edge(1), "cover", 50, Sense.MOUNTAIN, FoldAngle.degrees(178));
    card.draft.lap(over, base, Site.NONE);
    Finding found = Looks.of("gap", Looks.at(card)).getFirst();
    // 50·sin 2° less the caliper by which it lies inside: 1.745 − 0.275 mm.
    assertThat(found.message()).contains("the lap of \"cover\" under \"base\" misses by 1.47 mm");
    assertThat(found.site()).isEqualTo(card.net().panels().get(1).site());
  }

  @Test
  void gapOfALapThatLiesBesideSaysSo() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 50);
    PanelDraft web = card.flap(base.edge(1), "web", 12, Sense.MOUNTAIN, FoldAngle.degrees(0));
    card.draft.lap(web, base, Site.NONE);
    Finding found = Looks.of("gap", Looks.at(card)).getFirst();
    assertThat(found.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(found.message())
        .isEqualTo(
            "When folded, \"web\" lies beside \"base\", not under it, so that no glue holds it: its"
                + " middle is 6 mm off.");
    assertThat(found.fix())
        .isEqualTo("Fold the score between \"base\" and \"web\" right over: 180°, a mountain.");
    // Followed: it lies on the base.
    Card mended = new Card();
    PanelDraft floor = mended.rectangle("base", 0, 0, 50, 50);
    mended.draft.lap(
        mended.flap(floor.edge(1), "web", 12, Sense.MOUNTAIN, FoldAngle.degrees(180)),
        floor,
        Site.NONE);
    assertThat(Looks.at(mended)).isEmpty();
  }

  private static Card cross(double west) {
    Card card = new Card();
    PanelDraft ne = card.rectangle("ne", 0, 0, 10, 10);
    PanelDraft nw = card.rectangle("nw", -10, 0, 10, 10);
    PanelDraft sw = card.rectangle("sw", -10, -10, 10, 10);
    PanelDraft se = card.rectangle("se", 0, -10, 10, 10);
    Sense m = Sense.MOUNTAIN;
    card.draft.score(se.edge(2), ne.edge(0), m, FoldAngle.degrees(90), new Site(5, 1));
    card.draft.score(ne.edge(3), nw.edge(1), m, FoldAngle.degrees(0), new Site(6, 1));
    card.draft.score(nw.edge(0), sw.edge(2), m, FoldAngle.degrees(west), new Site(7, 1));
    card.draft.score(sw.edge(1), se.edge(3), m, FoldAngle.degrees(0), new Site(8, 1));
    return card;
  }

  @Test
  void tearTellsWhichScore() {
    Finding found = Looks.at(cross(60)).getFirst();
    assertThat(found.rule()).isEqualTo("tear");
    // 2·10·sin 15° = 5.18 mm
    assertThat(found.message()).startsWith("The card would tear or buckle by 5.18 mm at the score");
    assertThat(found.place()).isInstanceOf(Place.AtScore.class);
    assertThat(found.site().isKnown()).isTrue();
    assertThat(Looks.at(cross(90))).isEmpty();
  }

  @Test
  void notSolvedCountsTheScores() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 40);
    for (int i = 0; i < 4; i++) {
      card.flap(base.edge(i), "wall " + i, 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    }
    List<Finding> found = Looks.at(card);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().rule()).isEqualTo("not-solved");
    // Seamed at its corners it can only stand one way.
    assertThat(Looks.at(Card.tray(60, 40, 25, FoldAngle.TO_SOLVE))).isEmpty();
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.NOTE);
    assertThat(found.getFirst().message())
        .isEqualTo(
            "Nothing determines how far 4 scores are folded: the first is the score between"
                + " \"base\" and \"wall 0\". So it can't be told whether the form closes.");
    assertThat(found.getFirst().place()).isEqualTo(new Place.AtScore(0));
    assertThat(found.getFirst().site().line()).isEqualTo(2);
  }

  /** Wall "one" is glued by a tab under wall "two", 20 mm wide and 30 high. */
  private static Card tabbed(double depth, double bevel) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 20);
    PanelDraft one = card.wall(base.edge(0), "one", 30);
    PanelDraft two = card.wall(base.edge(1), "two", 30);
    card.tab(one.edge(3), two.edge(1), depth, bevel, FoldAngle.TO_SOLVE);
    return card;
  }

  @Test
  void tabThatReachesPastItsHost() {
    List<Finding> found = Looks.at(tabbed(23, 1));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().rule()).isEqualTo("tab-too-big");
    assertThat(found.getFirst().message())
        .isEqualTo(
            "\"tab of one\" reaches 3 mm past the edge of \"two\", under which it is glued.");
    // Nothing stands at that edge: it shows, but it can be made.
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(found.getFirst().place()).isEqualTo(new Place.AtPanel(3));
    assertThat(Looks.at(tabbed(10, 5))).isEmpty();
  }

  @Test
  void tabThatShowsInAWindow() {
    // Wall "two" lies right of x = 60, its seam along y = 0: the window starts 8 mm inside.
    Card card = tabbed(10, 5);
    card.draft
        .panels()
        .get(2)
        .open(new Opening.Window(Polygon2.rectangle(68, 8, 10, 6), Site.NONE));
    Finding found = Looks.at(card).getFirst();
    assertThat(found.message())
        .isEqualTo("\"tab of one\" shows in a window of \"two\", under which it is glued.");
    assertThat(found.fix())
        .isEqualTo("Make \"tab of one\" at most 8 mm deep; or move the opening.");
    Card mended = tabbed(8, 4);
    mended
        .draft
        .panels()
        .get(2)
        .open(new Opening.Window(Polygon2.rectangle(68, 8, 10, 6), Site.NONE));
    assertThat(Looks.at(mended)).isEmpty();
  }

  private static Card lapped(double depth, Opening opening) {
    Card card = new Card();
    PanelDraft front = card.rectangle("front", 0, 0, 50, 40);
    PanelDraft back = card.flap(front.edge(1), "back", 50, Sense.MOUNTAIN, FoldAngle.degrees(180));
    PanelDraft glued =
        card.flap(back.edge(2), "glue flap", depth, Sense.MOUNTAIN, FoldAngle.degrees(180));
    glued.become(PanelRole.TAB);
    card.draft.lap(glued, front, Site.NONE);
    front.open(opening);
    return card;
  }

  @Test
  void lappedTabThatShowsInAHole() {
    Opening hole = new Opening.Hole(new Vec2(10, 20), 6, Site.NONE);
    Finding found = Looks.of("tab-too-big", Looks.at(lapped(12, hole))).getFirst();
    assertThat(found.message())
        .isEqualTo("\"glue flap\" shows in a hole of \"front\", under which it is glued.");
    assertThat(found.fix()).isEqualTo("Make \"glue flap\" at most 7 mm deep; or move the opening.");
    assertThat(Looks.at(lapped(6, hole))).isEmpty();
  }

  /** Two tabs under neighbouring sides of one square: they meet in its corner unless beveled. */
  private static Card twoTabs(double bevel) {
    Card card = new Card();
    PanelDraft host = card.rectangle("host", 0, 0, 40, 40);
    PanelDraft one = card.rectangle("one", 100, 0, 40, 40);
    PanelDraft two = card.rectangle("two", 200, 0, 40, 40);
    card.tab(one.edge(2), host.edge(0), 8, bevel, FoldAngle.degrees(0));
    card.tab(two.edge(1), host.edge(3), 8, bevel, FoldAngle.degrees(0));
    return card;
  }

  @Test
  void tabsThatMeetUnderOnePanel() {
    List<Finding> found = Looks.at(twoTabs(2));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().rule()).isEqualTo("tabs-clash");
    assertThat(found.getFirst().message())
        .isEqualTo(
            "\"tab of one\" and \"tab of two\" lie over each other once glued under \"host\": the"
                + " card gets a bump there.");
    assertThat(Looks.at(twoTabs(8))).isEmpty();
  }

  @Test
  void errorsComeFirst() {
    Card card = unevenTray(25);
    card.draft.panels().get(1).open(new Opening.Hole(new Vec2(30, -10), 1, Site.NONE));
    card.draft.panels().get(1).open(new Opening.Hole(new Vec2(30, -4), 1, Site.NONE));
    List<Finding> found = Looks.at(card);
    assertThat(found).extracting(Finding::severity).isSorted();
    assertThat(found).hasSize(2);
    assertThat(Looks.at(card)).isEqualTo(found);
  }
}
