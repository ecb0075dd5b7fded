package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Folding;
import facetwright.fold.pose.FoldedForm;
import facetwright.form.make.OverOutline;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldResult;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.NetException;
import facetwright.net.outline.Outline;
import facetwright.net.outline.RandomOutlines;
import facetwright.words.Site;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Forms over random outlines, convex or not: sound, and folded from their nets again. */
class OverOutlineTest {
  private static final Site AT = new Site(2, 1);

  private static double length(Polygon2 outline) {
    double length = 0;
    for (int i = 0; i < outline.size(); i++) {
      length += outline.side(i).length();
    }
    return length;
  }

  private static void isSound(Form form, int sides) {
    assertThat(form.isClosed()).isTrue();
    // Euler: corners − edges + facets = 2.
    assertThat(form.corners().size() - form.edges().size() + form.facets().size()).isEqualTo(2);
    assertThat(form.hasFacet("side 1") && form.hasFacet("side " + sides)).isTrue();
    assertThat(form.hasFacet("side " + (sides + 1))).isFalse();
  }

  @SuppressWarnings("EnumOrdinal") // Any of them in turn.
  @Property(tries = 80, seed = "20261130")
  void aPrismHoldsAreaTimesHeight(
      @ForAll @IntRange(min = 3, max = 14) int corners,
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 3, max = 90) int height) {
    Outline outline = RandomOutlines.of(corners, seed);
    Polygon2 base = outline.polygon();
    Form form = OverOutline.prism(outline.folded("prism", AT), height);
    isSound(form, corners);
    assertThat(form.volume()).isCloseTo(base.area() * height, within(1e-7 * form.volume()));
    assertThat(form.area())
        .isCloseTo(2 * base.area() + length(base) * height, within(1e-9 * form.area()));
    UnfoldStyle style = UnfoldStyle.values()[(int) (seed % UnfoldStyle.values().length)];
    UnfoldResult result = new Nets(form, Unfolding.as(style).with(Tabs.deep(5))).on(0, 0);
    NetChecks.overlapFree(result.net());
    NetChecks.congruent(result.net(), form);
    NetChecks.edgesAccounted(result.net(), form);
  }

  @Property(tries = 25, seed = "20261130")
  void theNetOfAPrismFoldsIntoItAgain(
      @ForAll @IntRange(min = 3, max = 10) int corners, @ForAll @LongRange(min = 0) long seed) {
    Form form =
        OverOutline.prism(
            RandomOutlines.of(corners, seed).folded("prism", AT), 20.0 + (int) (seed % 30));
    FoldedForm folded =
        Folding.fold(new Nets(form, Unfolding.as(UnfoldStyle.SEARCH)).on(0, 0).net());
    assertThat(folded.gap()).isLessThan(1e-5);
    assertThat(folded.measures().volume()).isCloseTo(form.volume(), within(1e-6 * form.volume()));
    assertThat(folded.measures().area()).isCloseTo(form.area(), within(1e-6 * form.area()));
  }

  /** A third of area times height. */
  @Property(tries = 80, seed = "20261130")
  void aPyramidHoldsAThirdOrIsRefused(
      @ForAll @IntRange(min = 3, max = 12) int corners, @ForAll @LongRange(min = 0) long seed) {
    Outline outline = RandomOutlines.of(corners, seed);
    Form form;
    try {
      form = OverOutline.pyramid(outline.folded("pyramid", AT), 40);
    } catch (FormException unseen) {
      assertThat(unseen).hasMessageContaining("is not seen from the middle");
      assertThat(outline.polygon().isConvex()).isFalse();
      return;
    }
    isSound(form, corners);
    assertThat(form.volume()).isCloseTo(outline.area() * 40 / 3, within(1e-7 * form.volume()));
  }

  /** Volume h/6 (A + 4 M + B), M the section halfway (prismoidal formula, from memory). */
  @Property(tries = 80, seed = "20261130")
  void aFrustumFollowsThePrismoidalFormula(
      @ForAll @IntRange(min = 3, max = 12) int corners, @ForAll @LongRange(min = 0) long seed) {
    Outline outline = RandomOutlines.of(corners, seed);
    Outline top;
    Outline half;
    try {
      top = outline.offset(-2, AT);
      half = outline.offset(-1, AT);
    } catch (NetException tooFar) {
      return;
    }
    Form form = OverOutline.frustum(outline.folded("frustum", AT), top.folded("frustum", AT), 30);
    isSound(form, corners);
    assertThat(form.volume())
        .isCloseTo(
            5 * (outline.area() + 4 * half.area() + top.area()), within(1e-7 * form.volume()));
    UnfoldResult result =
        new Nets(form, Unfolding.as(UnfoldStyle.PETALS).with(Tabs.deep(5))).on(0, 0);
    NetChecks.overlapFree(result.net());
    NetChecks.congruent(result.net(), form);
  }

  @Test
  void aTopThatRunsAnotherWayIsRefused() {
    List<Vec2> base = Outline.rectangle(40, 30, AT).sharpCorners();
    assertThatThrownBy(
            () ->
                OverOutline.frustum(
                    base, Outline.rectangle(20, 20, AT).turned(10).sharpCorners(), 20))
        .hasMessageContaining("side 1 of the top runs another way");
    assertThatThrownBy(
            () -> OverOutline.frustum(base, Outline.regular(5, 20, AT).sharpCorners(), 20))
        .hasMessageContaining("4 sides and the top 5");
  }
}
