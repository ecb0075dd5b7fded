package facetwright.draw.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.NetDrawing;
import facetwright.export.Papers;
import facetwright.geom.Box2;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** The pages put together again are the net. */
class TiledPagesTest {
  private static final Pattern NAME = Pattern.compile("([0-9]+)([A-Z])");
  private static final Laid LAID = SheetLayout.lay(Papers.tray(190, 90), Papers.A2, new Room(5, 2));

  private static List<Drawing> pages(String paper) {
    return TiledPages.of(
        "Tray", Order.usual(Unit.MM).telling(), LAID, SheetSizes.named(paper), Template.PLAIN);
  }

  private static String name(Drawing page) {
    return page.marks().stream()
        .filter(m -> m instanceof Text t && NAME.matcher(t.content()).matches())
        .map(m -> ((Text) m).content())
        .findFirst()
        .orElseThrow();
  }

  private static Geometry lines(List<Mark> marks, LineKind kind, Vec2 shift) {
    List<LineString> lines = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Stroke s && s.kind() == kind) {
        List<Vec2> points = new ArrayList<>(s.points());
        if (s.closed()) {
          points.add(points.getFirst());
        }
        lines.add(
            Planar.factory()
                .createLineString(
                    points.stream()
                        .map(p -> Planar.coordinate(p.plus(shift)))
                        .toArray(Coordinate[]::new)));
      }
    }
    return Planar.factory().createMultiLineString(lines.toArray(LineString[]::new));
  }

  /**
   * Laid side by side by the sizes the key page tells (window of the paper less margins, strips of
   * 10 mm shared), the lines of each kind are those of the template: none is missing, none is more,
   * to 0.001 mm.
   */
  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter", "A3"})
  void putTogetherTheyAreTheNet(String paper) {
    Drawing whole = NetDrawing.of(LAID, 0, NetDrawing.TEMPLATE);
    List<Drawing> tiles = pages(paper).subList(1, pages(paper).size());
    Box2 outer = boxOf(whole);
    for (LineKind kind : List.of(LineKind.CUT, LineKind.MOUNTAIN, LineKind.PERFORATION)) {
      Geometry wanted = lines(whole.marks(), kind, Vec2.ZERO);
      assertThat(wanted.getLength()).as(kind.id()).isPositive();
      Geometry found = Planar.factory().createMultiLineString();
      for (Drawing page : tiles) {
        found = found.union(lines(page.marks(), kind, place(name(page), page, outer)));
      }
      assertThat(wanted.difference(found.buffer(1e-3)).getLength()).as(kind.id()).isLessThan(1e-6);
      assertThat(found.difference(wanted.buffer(1e-3)).getLength()).as(kind.id()).isLessThan(1e-6);
    }
  }

  private static Box2 boxOf(Drawing whole) {
    List<Vec2> all = new ArrayList<>();
    for (Mark mark : whole.marks()) {
      if (mark instanceof Stroke s && s.kind() == LineKind.CUT) {
        all.addAll(s.points());
      }
    }
    return Box2.around(all);
  }

  /** Where a page's corner lies, from its name and what a maker can measure on it alone. */
  private static Vec2 place(String name, Drawing page, Box2 outer) {
    double margin = 9;
    double foot = 17;
    double shared = 10;
    double wide = page.width() - 2 * margin;
    double high = page.height() - 2 * margin - foot;
    int row = Integer.parseInt(name.substring(0, name.length() - 1)) - 1;
    int column = name.charAt(name.length() - 1) - 'A';
    int columns = 1;
    while (columns * wide - (columns - 1) * shared < outer.width() + 4) {
      columns++;
    }
    int rows = 1;
    while (rows * high - (rows - 1) * shared < outer.height() + 4) {
      rows++;
    }
    double left =
        outer.centre().x()
            - (columns * wide - (columns - 1) * shared) / 2
            + column * (wide - shared);
    double top =
        outer.centre().y() + (rows * high - (rows - 1) * shared) / 2 - row * (high - shared);
    return new Vec2(left - margin, top - high - margin - foot);
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter", "A3"})
  void everyPageHasBothRulersAtTrueSize(String paper) {
    for (Drawing page : pages(paper)) {
      assertThat(level(page, 100)).as("100 mm").isEqualTo(1);
      assertThat(level(page, 4 * 25.4)).as("4 in").isEqualTo(1);
      // Ticks: every millimetre and every eighth of an inch, ends included.
      Stroke mm = base(page, 100);
      for (int i = 0; i <= 100; i++) {
        assertThat(hasTick(page, mm.points().getFirst().plus(new Vec2(i, 0)))).isTrue();
      }
      Stroke inches = base(page, 101.6);
      for (int i = 0; i <= 32; i++) {
        assertThat(hasTick(page, inches.points().getFirst().plus(new Vec2(i * 25.4 / 8, 0))))
            .isTrue();
      }
    }
  }

  private static long level(Drawing page, double length) {
    return page.marks().stream()
        .filter(
            m ->
                m instanceof Stroke s
                    && s.kind() == LineKind.GUIDE
                    && s.points().size() == 2
                    && Math.abs(s.points().get(0).y() - s.points().get(1).y()) < 1e-9
                    && Math.abs(s.points().get(0).distance(s.points().get(1)) - length) < 1e-9)
        .count();
  }

  private static Stroke base(Drawing page, double length) {
    return page.marks().stream()
        .filter(m -> m instanceof Stroke s && s.kind() == LineKind.GUIDE && s.points().size() == 2)
        .map(m -> (Stroke) m)
        .filter(s -> Math.abs(s.points().get(0).distance(s.points().get(1)) - length) < 1e-9)
        .findFirst()
        .orElseThrow();
  }

  private static boolean hasTick(Drawing page, Vec2 foot) {
    return page.marks().stream()
        .anyMatch(
            m ->
                m instanceof Stroke s
                    && s.kind() == LineKind.GUIDE
                    && s.points().getFirst().distance(foot) < 1e-9
                    && Math.abs(s.points().get(1).x() - foot.x()) < 1e-9);
  }

  /** Every round mark lies on at least two pages at the same place of the net. */
  @Test
  void roundMarksLieOnEachOther() {
    Box2 outer = boxOf(NetDrawing.of(LAID, 0, NetDrawing.TEMPLATE));
    List<Drawing> tiles = pages("A4").subList(1, pages("A4").size());
    List<Vec2> all = new ArrayList<>();
    for (Drawing page : tiles) {
      Vec2 place = place(name(page), page, outer);
      for (Mark mark : page.marks()) {
        if (mark instanceof Mark.Circle c && c.kind() == LineKind.GUIDE) {
          all.add(c.centre().plus(place));
        }
      }
    }
    assertThat(all).isNotEmpty();
    for (Vec2 one : all) {
      assertThat(all.stream().filter(o -> o.distance(one) < 1e-6).count())
          .as(one.toString())
          .isGreaterThanOrEqualTo(2);
    }
  }

  @Test
  void pagesGoByRowAndColumnOnce() {
    List<Drawing> tiles = pages("A4").subList(1, pages("A4").size());
    Set<String> names = new HashSet<>();
    tiles.forEach(t -> assertThat(names.add(name(t))).isTrue());
    assertThat(names).contains("1A", "2B");
    assertThat(tiles)
        .allSatisfy(
            t -> {
              assertThat(Math.min(t.width(), t.height())).isCloseTo(210, within(1e-9));
              assertThat(Math.max(t.width(), t.height())).isCloseTo(297, within(1e-9));
            });
  }

  @Test
  void wordsAreLargeEnough() {
    for (Drawing page : pages("A3")) {
      for (Mark mark : page.marks()) {
        if (mark instanceof Text t) {
          assertThat(t.size()).isGreaterThanOrEqualTo(Lettering.pt(8) - 1e-9);
        }
      }
    }
  }

  @Test
  void onlyWhatIsLargerIsTiled() {
    assertThat(TiledPages.isLarger(LAID, SheetSizes.named("A4"))).isTrue();
    assertThat(TiledPages.isLarger(LAID, SheetSizes.named("A2"))).isFalse();
    assertThat(TiledPages.isLarger(LAID, new SheetSize("wide", 594, 420))).isFalse();
  }
}
