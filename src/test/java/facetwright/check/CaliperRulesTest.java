package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.fit.FitRule;
import facetwright.fold.Card;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** What the thickness of the card asks for. Limits are common practice, no source. */
class CaliperRulesTest {
  /** Of 220 g/m²: 0.275 mm. */
  private static final double CALIPER = Stock.usualCaliper(220);

  private static final String FIT = FitRule.NAME;

  private static void tray(Card card, String name, double x, double w, double d, double h) {
    PanelDraft base = card.rectangle(name, x, 0, w, d);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      walls.add(card.wall(base.edge(i), name + " wall " + (i + 1), h));
    }
    for (int i = 0; i < 4; i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % 4).edge(1));
    }
  }

  private static List<Finding> boxAndLid(double lidWidth, double lidDepth, double lidHeight) {
    Card card = new Card();
    tray(card, "floor", 0, 60, 40, 30);
    tray(card, "top", 200, lidWidth, lidDepth, lidHeight);
    return Looks.of(FIT, Looks.at(card));
  }

  @Test
  void lidMadeAtNoClearance() {
    List<Finding> found = boxAndLid(60, 40, 12);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().message())
        .isEqualTo(
            "If the one is to go over the other: the lid with \"top\" is 60 × 40 mm and the box"
                + " with \"floor\" 60 × 40 mm. The card is 0.28 mm thick, so the lid does not go"
                + " over it.");
    assertThat(found.getFirst().fix())
        .isEqualTo(
            "Make the lid 61.05 × 41.05 mm (1.05 mm more than its 60 mm and 1.05 mm more than its"
                + " 40 mm), or the box 58.95 × 38.95 mm (1.05 mm less than its 60 mm and 1.05 mm"
                + " less than its 40 mm).");
    assertThat(boxAndLid(61.05, 41.05, 12)).isEmpty();
    assertThat(found.getFirst().place()).isEqualTo(new Place.AtPanel(5));
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(boxAndLid(60 + 0.55, 40 + 0.55, 12)).isEmpty();
  }

  @Test
  void lidOneCaliperTooTight() {
    List<Finding> found = boxAndLid(60 + CALIPER, 40 + CALIPER, 12);
    assertThat(found).hasSize(1);
    // 61.05 less 60.275 is 0.775, which is told as either.
    assertThat(found.getFirst().fix())
        .containsPattern("^Make the lid 61\\.05 × 41\\.05 mm \\(0\\.7[78] mm more");
    assertThat(boxAndLid(60.55, 40.55, 12)).isEmpty();
  }

  @Test
  void lidWideEnoughOneWayOnly() {
    assertThat(boxAndLid(61, 40, 12).getFirst().fix())
        .startsWith("Make the lid 61 × 41.05 mm (1.05 mm more than its 40 mm)");
    assertThat(boxAndLid(60, 41, 12).getFirst().fix())
        .startsWith("Make the lid 61.05 × 41 mm (1.05 mm more than its 60 mm)");
    assertThat(boxAndLid(61, 41, 12)).isEmpty();
    // Turned a quarter it still is the lid of this box.
    assertThat(boxAndLid(40, 60, 12)).hasSize(1);
  }

  /** What is not called a lid may be meant to lie inside. */
  @Test
  void lidNarrowerThanTheBox() {
    assertThat(boxAndLid(59.8, 39.8, 12).getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
    Finding inside = boxAndLid(58, 38, 12).getFirst();
    assertThat(inside.severity()).isEqualTo(Finding.Severity.NOTE);
    assertThat(inside.message()).endsWith("so the lid does not go over it; it drops in.");
    assertThat(inside.fix()).endsWith("If it is meant to lie inside, call it an insert.");
    assertThat(insert(58, 38)).isEmpty();
  }

  private static List<Finding> insert(double width, double depth) {
    Card card = new Card();
    tray(card, "floor", 0, 60, 40, 30);
    tray(card, "insert", 200, width, depth, 12);
    return Looks.of(FIT, Looks.at(card));
  }

  @Test
  void insertsGoIntoTheirBox() {
    assertThat(insert(60 - 0.55, 40 - 0.55)).isEmpty();
    Finding tight = insert(60, 39).getFirst();
    assertThat(tight.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(tight.message())
        .isEqualTo(
            "The box with \"floor\" is 60 × 40 mm and the insert with \"insert\" 60 × 39 mm. The"
                + " card is 0.28 mm thick, so the insert does not go in.");
    assertThat(tight.fix()).endsWith("or the insert 58.95 × 39 mm (1.05 mm less than its 60 mm).");
    assertThat(insert(50, 30).getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
  }

  @Test
  void otherTraysAreNoLids() {
    // A copy, one of quite another size, and one of another shape.
    assertThat(boxAndLid(60, 40, 30)).isEmpty();
    assertThat(boxAndLid(80, 60, 12)).isEmpty();
    assertThat(boxAndLid(50, 50, 12)).isEmpty();
    assertThat(boxAndLid(100, 90, 12)).isEmpty();
  }

  /** A star of so many points; its lid is set off square to the sides, by the box's own corners. */
  private static List<Finding> stars(int points, double slip) {
    List<Vec2> box = new ArrayList<>();
    for (int i = 0; i < 2 * points; i++) {
      box.add(Vec2.polar(i % 2 == 0 ? 50 : 28, Math.PI * i / points));
    }
    Card card = new Card();
    walled(card, "floor", box, 30);
    List<Vec2> lid = new ArrayList<>();
    for (int i = 0; i < box.size(); i++) {
      Vec2 at = box.get(i);
      Vec2 in = at.minus(box.get((i + box.size() - 1) % box.size())).unit();
      Vec2 out = box.get((i + 1) % box.size()).minus(at).unit();
      Vec2 bisector = in.left().plus(out.left()).times(-1).unit();
      double reach = slip / bisector.dot(in.left().times(-1));
      lid.add(at.plus(bisector.times(reach)).plus(new Vec2(400, 0)));
    }
    walled(card, "top", lid, 12);
    return Looks.of(FIT, Looks.at(card));
  }

  private static void walled(Card card, String name, List<Vec2> corners, double high) {
    double[] xy = corners.stream().flatMapToDouble(c -> DoubleStream.of(c.x(), c.y())).toArray();
    PanelDraft base = card.panel(name, xy);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      walls.add(card.wall(base.edge(i), name + " wall " + (i + 1), high));
    }
    for (int i = 0; i < corners.size(); i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % corners.size()).edge(1));
    }
  }

  @Test
  void starLidsAreMeasuredSquareToTheirSides() {
    for (int points : new int[] {4, 5, 6, 8}) {
      assertThat(stars(points, CALIPER)).isEmpty();
      assertThat(stars(points, 0)).hasSize(1);
      assertThat(stars(points, 0).getFirst().message()).contains("exactly as wide as the box");
      assertThat(stars(points, 0.8 * CALIPER).getFirst().fix())
          .startsWith("Set each side of the lid 0.31 mm farther out, or make it 1.01");
      assertThat(stars(points, CALIPER + 2)).isEmpty();
      assertThat(stars(points, CALIPER + 2.1)).hasSize(1);
    }
  }

  private static List<Finding> sleeve(double wide, double high) {
    Card card = new Card();
    tray(card, "floor", 0, 60, 40, 20);
    PanelDraft first = card.rectangle("round", 300, 0, wide, 70);
    PanelDraft second = card.wall(first.edge(1), "right", high);
    PanelDraft third = card.wall(second.edge(2), "under", wide);
    PanelDraft fourth = card.wall(third.edge(2), "left", high);
    card.seam(fourth.edge(2), first.edge(3));
    return Looks.of(FIT, Looks.at(card));
  }

  @Test
  void sleevesGoRoundTheirTrayEndOn() {
    // Round either side of the tray, as wide and high as it is: too tight.
    for (double side : new double[] {60, 40}) {
      Finding tight = sleeve(side, 20).getFirst();
      assertThat(tight.severity()).isEqualTo(Finding.Severity.ERROR);
      assertThat(tight.message())
          .isEqualTo(
              String.format(
                  "The sleeve with \"round\" is %1$.0f × 20 mm and the tray with \"floor\" %1$.0f ×"
                      + " 20 mm seen from where it goes in. The card is 0.28 mm thick, so the tray"
                      + " does not go in.",
                  side));
      assertThat(tight.fix())
          .startsWith(
              String.format(
                  "Make the sleeve %.2f × 20.92 mm (1.05 mm more than its %.0f mm and 0.92 mm more"
                      + " than its 20 mm), or the tray ",
                  side + 1.05, side));
      assertThat(sleeve(side + 0.55, 20.42)).isEmpty();
      assertThat(sleeve(side + 0.55, 20)).hasSize(1);
      assertThat(sleeve(side, 20.42)).hasSize(1);
    }
    // Made for something else.
    assertThat(sleeve(90, 50)).isEmpty();
  }

  private static List<Finding> hexagons(double slip) {
    List<Net> nets = new ArrayList<>();
    double lidSide = 30 + 2 * slip * Math.tan(Math.PI / 6);
    for (double[] size : new double[][] {{30, 40}, {lidSide, 12}}) {
      nets.add(
          new Nets(
                  Solids.prismBySide(6, size[0], size[1]).withoutFacet("top"),
                  Unfolding.as(UnfoldStyle.PETALS).with(Tabs.deep(8)))
              .on(0, 0)
              .net());
    }
    return Looks.of(FIT, Looks.at(NetMerge.of(nets), SheetSizes.named("A3").stock(220)));
  }

  @Test
  void hexagonLidsAreMeasuredSquareToTheirSides() {
    // Every wall of the lid bears a tab.
    assertThat(hexagons(2 * CALIPER)).isEmpty();
    assertThat(hexagons(1.8 * CALIPER)).hasSize(1);
    // Twice two calipers and half a millimetre to slide: 1.6 mm across, tan(30°) of that on a side.
    assertThat(hexagons(1.8 * CALIPER).getFirst().fix())
        .startsWith("Make the lid 30.93 mm on a side instead of 30.57 mm (30.93 mm from its");
    assertThat(hexagons(0.93 / 2 / Math.tan(Math.PI / 6))).isEmpty();
  }
}
