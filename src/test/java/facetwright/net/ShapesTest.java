package facetwright.net;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.panel.CardEdge;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.FlapShape;
import facetwright.net.panel.Hinge;
import facetwright.net.panel.PanelBuild;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** No panel and no opening has a side of no length, whatever way it came about. */
class ShapesTest {
  private static final Site AT = new Site(5, 3);
  private static final Hinge SQUARE = Hinge.whole(Sense.MOUNTAIN, FoldAngle.degrees(90));

  private static void hasSidesAndWidth(Polygon2 outline) {
    for (int i = 0; i < outline.size(); i++) {
      assertThat(outline.side(i).length()).isGreaterThan(LengthTolerance.FINE.mm());
    }
    assertThat(outline.meanWidth()).isGreaterThan(LengthTolerance.FINE.mm());
  }

  /** A tab's ends meet where its depth times the tangent of its bevel is half its edge. */
  @Property(tries = 300, seed = "1")
  void tabsWhoseEndsMeetArePointed(
      @ForAll @DoubleRange(min = 0.5, max = 200) double edge,
      @ForAll @DoubleRange(min = 5, max = 80) double bevel) {
    double depth = edge / 2 / Math.tan(Math.toRadians(bevel));
    for (double off : new double[] {0, 1e-12, -1e-12, 1e-9, -1e-9, 5e-7, -5e-7}) {
      List<Vec2> corners =
          new FlapShape.Tapered(depth + off / 2 / Math.tan(Math.toRadians(bevel)), bevel)
              .corners(edge, AT);
      assertThat(corners).hasSizeBetween(3, 4);
      hasSidesAndWidth(new Polygon2(corners));
    }
    double less = depth * 0.99;
    assertThat(new FlapShape.Tapered(less, bevel).corners(edge, AT)).hasSize(4);
    assertThatThrownBy(() -> new FlapShape.Tapered(depth * 1.01, bevel).corners(edge, AT))
        .hasMessageContaining("or take a bevel of at most");
  }

  /** The usual tab, 10 mm deep and cut back by 45°, on edges about twice its depth. */
  @Test
  void aTrayWithUsualTabsHasPanelsWithSides() {
    for (int half = 4; half <= 40; half++) {
      PanelBuild build = new PanelBuild();
      CardPanel floor = build.rectangle("floor", 80, 60, AT);
      List<CardPanel> walls = new ArrayList<>();
      for (String side : List.of("bottom", "right", "top", "left")) {
        walls.add(floor.attach(side, side, new FlapShape.Tapered(half, 0), SQUARE, AT));
      }
      for (int i = 0; i < 4; i++) {
        CardEdge other = walls.get((i + 1) % 4).edge("right", AT);
        build.join(walls.get(i), "left", other, new FlapShape.Tapered(half / 2.0, 45), AT);
      }
      Net net = build.build();
      assertThat(net.panels()).hasSize(9).allSatisfy(p -> hasSidesAndWidth(p.outline()));
    }
  }

  @Test
  void tabsOfAWrapMayBePointed() {
    WrapDraft wrap =
        WrapDraft.of(
            Collections.nCopies(4, 20.0),
            List.of(new WrapRow("rim", 10), new WrapRow("wall", 40), new WrapRow("rim", 10)),
            AT);
    wrap.all().rows(List.of(1, 3), AT).tabs(45, AT);
    Net net = wrap.build();
    assertThat(
            net.panels().stream().filter(p -> p.role() == PanelRole.TAB && p.outline().size() == 3))
        .hasSize(8);
    assertThat(net.panels()).allSatisfy(p -> hasSidesAndWidth(p.outline()));
    assertThatThrownBy(() -> wrap.all().rows(List.of(1, 3), AT).tabs(46, AT))
        .hasMessageContaining("allows at most 45°");
  }

  @Property(tries = 200, seed = "2")
  void aCornerGivenTwiceOverCountsOnce(
      @ForAll @IntRange(min = 3, max = 9) int sides,
      @ForAll @IntRange(max = 20) int which,
      @ForAll @DoubleRange(max = 0.9) double micron,
      @ForAll boolean clockwise) {
    List<Vec2> once = Polygon2.regular(new Vec2(3, 4), sides, 30, 0.1).corners();
    List<Vec2> corners = new ArrayList<>(clockwise ? once.reversed() : once);
    Vec2 again = corners.get(which % sides);
    corners.add(which % sides + 1, again.plus(new Vec2(micron * 1e-6, 0)));
    Polygon2 outline = Shapes.outline("a panel", corners, AT);
    assertThat(outline.size()).isEqualTo(sides);
    assertThat(outline.corner(0)).isEqualTo(corners.getFirst());
    hasSidesAndWidth(outline);
    assertThat(new PanelBuild().polygon("a", corners, AT).edge(String.valueOf(sides), AT))
        .isNotNull();
  }

  /** However near a border comes to the one that takes all. */
  @Property(tries = 500, seed = "3")
  void whatABorderLeavesHasSidesAndWidth(
      @ForAll @DoubleRange(min = 0.5, max = 300) double width,
      @ForAll @DoubleRange(min = 0.5, max = 300) double height,
      @ForAll @DoubleRange(max = 1) double lean,
      @ForAll @IntRange(max = 12) int digits) {
    Polygon2 outline =
        Shapes.outline(
            "a panel",
            List.of(
                Vec2.ZERO,
                new Vec2(width, 0),
                new Vec2(width * (0.6 + 0.4 * lean), height),
                new Vec2(0.4 * lean * width, height * 1.1)),
            AT);
    double reach = Math.min(width, height) / 2;
    double border = reach * (1 - Math.pow(10, -digits));
    Planar.inset(outline, border).forEach(ShapesTest::hasSidesAndWidth);
  }

  @Test
  void messagesSayWhatIsWrongAndWhere() {
    refused("lie on one line: move one of them off it", 0, 0, 40, 30, 80, 60);
    refused("in no more than two places", 0, 0, 40, 30, 40, 30);
    // A bow tie whose halves are equally large has no area on balance, yet is no line.
    refused(
        "crosses or touches itself at (20, 15) mm: give its corners in order once round",
        0,
        0,
        40,
        30,
        40,
        0,
        0,
        30);
    refused("crosses or touches itself at (16, 12)", 0, 0, 40, 30, 40, 0, 0, 20);
  }

  private static void refused(String message, double... xy) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Vec2(xy[i], xy[i + 1]));
    }
    assertThatThrownBy(() -> Shapes.outline("\"a\"", corners, AT))
        .isInstanceOf(NetException.class)
        .hasMessageContaining(message);
  }
}
