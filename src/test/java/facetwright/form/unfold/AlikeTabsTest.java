package facetwright.form.unfold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.form.Form;
import facetwright.form.NetChecks;
import facetwright.form.make.Solids;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.measure.Unit;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** What is symmetric has tabs that are: walls across from each other bear the same. */
class AlikeTabsTest {

  private static Net petals(Form form) {
    return new Nets(form, Unfolding.as(UnfoldStyle.PETALS)).on(0, 0).net();
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

  /** A drum of storeys, open at one end: petals all round, each the same as the next. */
  @Property(tries = 80, seed = "20261201")
  void seamsOfStoreysAreAlikeAllRound(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @Size(min = 1, max = 3) List<@DoubleRange(min = 0.6, max = 1.3) Double> growths,
      @ForAll @DoubleRange(min = 5, max = 40) double height,
      @ForAll @DoubleRange(min = 3, max = 13) double depth,
      @ForAll boolean isLid) {
    List<Vec2> profile = new ArrayList<>(List.of(new Vec2(35, 0)));
    for (double growth : growths) {
      Vec2 last = profile.getLast();
      profile.add(new Vec2(last.x() * growth, last.y() + height));
    }
    alikeAllRound(Solids.turned(profile, sides).withoutFacet(isLid ? "base" : "top"), sides, depth);
  }

  /** A lid of seven sides with a low sloping storey: the least room for tabs, all alike. */
  @Test
  void sevenSeamsOfALidAreAlike() {
    double radius = 38.1 / (2 * Math.sin(Math.PI / 7));
    double inner = radius * 1.2595 / 1.5;
    List<Vec2> profile =
        List.of(new Vec2(radius, 0), new Vec2(radius, 25.4), new Vec2(inner, 31.75));
    alikeAllRound(Solids.turned(profile, 7).withoutFacet("base"), 7, 6.35);
  }

  private static void alikeAllRound(Form form, int sides, double depth) {
    Tabs tabs = Tabs.deep(depth);
    UnfoldResult result = new Nets(form, Unfolding.as(UnfoldStyle.PETALS).with(tabs)).on(0, 0);
    if (result.notes().stream().anyMatch(n -> n.told().text(Unit.MM).contains("searched tree"))) {
      return;
    }
    Map<Long, Set<List<Long>>> shapes = new TreeMap<>();
    Map<Long, Integer> counts = new TreeMap<>();
    for (Join join : result.net().joins()) {
      if (join instanceof Join.Seam s) {
        List<Vec3> facet = form.outline(s.a().panel());
        long storey = Math.round(100 * facet.stream().mapToDouble(Vec3::z).min().orElseThrow());
        List<Long> lengths = new ArrayList<>();
        if (s.tab() >= 0) {
          Polygon2 tab = result.net().panels().get(s.tab()).outline();
          for (int side = 0; side < tab.size(); side++) {
            lengths.add(Math.round(100 * tab.side(side).length()));
          }
        }
        Collections.sort(lengths);
        shapes.computeIfAbsent(storey, _ -> new HashSet<>()).add(lengths);
        counts.merge(storey, 1, Integer::sum);
      }
    }
    assertThat(counts.values()).allMatch(n -> n == sides);
    assertThat(shapes.values()).as("%s", shapes).allMatch(kinds -> kinds.size() == 1);
  }

  /** Base and top of a closed box hang on one wall; what one bears the other does, too. */
  @Test
  void endsOfAStripAreAlike() {
    for (int sides = 3; sides <= 10; sides++) {
      Form prism = Solids.prism(sides, 40, 70);
      Net net = new Nets(prism, Unfolding.as(UnfoldStyle.STRIP)).on(0, 0).net();
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
    Candidate alike =
        Candidate.of(layout, TabFitter.plan(layout, Tabs.USUAL), 0, 0).alike(Tabs.USUAL, 0, 0);
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
