package facetwright.form.unfold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.form.Form;
import facetwright.form.NetChecks;
import facetwright.form.make.Solids;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What is symmetric has tabs that are: walls across from each other bear the same. */
class AlikeTabsTest {

  private static Net petals(Form form) {
    return Unfolding.as(UnfoldStyle.PETALS).unfold(form).net();
  }

  /** How large the tabs are that a facet bears, in hundredths of a mm², the smallest first. */
  private static List<Long> borne(Net net, Form form, String facet) {
    int f = form.facet(facet);
    return net.joins().stream()
        .filter(j -> j instanceof Join.Seam s && s.tab() >= 0 && s.a().panel() == f)
        .map(j -> Math.round(100 * net.panels().get(((Join.Seam) j).tab()).outline().area()))
        .sorted()
        .toList();
  }

  private static void opposite(Form form, int sides) {
    Net net = petals(form);
    NetChecks.overlapFree(net);
    NetChecks.tabsHidden(net);
    for (int i = 1; i <= sides / 2; i++) {
      assertThat(borne(net, form, "side " + i))
          .as("side %s of %s, and the one across from it", i, sides)
          .isEqualTo(borne(net, form, "side " + (i + sides / 2)));
    }
  }

  /** Where two tabs find room side by side: narrower trays bear one on each wall, deeper ones. */
  @Property(tries = 40, seed = "20261130")
  void wallsOfATrayAreAlikeAcross(
      @ForAll @DoubleRange(min = 25, max = 120) double width,
      @ForAll @DoubleRange(min = 25, max = 120) double depth,
      @ForAll @DoubleRange(min = 8, max = 60) double height) {
    Form tray = Solids.box(width, depth, height).withoutFacet("top");
    opposite(tray, 4);
    Net net = petals(tray);
    List<Integer> counts =
        IntStream.rangeClosed(1, 4).mapToObj(i -> borne(net, tray, "side " + i).size()).toList();
    assertThat(counts).isIn(List.of(2, 0, 2, 0), List.of(0, 2, 0, 2));
  }

  @Property(tries = 40, seed = "20261130")
  void wallsOfPotsPyramidsAndFrustumsAreAlikeAcross(
      @ForAll @IntRange(min = 2, max = 8) int half,
      @ForAll @DoubleRange(min = 25, max = 60) double radius,
      @ForAll @DoubleRange(min = 20, max = 90) double height) {
    int sides = 2 * half;
    opposite(Solids.prism(sides, radius, height).withoutFacet("top"), sides);
    opposite(Solids.pyramid(sides, radius, height), sides);
    opposite(Solids.frustum(sides, radius, 0.7 * radius, height).withoutFacet("top"), sides);
  }

  /** Nothing lies across from a wall of an odd count; they bear one each. */
  @Property(tries = 20, seed = "20261130")
  void wallsOfOddPotsBearOneEach(
      @ForAll @IntRange(min = 1, max = 7) int half,
      @ForAll @DoubleRange(min = 25, max = 60) double radius,
      @ForAll @DoubleRange(min = 20, max = 90) double height) {
    int sides = 2 * half + 1;
    Form pot = Solids.prism(sides, radius, height).withoutFacet("top");
    Net net = petals(pot);
    for (int i = 1; i <= sides; i++) {
      assertThat(borne(net, pot, "side " + i)).hasSize(1);
    }
  }

  /** Base and top of a closed box hang on one wall; what one bears the other does, too. */
  @Test
  void endsOfAStripAreAlike() {
    for (int sides = 3; sides <= 10; sides++) {
      Form prism = Solids.prism(sides, 40, 70);
      Net net = Unfolding.as(UnfoldStyle.STRIP).unfold(prism).net();
      assertThat(borne(net, prism, "base")).isEqualTo(borne(net, prism, "top"));
      assertThat(net.joins()).allMatch(j -> j instanceof Join.Seam s && s.tab() >= 0);
    }
  }

  /** As many tabs as there would be without, none less deep. */
  @Property(tries = 30, seed = "20261130")
  void costsNothing(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @DoubleRange(min = 20, max = 60) double radius,
      @ForAll @DoubleRange(min = 15, max = 90) double height) {
    FlatForm flat = new FlatForm(Solids.pyramid(sides, radius, height));
    Layout layout = Styles.petals(flat, flat.form().facet("base")).getFirst();
    TabPlan first = TabFitter.plan(layout, Tabs.USUAL);
    Candidate alike = Candidate.of(layout, Tabs.USUAL, 0, 0).alike(Tabs.USUAL, 0, 0);
    assertThat(alike.tabs().dropped()).hasSizeLessThanOrEqualTo(first.dropped().size());
    assertThat(alike.tabs().placed().stream().mapToDouble(Tab::depth).min().orElseThrow())
        .isGreaterThanOrEqualTo(
            first.placed().stream().mapToDouble(Tab::depth).min().orElseThrow() - 1e-9);
  }

  /** A square lies on itself in eight ways, a rectangle in four, a scalene tray's net in one. */
  @Test
  void likenessesAreThoseOfTheNet() {
    // A dihedral group of order 2n has the subgroups that number theory counts: d(n) + sigma(n)
    // (from memory); those of one element left out, 9 of the square's 10 and 4 of the rectangle's
    // 5.
    assertThat(Likenesses.groups(layout(Solids.box(40, 40, 20)))).hasSize(9);
    assertThat(Likenesses.groups(layout(Solids.box(50, 40, 20)))).hasSize(4);
    Form scalene =
        Solids.hull(
            List.of(
                new Vec3(0, 0, 0), new Vec3(50, 0, 0), new Vec3(10, 35, 0), new Vec3(12, 9, 41)));
    FlatForm flat = new FlatForm(scalene);
    assertThat(Likenesses.groups(Styles.petals(flat, 0).getFirst())).isEmpty();
  }

  private static Layout layout(Form box) {
    FlatForm flat = new FlatForm(box.withoutFacet("top"));
    return Styles.petals(flat, flat.form().facet("base")).getFirst();
  }
}
