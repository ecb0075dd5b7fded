package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.change.Chamfer;
import facetwright.form.change.PlaneCut;
import facetwright.form.change.Reshape;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldResult;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Hulls of random points, round and flat: they are sound forms and unfold without overlap. */
class UnfoldPropertyTest {

  private static Form hull(int points, long seed, double squash) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Vec3> cloud = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      Vec3 p =
          new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
      cloud.add(new Vec3(60 * p.x(), 60 * p.y(), 60 * squash * p.z()));
    }
    return Solids.hull(cloud);
  }

  @Property(tries = 60, seed = "20261125")
  void hullHoldsItsPointsAndUnfolds(
      @ForAll @IntRange(min = 4, max = 30) int points, @ForAll @LongRange(min = 0) long seed) {
    Form form = hull(points, seed, seed % 2 == 0 ? 1 : 0.3);
    assertThat(form.isConvex()).isTrue();
    assertThat(form.corners().size() - form.edges().size() + form.facets().size()).isEqualTo(2);
    UnfoldResult result =
        new Nets(form, Unfolding.as(UnfoldStyle.SEARCH).with(Tabs.deep(5))).on(0, 0);
    assertThat(result.splits()).isFalse();
    NetChecks.overlapFree(result.net());
    NetChecks.congruent(result.net(), form);
    NetChecks.edgesAccounted(result.net(), form);
    NetChecks.tabsHidden(result.net());
  }

  /** A plane parts a hull into two whose volumes add up. */
  @Property(tries = 60, seed = "20261125")
  void partsOfACutAddUp(
      @ForAll @IntRange(min = 4, max = 40) int points, @ForAll @LongRange(min = 0) long seed) {
    Form form = hull(points, seed, 1);
    Vec3 on = form.centre();
    Vec3 normal = new Vec3(1, 0.3 * (seed % 7), 0.2 * (seed % 5)).unit();
    Form under = form.changed(PlaneCut.under(on, normal));
    Form over = form.changed(PlaneCut.under(on, normal.times(-1)));
    assertThat(under.volume() + over.volume())
        .isCloseTo(form.volume(), within(1e-6 * form.volume()));
    assertThat(under.isConvex()).isTrue();
    assertThat(under.area() + over.area())
        .isGreaterThan(form.area())
        .isCloseTo(
            form.area() + 2 * under.flat(under.facet("cut")).area(), within(1e-6 * form.area()));
  }

  /** The dual of the dual has the form's counts; bevels shrink and keep the facets. */
  @Property(tries = 100, seed = "20261125")
  void dualAndBevels(
      @ForAll @IntRange(min = 5, max = 15) int points, @ForAll @LongRange(min = 0) long seed) {
    Form form = hull(points, seed, 1);
    Form back = form.changed(Reshape.dual()).changed(Reshape.dual());
    assertThat(back.facets()).hasSameSizeAs(form.facets());
    assertThat(back.corners()).hasSameSizeAs(form.corners());
    Form beveled;
    try {
      beveled = form.changed(Chamfer.edges(0.2));
    } catch (FormException tooNarrow) {
      assertThat(tooNarrow).hasMessageContaining("a bevel of");
      return;
    }
    assertThat(beveled.volume()).isLessThan(form.volume());
    assertThat(beveled.facets()).hasSize(form.facets().size() + form.edges().size());
  }
}
