package facetwright.papers.copies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.draft.NetDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

class CopyPlanTest {
  private static Net net(List<Vec2> corners) {
    NetDraft draft = new NetDraft();
    draft.standOn(draft.panel("card", PanelRole.FACET, corners, Site.NONE));
    return draft.build();
  }

  private static Net rectangle(double width, double height) {
    return net(Polygon2.rectangle(0, 0, width, height).corners());
  }

  private static Net triangle(double side) {
    return net(List.of(Vec2.ZERO, new Vec2(side, 0), new Vec2(side / 2, side * Math.sqrt(3) / 2)));
  }

  private static Stock sheet(double width, double height) {
    return SheetSize.custom(width, height, Unit.MM).stock(220);
  }

  /** Every copy whole on the sheet, each clear of each other by the gap, told by JTS. */
  private static void isRight(CopyPlan plan, Net net) {
    List<Geometry> at = new ArrayList<>();
    for (Motion2 motion : plan.copies()) {
      at.add(Planar.moved(Blank.shape(net), motion));
    }
    double m = plan.room().margin();
    for (int i = 0; i < at.size(); i++) {
      Envelope box = at.get(i).getEnvelopeInternal();
      assertThat(box.getMinX()).isGreaterThanOrEqualTo(m - 1e-5);
      assertThat(box.getMinY()).isGreaterThanOrEqualTo(m - 1e-5);
      assertThat(box.getMaxX()).isLessThanOrEqualTo(plan.stock().width() - m + 1e-5);
      assertThat(box.getMaxY()).isLessThanOrEqualTo(plan.stock().height() - m + 1e-5);
      for (int j = 0; j < i; j++) {
        if (plan.room().gap() > 0) {
          assertThat(at.get(i).distance(at.get(j)))
              .isGreaterThanOrEqualTo(plan.room().gap() - 1e-5);
        }
        assertThat(at.get(i).intersection(at.get(j)).getArea()).isEqualTo(0, within(1e-3));
      }
    }
  }

  // Rectangles in rows: the whole of W/w times the whole of H/h; where neither turns the count
  // over, that is the most.
  @ParameterizedTest
  @CsvSource({"50, 40, 16", "70, 50, 8", "100, 80, 4", "200, 160, 1", "60, 55, 6", "201, 100, 0"})
  void countsRectangles(double width, double height, int count) {
    Net net = rectangle(width, height);
    CopyPlan plan = CopyPlan.of(net, sheet(200, 160), new Room(0, 0));
    assertThat(plan.count()).isEqualTo(count);
    isRight(plan, net);
  }

  @Test
  void keepsTheGapAndTheMargin() {
    // Between margins of 5 lie 190: three of 60 and two gaps of 5 fill it to the line.
    Net net = rectangle(60, 60);
    CopyPlan plan = CopyPlan.of(net, sheet(200, 200), new Room(5, 5));
    assertThat(plan.count()).isEqualTo(9);
    isRight(plan, net);
    assertThat(CopyPlan.of(net, sheet(199, 200), new Room(5, 5)).count()).isEqualTo(6);
  }

  // Equilateral triangles, every second one on its head, fill a strip of their height without a
  // gap: n of them reach (n + 1)/2 sides. So four rows of 13 lie on 7 sides by 4 heights.
  @Test
  void interlocksTriangles() {
    double side = 40;
    double high = side * Math.sqrt(3) / 2;
    Net net = triangle(side);
    CopyPlan strip = CopyPlan.of(net, sheet(7 * side, high), new Room(0, 0));
    assertThat(strip.count()).isEqualTo(13);
    isRight(strip, net);
    CopyPlan four = CopyPlan.of(net, sheet(7 * side, 4 * high), new Room(0, 0));
    assertThat(four.count()).isEqualTo(52);
    isRight(four, net);
  }

  // Regular hexagons in rows shifted by half: row pitch 3/2 of the side, columns √3 sides apart.
  @Test
  void shiftsRowsOfHexagons() {
    double side = 20;
    double across = side * Math.sqrt(3);
    Net net = net(Polygon2.regular(Vec2.ZERO, 6, side, Math.PI / 2).corners());
    CopyPlan plan = CopyPlan.of(net, sheet(5.5 * across, side * (2 + 1.5 * 5)), new Room(0, 0));
    assertThat(plan.count()).isEqualTo(30);
    isRight(plan, net);
  }

  // An L of three squares and the same turned end for end make a 2 × 3 block.
  @Test
  void pairsWhatInterlocksTurnedEndForEnd() {
    Net net =
        net(
            List.of(
                Vec2.ZERO,
                new Vec2(40, 0),
                new Vec2(40, 20),
                new Vec2(20, 20),
                new Vec2(20, 40),
                new Vec2(0, 40)));
    CopyPlan plan = CopyPlan.of(net, sheet(120, 80), new Room(0, 0));
    isRight(plan, net);
    assertThat(plan.count()).isEqualTo(8);
  }

  @Test
  void keepsTheDirectionAlongAKnownGrain() {
    Net net = rectangle(150, 90);
    Stock any = sheet(200, 310);
    assertThat(CopyPlan.of(net, any, new Room(0, 0)).count()).isEqualTo(4);
    Stock along = SheetSize.custom(200, 310, Unit.MM).stock(220, 0.28, Stock.Grain.LONG);
    CopyPlan plan = CopyPlan.of(net, along, new Room(0, 0));
    assertThat(plan.count()).isEqualTo(3);
    assertThat(plan.copies()).allMatch(m -> Math.abs(m.sin()) < 1e-9);
  }

  @Property(tries = 25, seed = "20261125")
  void laysWhateverItLaysRightly(
      @ForAll @IntRange(min = 3, max = 8) int sides,
      @ForAll @DoubleRange(min = 12, max = 40) double radius,
      @ForAll @DoubleRange(min = 0, max = 3) double turn,
      @ForAll @DoubleRange(min = 0.3, max = 1) double dent,
      @ForAll @DoubleRange(min = 0, max = 4) double gap) {
    List<Vec2> star = new ArrayList<>();
    for (int i = 0; i < 2 * sides; i++) {
      double r = i % 2 == 0 ? radius : radius * dent;
      star.add(Vec2.polar(r, turn + Math.PI * i / sides));
    }
    Net net = net(star);
    CopyPlan plan = CopyPlan.of(net, sheet(180, 140), new Room(3, gap));
    isRight(plan, net);
    double box = Math.ceil(2 * radius) + gap;
    assertThat(plan.count())
        .isGreaterThanOrEqualTo((int) (Math.floor(174 / box) * Math.floor(134 / box)));
  }

  /**
   * Strips narrower than the gap: a row shifted between those of the row below is not clear of it.
   */
  @Property(tries = 30, seed = "3")
  void laysStripsApart(
      @ForAll @DoubleRange(min = 0.05, max = 3) double narrow,
      @ForAll @DoubleRange(min = 0.5, max = 60) double length,
      @ForAll @DoubleRange(min = 0.5, max = 5) double gap,
      @ForAll boolean upright) {
    Net net = upright ? rectangle(narrow, length) : rectangle(length, narrow);
    CopyPlan plan = CopyPlan.of(net, sheet(64, 40), new Room(0, gap));
    isRight(plan, net);
    assertThat(plan.count()).isPositive();
  }

  /** Room costs no copy: of those that may be kept it is the widest that gives the most. */
  @Property(tries = 40, seed = "20261206")
  void roomCostsNoCopies(
      @ForAll @DoubleRange(min = 45, max = 150) double width,
      @ForAll @DoubleRange(min = 45, max = 150) double height,
      @ForAll boolean inches) {
    Net net = rectangle(width, height);
    Unit unit = inches ? Unit.INCH : Unit.MM;
    Stock stock = SheetSizes.named(inches ? "Letter" : "A4").stock(220);
    Laid laid = SheetLayout.lay(net, stock, Room.orLess(unit));
    CopyPlan plan = CopyPlan.of(laid);
    isRight(plan, laid.net());
    assertThat(plan.toEdge(laid.net())).isGreaterThanOrEqualTo(plan.room().margin() - 1e-5);
    for (Room room : Room.orLess(unit)) {
      int count = CopyPlan.of(laid.net(), laid.stock(), room).count();
      assertThat(count).isLessThanOrEqualTo(plan.count());
      if (room.gap() > plan.room().gap()) {
        assertThat(count).isLessThan(plan.count());
      }
    }
  }

  /** Six go on A4 half a millimetre from its edge where four do five from it. */
  @Test
  void piecesComeNearerSoThatMoreGoOnASheet() {
    Laid laid =
        SheetLayout.lay(
            rectangle(103.5, 96), SheetSizes.named("A4").stock(220), Room.orLess(Unit.MM));
    assertThat(laid.kept()).isEqualTo(laid.wanted());
    assertThat(CopyPlan.of(laid).count()).isEqualTo(6);
    assertThat(CopyPlan.of(laid).room()).isEqualTo(new Room(0, 2));
    // Who says what is kept along the edges keeps it.
    Laid said =
        SheetLayout.lay(
            rectangle(103.5, 96), SheetSizes.named("A4").stock(220), Room.within(5, Unit.MM));
    assertThat(CopyPlan.of(said).room().margin()).isEqualTo(5);
    assertThat(CopyPlan.of(said).count()).isLessThan(6);
  }

  @Test
  void ofATinyNetNoMoreAreLaidThanAnyoneCuts() {
    for (double side : new double[] {1, 0.02, 0.01}) {
      for (double gap : new double[] {0, 0.001, 2}) {
        CopyPlan plan = CopyPlan.of(rectangle(side, side), sheet(210, 297), new Room(0, gap));
        assertThat(plan.count()).isEqualTo(CopyPlan.MOST);
        assertThat(plan.isMost()).isTrue();
      }
    }
  }
}
