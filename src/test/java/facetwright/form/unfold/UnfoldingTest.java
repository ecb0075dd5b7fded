package facetwright.form.unfold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormException;
import facetwright.form.NetChecks;
import facetwright.form.Reference;
import facetwright.form.change.Reshape;
import facetwright.form.make.Solids;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.NamedPanel;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nets a maker would know: boxes, lanterns, hollow forms, open forms. */
class UnfoldingTest {

  @Test
  void stripOfAPrismIsARowWithTwoCaps() {
    UnfoldResult result =
        new Nets(Solids.prism(8, 40, 90), Unfolding.as(UnfoldStyle.STRIP)).on(0, 0);
    Net net = result.net();
    double side = 2 * 40 * Math.sin(Math.PI / 8);
    // Eight columns and, at one end or the other, a seam tab; caps above and below.
    Polygon2 first = NamedPanel.of(net, "side 1").orElseThrow().outline();
    assertThat(first.area()).isCloseTo(side * 90, within(1e-6));
    assertThat(Math.max(net.box().width(), net.box().height()))
        .isBetween(8 * side, 8 * side + 10 + 1e-6);
    assertThat(result.notes()).isEmpty();
    // Seven scores between columns and one to the seam tab: exterior angle of an octagon.
    assertThat(net.scores().stream().filter(s -> s.angle().equals(FoldAngle.degrees(45))))
        .hasSize(8);
    NetChecks.overlapFree(net);
  }

  @Test
  void petalsOfAPyramidSurroundTheBase() {
    Form pyramid = Solids.pyramid(6, 30, 50);
    Net net = new Nets(pyramid, Unfolding.as(UnfoldStyle.PETALS)).on(0, 0).net();
    int base = pyramid.facet("base");
    assertThat(
            net.scores().stream()
                .filter(s -> s.a().panel() == base || s.b().panel() == base)
                .filter(s -> net.panels().get(s.across(base)).role() == PanelRole.FACET))
        .hasSize(6);
    assertThat(net.stance().ring().getFirst().panel()).isEqualTo(base);
  }

  @Test
  void goresOfATurnedFormAreColumns() {
    Form globe =
        Solids.turned(
            List.of(new Vec2(15, 0), new Vec2(40, 30), new Vec2(40, 60), new Vec2(15, 90)), 10);
    UnfoldResult result = new Nets(globe, Unfolding.as(UnfoldStyle.GORES)).on(0, 0);
    assertThat(result.notes()).noneMatch(n -> n.toString().contains("instead"));
    Net net = result.net();
    int middle = globe.facet("row 2 side 4");
    assertThat(
            net.scores().stream()
                .filter(s -> s.a().panel() == middle || s.b().panel() == middle)
                .map(s -> net.panels().get(s.across(middle)).name()))
        .contains("row 1 side 4", "row 3 side 4");
    NetChecks.overlapFree(net);
  }

  @Test
  void openTopHasNoSeamAtItsRim() {
    Form tray = Solids.box(80, 60, 30).withoutFacet("top");
    Net net = new Nets(tray, Unfolding.as(UnfoldStyle.PETALS)).on(0, 0).net();
    assertThat(net.joins()).hasSize(4);
    assertThat(net.scores()).hasSize(4 + 4);
    assertThat(tray.isClosed()).isFalse();
    assertThatThrownBy(tray::volume).hasMessageContaining("open form");
    NetChecks.overlapFree(net);
  }

  @Test
  void hollowEdgesAreValleys() {
    Form sunk =
        Solids.box(60, 60, 60)
            .changed(Reshape.raised("top", -15))
            .changed(Reshape.raised("side 1", 25));
    UnfoldResult result = new Nets(sunk, Unfolding.as(UnfoldStyle.SEARCH)).on(0, 0);
    NetChecks.overlapFree(result.net());
    NetChecks.congruent(result.net(), sunk);
    NetChecks.edgesAccounted(result.net(), sunk);
    NetChecks.tabsHidden(result.net());
    assertThat(result.net().scores()).anyMatch(s -> s.sense() == Sense.VALLEY);
  }

  /** A spiky star: twenty tall pyramids on an icosahedron. */
  @Test
  void starUnfolds() {
    Form star = Reference.form("p-icosahedron", 30);
    for (int i = 0; i < 20; i++) {
      star = star.changed(Reshape.raised(star.facets().getFirst().name(), 60));
    }
    assertThat(star.facets()).hasSize(60);
    UnfoldResult result =
        new Nets(star, Unfolding.as(UnfoldStyle.SEARCH).with(Tabs.deep(4))).on(0, 0);
    NetChecks.overlapFree(result.net());
    NetChecks.congruent(result.net(), star);
    NetChecks.edgesAccounted(result.net(), star);
    assertThat(result.splits()).isEqualTo(result.net().pieces() > 1);
  }

  /**
   * A corner with an angle sum over 360° that keeps its facets in one piece must be cut twice; a
   * form with few other edges then splits. Here one try is not enough for the star, so it splits
   * and says so.
   */
  @Test
  void splitsAreTold() {
    Form comb = Solids.box(60, 60, 60);
    for (String f : List.of("top", "base", "side 1", "side 2", "side 3", "side 4")) {
      comb = comb.changed(Reshape.raised(f, -29));
    }
    UnfoldResult result =
        new Nets(comb, new Unfolding(UnfoldStyle.SEARCH, "", Tabs.USUAL, 1, 7)).on(0, 0);
    assertThat(result.tries()).isEqualTo(1);
    NetChecks.congruent(result.net(), comb);
    NetChecks.edgesAccounted(result.net(), comb);
    NetChecks.overlapFree(result.net());
    assertThat(result.notes().stream().anyMatch(n -> n.toString().contains("pieces")))
        .isEqualTo(result.splits());
    assertThat(result.splits()).isEqualTo(result.net().pieces() > 1);
  }

  @Test
  void windowsHolesAndLayersComeAlong() {
    Form lantern =
        Solids.prism(6, 40, 100)
            .withWindowInset("side 1", 12, Site.NONE)
            .withHole("top", Vec2.ZERO, 8, new Site(4, 2))
            .withLayer("side 2", 1.5, "gold", Site.NONE);
    Net net = new Nets(lantern, Unfolding.as(UnfoldStyle.STRIP).with(Tabs.deep(10))).on(0, 0).net();
    Opening window = NamedPanel.of(net, "side 1").orElseThrow().openings().getFirst();
    assertThat(window.outline().area()).isCloseTo((40 - 24) * (100 - 24), within(1e-6));
    Opening.Hole hole =
        (Opening.Hole) NamedPanel.of(net, "top").orElseThrow().openings().getFirst();
    assertThat(hole.centre().distance(NamedPanel.of(net, "top").orElseThrow().outline().centroid()))
        .isLessThan(1e-9);
    assertThat(hole.site()).isEqualTo(new Site(4, 2));
    assertThat(net.layers()).hasSize(1);
    assertThat(net.panels().get(net.layers().getFirst().panel()).name()).isEqualTo("side 2");
    NetChecks.tabsHidden(net);
  }

  /** A window that leaves 4 mm of card has no room for a 10 mm tab. */
  @Test
  void tabsShrinkToStayClearOfWindows() {
    Form box = Solids.box(60, 60, 60);
    for (Facet f : box.facets()) {
      box = box.withWindowInset(f.name(), 6, Site.NONE);
    }
    UnfoldResult result = new Nets(box, Unfolding.as(UnfoldStyle.SEARCH)).on(0, 0);
    NetChecks.tabsHidden(result.net());
    // Nobody asked for the usual depth, so that there is nothing to tell; of one that was asked
    // there is.
    assertThat(result.notes()).isEmpty();
    assertThat(new Nets(box, Unfolding.as(UnfoldStyle.SEARCH).with(Tabs.deep(12))).on(0, 0).notes())
        .anyMatch(n -> n.toString().contains("less deep than 12 mm"));
    Form thin = Solids.box(60, 60, 60);
    for (Facet f : thin.facets()) {
      thin = thin.withWindowInset(f.name(), 2, Site.NONE);
    }
    UnfoldResult none = new Nets(thin, Unfolding.as(UnfoldStyle.SEARCH)).on(0, 0);
    assertThat(none.net().panels()).hasSize(6);
    assertThat(none.net().joins()).hasSize(7);
    assertThat(none.notes()).anyMatch(n -> n.toString().contains("7 seams have no tab"));
  }

  @Test
  void sheetIsKept() {
    Form box = Solids.box(60, 60, 60);
    UnfoldResult fits = new Nets(box, Unfolding.as(UnfoldStyle.SEARCH)).on(210, 297);
    assertThat(Math.min(fits.net().box().width(), fits.net().box().height()))
        .isLessThanOrEqualTo(210);
    assertThat(Math.max(fits.net().box().width(), fits.net().box().height()))
        .isLessThanOrEqualTo(297);
    UnfoldResult small = new Nets(box, Unfolding.as(UnfoldStyle.SEARCH)).on(100, 100);
    assertThat(small.notes()).anyMatch(n -> n.toString().contains("fits the sheet"));
  }

  @Test
  void baseMayBeChosen() {
    Form box = Solids.box(60, 50, 40);
    Net net = new Nets(box, Unfolding.as(UnfoldStyle.PETALS).on("side 2")).on(0, 0).net();
    assertThat(net.stance().ring().getFirst().panel()).isEqualTo(box.facet("side 2"));
    assertThatThrownBy(() -> new Nets(box, Unfolding.as(UnfoldStyle.PETALS).on("lid")).on(0, 0))
        .isInstanceOf(FormException.class)
        .hasMessageContaining("no facet \"lid\"")
        .hasMessageContaining("\"side 4\"");
  }

  @Test
  void sameFormSameNet() {
    Form form = Reference.form("a-snub-cuboctahedron", 25);
    Unfolding search = Unfolding.as(UnfoldStyle.SEARCH);
    assertThat(new Nets(form, search).on(0, 0)).isEqualTo(new Nets(form, search).on(0, 0));
  }

  @Test
  void flatEdgesStayFlat() {
    List<Vec3> corners =
        new ArrayList<>(
            List.of(
                new Vec3(0, 0, 0),
                new Vec3(40, 0, 0),
                new Vec3(40, 40, 0),
                new Vec3(0, 40, 0),
                new Vec3(20, 20, 40)));
    Form halves =
        Solids.mesh(
            corners,
            List.of(
                List.of(2, 1, 0),
                List.of(3, 2, 0),
                List.of(0, 1, 4),
                List.of(1, 2, 4),
                List.of(2, 3, 4),
                List.of(3, 0, 4)));
    Net net = new Nets(halves, Unfolding.as(UnfoldStyle.PETALS)).on(0, 0).net();
    assertThat(net.scores()).anyMatch(s -> s.angle().equals(FoldAngle.degrees(0)));
    NetChecks.overlapFree(net);
  }
}
