package facetwright.net.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Overlaps;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.draft.NetDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SheetLayoutTest {
  private static final Stock A4 = SheetSizes.named("A4").stock(220);

  private static Net pieces(List<Polygon2> outlines) {
    NetDraft draft = new NetDraft();
    int i = 0;
    for (Polygon2 outline : outlines) {
      draft.panel("p" + i++, PanelRole.FACET, outline.corners(), Site.NONE);
    }
    return draft.build();
  }

  private static Polygon2 box(double width, double height) {
    return Polygon2.rectangle(0, 0, width, height);
  }

  @Provide
  Arbitrary<List<Polygon2>> shapes() {
    Arbitrary<Polygon2> one =
        Combinators.combine(
                Arbitraries.integers().between(3, 9),
                Arbitraries.doubles().between(4, 90),
                Arbitraries.doubles().between(0, 7),
                Arbitraries.doubles().between(0.2, 1))
            .as(
                (sides, radius, turn, flat) ->
                    new Polygon2(
                        Polygon2.regular(new Vec2(500, -300), sides, radius, turn)
                            .corners()
                            .stream()
                            .map(c -> new Vec2(c.x(), c.y() * flat))
                            .toList()));
    return one.list().ofMinSize(1).ofMaxSize(9);
  }

  @Property(tries = 40, seed = "20261125")
  void piecesStayOnTheirSheetsAndApart(
      @ForAll("shapes") List<Polygon2> outlines, @ForAll boolean roomy) {
    double margin = roomy ? 5 : 0;
    double gap = roomy ? 3 : 0;
    Net net = pieces(outlines);
    Laid laid = SheetLayout.lay(net, A4, new Room(margin, gap));
    assertThat(laid.fits()).isTrue();
    for (Panel panel : laid.net().panels()) {
      Box2 at = panel.outline().box();
      int sheet = (int) Math.floor((at.minX() + 1e-3) / (laid.stock().width() + Laid.SHEET_GAP));
      assertThat(sheet).isBetween(0, laid.sheets() - 1);
      assertThat(laid.sheet(sheet).grown(-margin).holds(at, LengthTolerance.FINE)).isTrue();
    }
    assertThat(Overlaps.find(laid.net(), new LengthTolerance(2e-5))).isEmpty();
    for (int i = 0; i < outlines.size(); i++) {
      Polygon2 moved = laid.net().panels().get(i).outline();
      assertThat(moved.area()).isCloseTo(outlines.get(i).area(), within(1e-6));
      for (int j = 0; j < i; j++) {
        double apart =
            Planar.polygon(moved).distance(Planar.polygon(laid.net().panels().get(j).outline()));
        // The grown outline's round corners are polygons: 2 % short at most.
        assertThat(apart).isGreaterThanOrEqualTo(gap * 0.97 - 1e-4);
      }
    }
  }

  @Test
  void theMakersDirectionIsKept() {
    Laid laid =
        SheetLayout.lay(pieces(List.of(box(280, 200))), A4, new Room(0, SheetLayout.USUAL_GAP));
    assertThat(laid.stock().width()).isEqualTo(297);
    assertThat(laid.net().panels().getFirst().outline().box()).isEqualTo(new Box2(8, 5, 288, 205));
    assertThat(laid.fits()).isTrue();
  }

  @Test
  void aSlantedPieceIsTurnedStraight() {
    Polygon2 slanted =
        facetwright.geom.Motion2.turn(Math.PI / 6).apply(Polygon2.rectangle(0, 0, 290, 205));
    Laid laid = SheetLayout.lay(pieces(List.of(slanted)), A4, new Room(0, SheetLayout.USUAL_GAP));
    assertThat(laid.fits()).isTrue();
    assertThat(laid.sheets()).isEqualTo(1);
  }

  @Test
  void aPieceAsLargeAsTheSheetFits() {
    assertThat(
            SheetLayout.lay(pieces(List.of(box(210, 297))), A4, new Room(0, SheetLayout.USUAL_GAP))
                .fits())
        .isTrue();
    assertThat(
            SheetLayout.lay(
                    pieces(List.of(box(210.01, 297))), A4, new Room(0, SheetLayout.USUAL_GAP))
                .fits())
        .isFalse();
  }

  @Test
  void whatIsTooLargeLiesAtTheCorner() {
    Laid laid =
        SheetLayout.lay(pieces(List.of(box(400, 300))), A4, new Room(0, SheetLayout.USUAL_GAP));
    assertThat(laid.fits()).isFalse();
    assertThat(laid.sheets()).isEqualTo(1);
    assertThat(laid.net().panels().getFirst().outline().corner(0)).isEqualTo(Vec2.ZERO);
  }

  @Test
  void fourQuartersTakeOneSheetAndAFifthTakesAnother() {
    List<Polygon2> quarters = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      quarters.add(box(105, 148.5));
    }
    assertThat(SheetLayout.lay(pieces(quarters), A4, new Room(0, 0)).sheets()).isEqualTo(1);
    quarters.add(box(105, 148.5));
    assertThat(SheetLayout.lay(pieces(quarters), A4, new Room(0, 0)).sheets()).isEqualTo(2);
  }

  @Test
  void trianglesNestByTheirTrueOutlines() {
    // Two right triangles make up the sheet less the gap; their boxes alone would take two sheets.
    Polygon2 lower = new Polygon2(List.of(Vec2.ZERO, new Vec2(200, 0), new Vec2(0, 280)));
    Polygon2 upper = new Polygon2(List.of(new Vec2(200, 0), new Vec2(200, 280), new Vec2(0, 280)));
    Laid laid = SheetLayout.lay(pieces(List.of(lower, upper)), A4, new Room(0, 2));
    assertThat(laid.sheets()).isEqualTo(1);
    assertThat(laid.fits()).isTrue();
  }

  @Test
  void wrongMarginsAreRefused() {
    Net net = pieces(List.of(box(10, 10)));
    assertThatThrownBy(() -> SheetLayout.lay(net, A4, new Room(-1, 0)))
        .hasMessageContaining("margin");
    assertThatThrownBy(() -> SheetLayout.lay(net, A4, new Room(0, 101)))
        .hasMessageContaining("gap");
    Stock small = SheetSize.custom(50, 50, Unit.MM).stock(200);
    assertThatThrownBy(() -> SheetLayout.lay(net, small, new Room(25, 0)))
        .hasMessageContaining("nothing");
  }

  /** A little too wide for the usual room, too wide for half of it, and as wide as the sheet. */
  @Property(tries = 60, seed = "20261201")
  void roomIsKeptWhereTheSheetLeavesIt(@ForAll @DoubleRange(min = 20, max = 210) double width) {
    Net net = pieces(List.of(box(width, width)));
    Laid laid = SheetLayout.lay(net, A4, Room.orLess(Unit.MM));
    double edge = (A4.width() - width) / 2;
    assertThat(laid.fits()).isTrue();
    assertThat(laid.wanted()).isEqualTo(new Room(5, 5));
    assertThat(laid.kept().margin()).isEqualTo(edge >= 5 ? 5 : edge >= 2.5 ? 2.5 : 0);
    Box2 at = laid.net().panels().getFirst().outline().box();
    // The middle to a whole millimetre.
    assertThat(at.minX()).isGreaterThanOrEqualTo(Math.max(laid.kept().margin(), edge - 1) - 1e-9);
    assertThat(laid.stock().width() - at.maxX())
        .isGreaterThanOrEqualTo(Math.max(laid.kept().margin(), edge - 1) - 1e-9);
  }

  @Test
  void piecesComeNearerBeforeTheyTakeAnotherSheet() {
    Net net = pieces(List.of(box(200, 145), box(200, 145)));
    Laid laid = SheetLayout.lay(net, A4, Room.orLess(Unit.MM));
    assertThat(laid.sheets()).isEqualTo(1);
    assertThat(laid.kept()).isEqualTo(new Room(0, 2));
    // No nearer for nothing: a third takes another sheet at all events.
    Net three = pieces(List.of(box(200, 145), box(200, 145), box(200, 145)));
    Laid two = SheetLayout.lay(three, A4, Room.orLess(Unit.MM));
    assertThat(two.sheets()).isEqualTo(2);
    assertThat(SheetLayout.lay(pieces(List.of(box(290, 200))), A4, Room.orLess(Unit.INCH)).kept())
        .isEqualTo(new Room(3.175, 4.175));
  }

  @Test
  void piecesComeNearerBeforeALargerSheetIsTaken() {
    Net net = pieces(List.of(box(205, 205)));
    List<Stock> sizes = List.of(A4, SheetSizes.named("A3").stock(220));
    Laid laid =
        SheetLayout.lay(
            net, List.of(new SheetLayout.Share(sizes, List.of(0))), Room.orLess(Unit.MM));
    assertThat(laid.stock().name()).isEqualTo("A4");
    assertThat(laid.kept()).isEqualTo(new Room(2.5, 3.5));
  }

  /** Laid by area alone, the long one comes last and takes a sheet of its own. */
  @Test
  void otherOrdersAreTried() {
    Net net = pieces(List.of(box(150, 150), box(150, 140), box(290, 55)));
    Laid laid =
        SheetLayout.lay(net, SheetSize.custom(300, 220, Unit.MM).stock(220), new Room(0, 0));
    assertThat(laid.sheets()).isEqualTo(1);
  }
}
