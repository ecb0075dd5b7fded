package facetwright.net.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.NamedPanel;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Overlaps;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.Stance;
import facetwright.words.Site;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PanelBuildTest {
  static final Site AT = new Site(5, 3);
  private static final Hinge SQUARE = Hinge.whole(Sense.MOUNTAIN, FoldAngle.degrees(90));

  /** An open box: base, four walls, a tab at each end of the two end walls. */
  private static PanelBuild box(PanelBuild build, String name, double w, double d, double h) {
    CardPanel base = build.rectangle(name, w, d, AT);
    CardPanel front =
        base.attach(name + " front", "bottom", new FlapShape.Tapered(h, 0), SQUARE, AT);
    CardPanel back = base.attach(name + " back", "top", new FlapShape.Tapered(h, 0), SQUARE, AT);
    for (String side : List.of("left", "right")) {
      CardPanel end = base.attach(name + " " + side, side, new FlapShape.Tapered(h, 0), SQUARE, AT);
      boolean left = side.equals("left");
      build.join(
          end, "left", (left ? front : back).edge("right", AT), new FlapShape.Tapered(8, 20), AT);
      build.join(
          end, "right", (left ? back : front).edge("left", AT), new FlapShape.Tapered(8, 20), AT);
    }
    return build;
  }

  @Test
  void aBoxAndItsLid() {
    PanelBuild build = box(new PanelBuild(), "box", 80, 50, 30);
    Net net = box(build, "lid", 82, 52, 15).build();
    assertThat(net.pieces()).isEqualTo(2);
    assertThat(net.panels()).hasSize(2 * 9);
    assertThat(net.scores()).hasSize(2 * 8);
    // Free: 4 tabs × 3, 2 end walls × 1, 2 long walls × 3.
    assertThat(net.boundary()).hasSize(2 * (12 + 2 + 6));
    assertThat(net.joins()).hasSize(8);
    assertThat(Overlaps.find(net)).isEmpty();
    for (Join join : net.joins()) {
      Join.Seam seam = (Join.Seam) join;
      assertThat(net.panels().get(seam.tab()).role()).isEqualTo(PanelRole.TAB);
      assertThat(net.segment(seam.a()).length())
          .isCloseTo(net.segment(seam.b()).length(), within(1e-9));
      // The edges of one corner meet at the base: the start of the one is the end of the other.
      Segment2 a = net.segment(seam.a());
      Segment2 b = net.segment(seam.b());
      assertThat(Math.min(a.from().distance(b.to()), a.to().distance(b.from()))).isLessThan(1e-9);
    }
    // Cross of base and walls: 80 + 2 × 30 by 50 + 2 × 30, the tabs within.
    Box2 first = NamedPanel.of(net, "box left").orElseThrow().outline().box();
    assertThat(first.minX()).isZero();
    assertThat(NamedPanel.of(net, "lid left").orElseThrow().outline().box().minX())
        .isCloseTo(140 + 10, within(1e-6));
  }

  @Test
  void itStandsOnItsFirstPanel() {
    Net net = box(new PanelBuild(), "box", 80, 50, 30).build();
    assertThat(net.stance().ring()).extracting(Stance.Corner::panel).containsOnly(0).hasSize(4);
    assertThat(net.stance().ring()).extracting(Stance.Corner::corner).containsExactly(1, 0, 3, 2);
  }

  @Test
  void attachedPanelsAreMeasuredFromTheLeftSeenFromOutside() {
    PanelBuild build = new PanelBuild();
    CardPanel base = build.rectangle("base", 100, 60, AT);
    Hinge first = Hinge.at(10, 20, Sense.VALLEY, FoldAngle.degrees(180));
    base.attach("upper", "top", new FlapShape.Tapered(5, 0), first, AT);
    base.attach("lower", "bottom", new FlapShape.Tapered(5, 0), first, AT);
    Hinge second = Hinge.at(60, 30, Sense.VALLEY, FoldAngle.TO_SOLVE);
    base.tab("again", "top", new FlapShape.Tapered(8, 30), second, AT);
    Net net = build.build();
    // Upright above the top edge from its left; below the bottom edge the sheet is turned round.
    Box2 upper = NamedPanel.of(net, "upper").orElseThrow().outline().box();
    Box2 lower = NamedPanel.of(net, "lower").orElseThrow().outline().box();
    double y = -lower.minY();
    assertThat(upper.minX()).isCloseTo(10, within(1e-9));
    assertThat(upper.maxX()).isCloseTo(30, within(1e-9));
    assertThat(lower.minX()).isCloseTo(70, within(1e-9));
    assertThat(lower.maxX()).isCloseTo(90, within(1e-9));
    assertThat(y).isZero();
    assertThat(NamedPanel.of(net, "base").orElseThrow().outline().size()).isEqualTo(4 + 2 + 4);
    assertThat(net.scores()).hasSize(3);
  }

  @Test
  void overlappingHingesAreRefused() {
    CardPanel base = new PanelBuild().rectangle("base", 100, 60, AT);
    Hinge part = Hinge.at(10, 40, Sense.VALLEY, FoldAngle.TO_SOLVE);
    base.attach("one", "top", new FlapShape.Tapered(5, 0), part, AT);
    Hinge across = Hinge.at(40, 30, Sense.VALLEY, FoldAngle.TO_SOLVE);
    assertThatThrownBy(
            () -> base.attach("two", "top", new FlapShape.Tapered(5, 0), across, new Site(8, 2)))
        .isInstanceOf(NetException.class)
        .hasMessageContaining("edge \"top\" of \"base\" is not free from 40 mm to 70 mm")
        .extracting(e -> ((NetException) e).site())
        .isEqualTo(new Site(8, 2));
    // All of the edge means the longest part still free.
    CardPanel rest = base.attach("rest", "top", new FlapShape.Tapered(5, 0), SQUARE, AT);
    assertThat(rest.edge("bottom", AT).length()).isCloseTo(50, within(1e-9));
  }

  /** Area of a regular polygon of n sides s: n·s²/(4·tan(π/n)) (handbook). */
  @ParameterizedTest
  @ValueSource(ints = {3, 5, 6, 12})
  void regularPanelsStandOnTheirHinge(int sides) {
    PanelBuild build = new PanelBuild();
    CardPanel base = build.regular("base", sides, 25, AT);
    for (int edge = 1; edge <= sides; edge++) {
      base.attach("side " + edge, String.valueOf(edge), new FlapShape.Regular(3), SQUARE, AT);
    }
    Net net = build.build();
    double area = sides * 25 * 25 / (4 * Math.tan(Math.PI / sides));
    assertThat(net.panels().getFirst().outline().area()).isCloseTo(area, within(1e-8));
    assertThat(net.panels().getLast().outline().area())
        .isCloseTo(Math.sqrt(3) / 4 * 625, within(1e-8));
    assertThat(Overlaps.find(net)).isEmpty();
  }

  @Test
  void ownShapesAndTriangles() {
    PanelBuild build = new PanelBuild();
    CardPanel base =
        build.polygon("base", List.of(Vec2.ZERO, new Vec2(0, 40), new Vec2(60, 0)), AT);
    Hinge any = Hinge.whole(Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    FlapShape own =
        new FlapShape.Own(
            List.of(new Vec2(10, 0), new Vec2(30, 0), new Vec2(35, 12), new Vec2(5, 12)));
    base.attach("wide", "bottom", own, any.asPerforation(), AT);
    base.attach("tip", "left", new FlapShape.Triangle(15, 0.5), any, AT);
    Net net = build.build();
    assertThat(NamedPanel.of(net, "wide").orElseThrow().outline().area())
        .isCloseTo(300, within(1e-9));
    assertThat(NamedPanel.of(net, "tip").orElseThrow().outline().area())
        .isCloseTo(300, within(1e-9));
    assertThat(net.scores().getFirst().perforated()).isTrue();
    assertThatThrownBy(
            () ->
                base.attach(
                    "wrong",
                    "right",
                    new FlapShape.Own(List.of(new Vec2(0, 1), new Vec2(9, 0), new Vec2(5, 5))),
                    any,
                    AT))
        .hasMessageContaining("end of its hinge");
  }

  /** Areas taken: triangle w·d/2, rectangle w·d, half ellipse π·w·d/4 (handbook). */
  @ParameterizedTest
  @CsvSource({"V,40", "SQUARE,80", "ROUND,62.83"})
  void notchesTakeTheirArea(NotchShape shape, double area) {
    PanelBuild build = new PanelBuild();
    build.rectangle("card", 50, 30, AT).notch("top", new Notch(20, 10, 8, shape), AT);
    assertThat(build.build().panels().getFirst().outline().area())
        .isCloseTo(1500 - area, within(0.5));
  }

  @Test
  void bevelsCutCorners() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 50, 30, AT);
    card.chamfer(1, 5, AT).chamfer(3, 4, AT);
    assertThat(build.build().panels().getFirst().outline().area())
        .isCloseTo(1500 - 12.5 - 8, within(1e-9));
    assertThatThrownBy(() -> card.chamfer(5, 5, AT)).hasMessageContaining("1 to 4, not 5");
    assertThatThrownBy(() -> card.chamfer(1, 5, AT)).hasMessageContaining("not free on both sides");
    assertThatThrownBy(() -> card.chamfer(2, 60, AT)).hasMessageContaining("a chamfer there");
  }

  @Test
  void cutsInsideAPanel() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 100, 60, AT);
    CardPanel flap = card.attach("flap", "right", new FlapShape.Tapered(40, 0), SQUARE, AT);
    flap.window(10, AT).layer(2, "blue", AT);
    card.window(new Polygon2(List.of(new Vec2(30, -25), new Vec2(40, -25), new Vec2(35, -15))), AT)
        .hole(3, new Vec2(-40, 20), AT)
        .tick(new Vec2(0, 20), new Vec2(3, 20), AT);
    Net net = build.build();
    assertThat(net.panels().get(0).openings()).hasSize(2);
    // Measured from the card's middle at (50, 30).
    assertThat(net.panels().get(0).openings().getFirst().outline().corner(0))
        .isEqualTo(new Vec2(80, 5));
    assertThat(net.panels().get(1).openings().getFirst().outline().area())
        .isCloseTo(20 * 40, within(1e-9));
    assertThat(net.layers()).hasSize(1);
    assertThat(net.ticks()).hasSize(1);
  }

  @Test
  void faultsAreNamed() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 100, 60, AT);
    assertThatThrownBy(() -> card.edge("upper", AT))
        .hasMessageContaining("no edge \"upper\"")
        .hasMessageContaining("\"top\"");
    assertThatThrownBy(() -> card.window(30, AT)).hasMessageContaining("leaves no window");
    CardPanel deep = new PanelBuild().rectangle("card", 100, 60, AT);
    assertThatThrownBy(() -> deep.notch("top", new Notch(50, 20, 70, NotchShape.V), AT))
        .hasMessageContaining("reaches across");
    assertThatThrownBy(() -> new PanelBuild().rectangle("card", 0, 60, AT))
        .hasMessageContaining("over 0");
    CardPanel other = build.rectangle("other", 50, 50, AT);
    assertThatThrownBy(() -> build.slit(card.edge("left", AT), other.edge("left", AT), AT))
        .hasMessageContaining("do not lie along");
    assertThatThrownBy(() -> build.lap(card, card, AT)).hasMessageContaining("itself");
    assertThatThrownBy(() -> new FlapShape.Tapered(10, 60).corners(20, AT))
        .hasMessageContaining("at most 45°");
    other.hole(3, new Vec2(25, 25), new Site(30, 4));
    assertThatThrownBy(build::build).hasMessageContaining("reaches 1.5 mm over the edge");
  }

  @Test
  void removalLapsAndSlits() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 100, 60, AT);
    CardPanel one =
        card.attach(
            "one",
            "top",
            new FlapShape.Tapered(20, 0),
            Hinge.at(0, 50, Sense.VALLEY, FoldAngle.degrees(180)),
            AT);
    CardPanel two =
        card.attach(
            "two",
            "top",
            new FlapShape.Tapered(20, 0),
            Hinge.at(50, 50, Sense.VALLEY, FoldAngle.degrees(180)),
            AT);
    build.slit(one.edge("right", AT), two.edge("left", AT), AT).lap(one, card, AT);
    two.become(PanelRole.GUSSET);
    Net net = build.build();
    assertThat(net.panels()).hasSize(3);
    assertThat(net.slits()).hasSize(1);
    assertThat(net.joins()).hasSize(1);
    assertThat(net.panels().get(2).role()).isEqualTo(PanelRole.GUSSET);
  }
}
