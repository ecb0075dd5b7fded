package facetwright.net.blank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.NamedPanel;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Overlaps;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.Stance;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSizes;
import facetwright.words.Site;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class BlankTest {
  private static final Site AT = new Site(4, 1);
  private static final FoldAngle SQUARE = FoldAngle.degrees(90);

  /** The tray from one sheet: scored h from each edge, slit at the corners, the corners tabs. */
  private static Blank tray(double w, double d, double h) {
    Blank blank = Blank.of(w, d, AT);
    blank.score(
        blank.fromLeft(h, AT), LineKind.SCORE, List.of(new LineFold(Sense.MOUNTAIN, SQUARE)), AT);
    blank.score(
        blank.fromRight(h, AT), LineKind.SCORE, List.of(new LineFold(Sense.MOUNTAIN, SQUARE)), AT);
    blank.score(
        blank.fromBottom(h, AT), LineKind.SCORE, List.of(new LineFold(Sense.MOUNTAIN, SQUARE)), AT);
    blank.score(
        blank.fromTop(h, AT), LineKind.SCORE, List.of(new LineFold(Sense.MOUNTAIN, SQUARE)), AT);
    for (double x : new double[] {h, w - h}) {
      boolean left = x == h;
      double endX = left ? h / 2 : w - h / 2;
      double wallX = left ? h + 1 : w - h - 1;
      blank
          .cut(ends(blank.fromLeft(x, 0, h, AT)), AT)
          .cut(ends(blank.fromLeft(x, d - h, d, AT)), AT);
      for (boolean low : new boolean[] {true, false}) {
        Vec2 tab = new Vec2(endX, low ? h / 2 : d - h / 2);
        Vec2 wall = new Vec2(wallX, low ? h / 2 : d - h / 2);
        blank.join(new Vec2(endX, d / 2), wall, tab, AT);
      }
    }
    return blank;
  }

  private static List<Vec2> ends(Segment2 line) {
    return List.of(line.from(), line.to());
  }

  @Test
  void trayFromOneSheet() {
    Net net = tray(150, 110, 25).name(new Vec2(70, 50), "base", AT).build();
    assertThat(net.panels()).hasSize(9);
    assertThat(net.scores()).hasSize(8);
    assertThat(net.slits()).hasSize(4);
    assertThat(net.pieces()).isEqualTo(1);
    assertThat(net.joins()).hasSize(4);
    assertThat(net.panels().stream().filter(p -> p.role() == PanelRole.TAB).count()).isEqualTo(4);
    for (Join join : net.joins()) {
      Join.Seam seam = (Join.Seam) join;
      Segment2 a = net.segment(seam.a());
      Segment2 b = net.segment(seam.b());
      assertThat(a.length()).isCloseTo(25, within(1e-6));
      assertThat(b.length()).isCloseTo(25, within(1e-6));
      // Both start or end at the same corner of the base.
      assertThat(Math.min(a.from().distance(b.to()), a.to().distance(b.from()))).isLessThan(1e-6);
    }
    int base = net.panels().indexOf(NamedPanel.of(net, "base").orElseThrow());
    assertThat(net.stance().ring()).extracting(Stance.Corner::panel).containsOnly(base);
    assertThat(net.panels().get(base).outline().area()).isCloseTo(100 * 60, within(1e-4));
  }

  /** Euler: V − E + F = 1 + C for a plane graph of C parts, the outer face not counted. */
  @Property(tries = 60, seed = "20261125")
  void panelsObeyEulersFormula(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 1, max = 199) Integer> xs,
      @ForAll @Size(max = 5) List<@IntRange(min = 1, max = 149) Integer> slants) {
    Blank blank = Blank.of(200, 150, AT);
    for (int x : xs) {
      blank.score(
          blank.fromLeft(x, AT),
          LineKind.SCORE,
          List.of(new LineFold(Sense.VALLEY, FoldAngle.TO_SOLVE)),
          AT);
    }
    for (int y : slants) {
      Segment2 line = blank.line(new Vec2(0, y), new Vec2(200, 150 - y / 2.0), AT);
      blank.score(
          line, LineKind.SCORE, List.of(new LineFold(Sense.MOUNTAIN, FoldAngle.TO_SOLVE)), AT);
    }
    Net net = blank.build();
    Set<String> corners = new HashSet<>();
    int sides = 0;
    for (Panel panel : net.panels()) {
      sides += panel.outline().size();
      panel.outline().corners().forEach(c -> corners.add(c.x() + "," + c.y()));
    }
    int edges = sides - net.scores().size();
    assertThat(corners.size() - edges + net.panels().size()).isEqualTo(1);
    assertThat(net.panels().stream().mapToDouble(p -> p.outline().area()).sum())
        .isCloseTo(200 * 150, within(1e-3));
    assertThat(Overlaps.find(net)).isEmpty();
  }

  @Test
  void aScoreThatEndsInsideAPanelIsNamed() {
    Blank blank = Blank.of(100, 80, AT);
    blank.score(
        blank.fromLeft(30, 0, 50, AT),
        LineKind.SCORE,
        List.of(new LineFold(Sense.VALLEY, SQUARE)),
        new Site(12, 3));
    assertThatThrownBy(blank::build)
        .isInstanceOf(NetException.class)
        .hasMessageContaining("the score from (30, 0) mm to (30, 50) mm ends inside a panel")
        .extracting(e -> ((NetException) e).site())
        .isEqualTo(new Site(12, 3));
  }

  @Test
  void aCutLoopIsAWindowOrAPieceOfItsOwn() {
    Blank blank = Blank.of(100, 80, AT);
    blank.cut(
        List.of(
            new Vec2(20, 20),
            new Vec2(60, 20),
            new Vec2(60, 50),
            new Vec2(20, 50),
            new Vec2(20, 20)),
        AT);
    assertThat(blank.build().pieces()).isEqualTo(2);
    assertThat(Overlaps.find(blank.build())).isEmpty();
    Net net = blank.waste(new Vec2(30, 30), AT).build();
    assertThat(net.panels()).hasSize(1);
    assertThat(net.panels().getFirst().cardArea()).isCloseTo(8000 - 1200, within(1e-6));
  }

  @Test
  void aFlapInsideAPanelNeedsItsScoreRunAcross() {
    Blank blank = Blank.of(100, 80, AT);
    blank.cut(List.of(new Vec2(30, 30), new Vec2(30, 60), new Vec2(70, 60), new Vec2(70, 30)), AT);
    Blank across = Blank.of(100, 80, AT);
    blank.score(
        blank.fromBottom(30, 30, 70, AT),
        LineKind.SCORE,
        List.of(new LineFold(Sense.VALLEY, SQUARE)),
        new Site(7, 1));
    assertThatThrownBy(blank::build).hasMessageContaining("run it across the panel");
    across.cut(List.of(new Vec2(30, 30), new Vec2(30, 60), new Vec2(70, 60), new Vec2(70, 30)), AT);
    across.score(
        across.fromBottom(30, AT), LineKind.SCORE, List.of(new LineFold(Sense.VALLEY, SQUARE)), AT);
    Net net = across.build();
    assertThat(net.panels()).hasSize(3);
    assertThat(net.scores()).hasSize(3);
    assertThat(net.slits()).hasSize(3);
  }

  @Test
  void wasteNotchesWindowsAndMarks() {
    Blank blank = Blank.of(100, 80, AT);
    blank
        .score(
            blank.fromTop(20, AT),
            LineKind.PERFORATED,
            List.of(new LineFold(Sense.MOUNTAIN, FoldAngle.TO_SOLVE)),
            AT)
        .cut(List.of(new Vec2(40, 0), new Vec2(50, 10), new Vec2(60, 0)), AT)
        .waste(new Vec2(50, 2), AT)
        .name(new Vec2(5, 5), "wall", AT)
        .role(new Vec2(5, 70), PanelRole.TAB, AT)
        .layer(new Vec2(5, 5), 2, "blue", AT)
        .window(List.of(new Vec2(10, 20), new Vec2(20, 20), new Vec2(20, 30)), AT)
        .hole(new Vec2(70, 30), 5, AT)
        .lap(new Vec2(5, 70), new Vec2(5, 5), AT)
        .standOn(new Vec2(5, 5), AT);
    Net net = blank.build();
    Panel wall = NamedPanel.of(net, "wall").orElseThrow();
    assertThat(wall.outline().area()).isCloseTo(6000 - 100, within(1e-4));
    assertThat(wall.openings()).hasSize(2);
    assertThat(net.scores().getFirst().perforated()).isTrue();
    assertThat(net.layers()).hasSize(1);
    assertThat(net.joins()).hasSize(1);
    blank.name(new Vec2(50, 2), "gone", AT);
    assertThatThrownBy(blank::build).hasMessageContaining("cut away as waste");
  }

  @Test
  void thirdsMeetOnTheGrid() {
    // A third of the width is no whole number of grid steps; the sides must still pair.
    Blank blank = Blank.of(100, 100, AT);
    blank.score(
        blank.fromLeft(100 / 3.0, AT),
        LineKind.SCORE,
        List.of(new LineFold(Sense.VALLEY, SQUARE)),
        AT);
    Segment2 slant = blank.line(new Vec2(100 / 3.0, 100 / 7.0), new Vec2(100, 200 / 3.0), AT);
    blank.score(slant, LineKind.SCORE, List.of(new LineFold(Sense.VALLEY, SQUARE)), AT);
    Net net = blank.build();
    assertThat(net.panels()).hasSize(3);
    assertThat(net.scores()).hasSize(3);
  }

  @Test
  void nonsenseIsRefusedAtTheCall() {
    Blank blank = Blank.of(100, 80, AT);
    assertThatThrownBy(() -> Blank.of(0, 80, AT)).hasMessageContaining("over 0");
    assertThatThrownBy(() -> blank.fromLeft(101, AT)).hasMessageContaining("off the blank");
    assertThatThrownBy(() -> blank.fromTop(20, 30, 30, AT)).hasMessageContaining("no length");
    assertThatThrownBy(() -> blank.hole(new Vec2(5, 5), -1, AT)).hasMessageContaining("diameter");
    assertThatThrownBy(() -> blank.cut(List.of(Vec2.ZERO), AT)).hasMessageContaining("2 to 2000");
    blank.score(
        blank.fromBottom(40, AT), LineKind.SCORE, List.of(new LineFold(Sense.VALLEY, SQUARE)), AT);
    blank.name(new Vec2(50, 40), "line", AT);
    assertThatThrownBy(blank::build).hasMessageContaining("lies on a line");
    Blank waste = Blank.of(10, 10, AT).waste(new Vec2(5, 5), AT);
    assertThatThrownBy(waste::build).hasMessageContaining("nothing is left");
  }

  @Test
  void theSameLinesGiveTheSameNet() {
    assertThat(tray(150, 110, 25).build()).isEqualTo(tray(150, 110, 25).build());
    Polygon2 first = tray(150, 110, 25).build().panels().getFirst().outline();
    assertThat(first.corner(0)).isEqualTo(Vec2.ZERO);
  }

  /** What a cut from edge to edge leaves are two pieces, laid apart like any two. */
  @Test
  void aCutRightAcrossMakesTwoPieces() {
    for (boolean scored : new boolean[] {false, true}) {
      Blank blank = Blank.of(100, 60, AT);
      if (scored) {
        blank.score(
            blank.fromLeft(40, AT),
            LineKind.SCORE,
            List.of(new LineFold(Sense.VALLEY, SQUARE)),
            AT);
      }
      Net net = blank.cut(ends(blank.fromLeft(40, AT)), AT).build();
      assertThat(net.pieces()).isEqualTo(2);
      assertThat(net.slits()).hasSize(1);
      Laid laid =
          SheetLayout.lay(
              net, SheetSizes.named("A4").stock(220), new Room(0, SheetLayout.USUAL_GAP));
      assertThat(laid.fits()).isTrue();
      assertThat(laid.net().slits()).isEmpty();
      assertThat(laid.net().boundary()).hasSize(8);
      assertThat(laid.net().panels().stream().mapToDouble(p -> p.outline().area()).sum())
          .isCloseTo(6000, within(1e-6));
      assertThat(Overlaps.find(laid.net())).isEmpty();
    }
  }

  @Test
  void aLineOnAnEdgeOfTheBlankIsRefused() {
    Blank blank = Blank.of(100, 60, AT);
    for (Segment2 line :
        List.of(
            blank.fromLeft(0, AT),
            blank.fromRight(0, AT),
            blank.fromBottom(60, AT),
            blank.fromTop(60, 10, 30, AT))) {
      assertThatThrownBy(
              () ->
                  blank.score(
                      line, LineKind.SCORE, List.of(new LineFold(Sense.VALLEY, SQUARE)), AT))
          .hasMessageContaining("lies on the edge of the blank, where there is nothing to fold");
      assertThatThrownBy(
              () ->
                  blank.score(
                      line, LineKind.PERFORATED, List.of(new LineFold(Sense.VALLEY, SQUARE)), AT))
          .hasMessageContaining("measure it over 0 and under");
      assertThatThrownBy(() -> blank.cut(ends(line), AT)).hasMessageContaining("nothing to cut");
    }
    // A notch may come back along the edge.
    blank.cut(List.of(new Vec2(10, 0), new Vec2(15, 5), new Vec2(20, 0), new Vec2(10, 0)), AT);
    assertThat(blank.build().panels()).hasSize(2);
  }
}
