package facetwright.net.backing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.Form;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Backing;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Panel;
import facetwright.net.outline.Outline;
import facetwright.net.panel.PanelBuild;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** What goes behind windows covers them, and keeps clear of what is scored, cut and glued. */
@SuppressWarnings("EnumOrdinal") // Any of them by chance.
class BackingsTest {
  private static final Site AT = new Site(3, 1);
  private static final double ROUNDING = 1e-6;

  private static Backing backing(Random random) {
    Backing.Cut cut = Backing.Cut.values()[random.nextInt(3)];
    if (random.nextBoolean()) {
      return Backing.usual("vellum", cut, AT);
    }
    double overlap = 1 + 6 * random.nextDouble();
    return new Backing("vellum", overlap, overlap, cut, AT);
  }

  private static Net form(Random random) {
    int sides = 3 + random.nextInt(5);
    double side = 20 + random.nextInt(40);
    Form form =
        switch (random.nextInt(4)) {
          case 0 -> Solids.box(side, 20 + random.nextInt(40), 20 + random.nextInt(40));
          case 1 -> Solids.prismBySide(sides, side, 20 + random.nextInt(60));
          case 2 -> Solids.pyramidBySide(sides, side, 30 + random.nextInt(60));
          default -> Solids.antiprismBySide(sides, side, 20 + random.nextInt(40));
        };
    Backing backing = backing(random);
    for (String facet : form.facets().stream().map(f -> f.name()).toList()) {
      if (random.nextBoolean()) {
        double radius = 2 + random.nextInt(6);
        Vec2 apart = new Vec2(radius + 0.5 + random.nextInt(4), 0);
        try {
          form =
              switch (random.nextInt(3)) {
                case 0 -> form.withWindowInset(facet, 3 + random.nextInt(9), AT);
                case 1 -> form.withWindow(facet, Polygon2.regular(Vec2.ZERO, 24, radius, 0), AT);
                default ->
                    form.withWindow(facet, Polygon2.regular(apart, 6, radius, 0), AT)
                        .withWindow(facet, Polygon2.regular(apart.times(-1), 6, radius, 0), AT);
              };
        } catch (RuntimeException tooSmall) {
          continue;
        }
        form = form.withBacking(facet, backing);
      }
    }
    return new Nets(
            form, Unfolding.as(UnfoldStyle.values()[random.nextInt(UnfoldStyle.values().length)]))
        .on(0, 0)
        .net();
  }

  private static Net wrap(Random random) {
    double width = 20 + random.nextInt(30);
    List<WrapRow> rows =
        List.of(new WrapRow("rim", 12), new WrapRow("wall", 30 + random.nextInt(40)));
    WrapDraft wrap = WrapDraft.of(Collections.nCopies(3 + random.nextInt(5), width), rows, AT);
    wrap.seam(random.nextInt(15), AT);
    wrap.all().rows("rim", AT).tabs(AT);
    wrap.all().rows("wall", AT).window(3 + random.nextInt(6), AT).backing(backing(random));
    return wrap.build();
  }

  private static Net panels(Random random) {
    PanelBuild build = new PanelBuild();
    var front = build.rectangle("front", 60 + random.nextInt(60), 60 + random.nextInt(60), AT);
    front.backing(backing(random));
    for (int x : new int[] {-1, 1}) {
      for (int y : new int[] {-1, 1}) {
        Vec2 at = new Vec2(x * (8 + random.nextInt(12)), y * (8 + random.nextInt(12)));
        front.window(Polygon2.regular(at, 3 + random.nextInt(9), 3 + random.nextInt(4), 0), AT);
      }
    }
    return build.build();
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void eachCoversItsWindowsAndKeepsClear(@ForAll long seed) {
    Random random = new Random(seed);
    Net net;
    try {
      net =
          switch (random.nextInt(3)) {
            case 0 -> panels(random);
            case 1 -> wrap(random);
            default -> form(random);
          };
    } catch (NetException refused) {
      assertThat(refused.getMessage())
          .containsPattern("overlap.*clear|a window in panel .* touches the edge");
      assertThat(refused.site()).isEqualTo(AT);
      return;
    }
    List<Backings.Piece> pieces = Backings.of(net);
    for (int p = 0; p < net.panels().size(); p++) {
      int at = p;
      Panel panel = net.panels().get(p);
      List<Backings.Piece> here = pieces.stream().filter(b -> b.panel() == at).toList();
      List<Polygon> glued = glued(net, p);
      for (Backings.Piece piece : here) {
        Polygon paper = Planar.polygon(piece.outline());
        assertThat(Planar.polygon(panel.outline()).contains(paper)).isTrue();
        assertThat(Planar.polygon(panel.outline()).getExteriorRing().distance(paper))
            .isGreaterThanOrEqualTo(Backing.CLEAR - 2 * ROUNDING);
        glued.forEach(
            tab ->
                assertThat(tab.distance(paper))
                    .isGreaterThanOrEqualTo(Backing.CLEAR - 2 * ROUNDING));
      }
      for (Polygon2 window : panel.panes()) {
        Polygon cut = Planar.polygon(window);
        List<Backings.Piece> over =
            here.stream().filter(b -> Planar.polygon(b.outline()).contains(cut)).toList();
        assertThat(over).as("pieces behind a window").hasSize(1);
        assertThat(Planar.polygon(over.getFirst().outline()).getExteriorRing().distance(cut))
            .isGreaterThanOrEqualTo(over.getFirst().overlap() - ROUNDING);
      }
    }
  }

  /** What lies under a panel along its sides, in the plane of the net. */
  private static List<Polygon> glued(Net net, int panel) {
    return net.joins().stream()
        .filter(j -> j instanceof Join.Seam s && s.tab() >= 0 && s.b().panel() == panel)
        .map(Join.Seam.class::cast)
        .map(
            s -> {
              Segment2 from = net.segment(s.a());
              Segment2 onto = net.segment(s.b());
              return Planar.polygon(
                  Motion2.carrying(from.from(), from.to(), onto.to(), onto.from())
                      .apply(net.panels().get(s.tab()).outline()));
            })
        .toList();
  }

  /** A pane of 40 by 20 with a border of 10 has room for a rectangle 8 mm larger, 2 mm clear. */
  @Test
  void aRectangleIsAsLargeAsWindowAndOverlap() {
    PanelBuild build = new PanelBuild();
    build
        .rectangle("front", 60, 40, AT)
        .window(10, AT)
        .backing(new Backing("vellum", 8, 8, Backing.Cut.EITHER, AT));
    List<Backings.Piece> pieces = Backings.of(build.build());
    assertThat(pieces).hasSize(1);
    assertThat(pieces.getFirst().outline().area()).isCloseTo(56 * 36, within(1e-9));
    assertThat(pieces.getFirst().glued()).isCloseTo(56 * 36 - 40 * 20, within(1e-9));
  }

  /** Where there is no room the most there is room for is told, and does. */
  @Test
  void whatIsToldToFitFits() {
    NetException refused =
        catchThrowableOfType(NetException.class, () -> withBorder(6, 5.5).build());
    assertThat(refused).hasMessageContaining("there is room for 5 mm");
    assertThat(Backings.of(withBorder(6, 5).build())).hasSize(1);
    NetException none = catchThrowableOfType(NetException.class, () -> withBorder(1, 3).build());
    assertThat(none).hasMessageContaining("no room at all");
  }

  private static PanelBuild withBorder(double border, double overlap) {
    PanelBuild build = new PanelBuild();
    build
        .rectangle("front", 60, 40, AT)
        .window(border, AT)
        .backing(new Backing("film", overlap, overlap, Backing.Cut.EITHER, AT));
    return build;
  }

  /** A circle set off by the overlap is a circle: 30 and twice 4 make 38, and arcs stay arcs. */
  @Test
  void roundWindowsHaveRoundBackings() {
    Backing asked = new Backing("vellum", 4, 4, Backing.Cut.OUTLINE, AT);
    Form form =
        Solids.box(60, 60, 60)
            .withWindow("side 1", Outline.circle(30, AT).polygon(), AT)
            .withBacking("side 1", asked);
    Net net = new Nets(form, Unfolding.as(UnfoldStyle.STRIP)).on(0, 0).net();
    Backings.Piece piece = Backings.of(net).getFirst();
    assertThat(piece.outline().arcs()).isNotEmpty();
    assertThat(piece.outline().box().width()).isCloseTo(38, within(ROUNDING));
    assertThat(piece.outline().box().height()).isCloseTo(38, within(ROUNDING));
  }
}
