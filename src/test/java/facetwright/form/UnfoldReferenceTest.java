package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldResult;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every reference solid unfolds in one piece without overlap, searched and in the drawn styles. */
class UnfoldReferenceTest {
  private static final double EDGE = 100;

  static List<String> solids() {
    return Reference.solids();
  }

  @ParameterizedTest
  @MethodSource("solids")
  void searchedInOnePieceWithAllTabs(String name) {
    Form form = Reference.form(name, EDGE);
    UnfoldResult result = new Nets(form, Unfolding.as(UnfoldStyle.SEARCH)).on(0, 0);
    holds(form, result);
    assertThat(result.net().panels())
        .as("a tab a seam")
        .hasSize(form.facets().size() + result.net().joins().size());
  }

  /** Every third solid, for the styles: all of them hold, but take long. */
  static List<String> someSolids() {
    List<String> all = Reference.solids();
    return IntStream.range(0, all.size()).filter(i -> i % 3 == 0).mapToObj(all::get).toList();
  }

  @ParameterizedTest
  @MethodSource("someSolids")
  void strip(String name) {
    Form form = Reference.form(name, EDGE);
    holds(form, new Nets(form, Unfolding.as(UnfoldStyle.STRIP).with(Tabs.deep(6))).on(0, 0));
  }

  @ParameterizedTest
  @MethodSource("someSolids")
  void petals(String name) {
    Form form = Reference.form(name, EDGE);
    holds(form, new Nets(form, Unfolding.as(UnfoldStyle.PETALS).with(Tabs.NONE)).on(0, 0));
  }

  @ParameterizedTest
  @MethodSource("someSolids")
  void gores(String name) {
    Form form = Reference.form(name, EDGE);
    holds(form, new Nets(form, Unfolding.as(UnfoldStyle.GORES).with(Tabs.deep(15))).on(0, 0));
  }

  private static void holds(Form form, UnfoldResult result) {
    assertThat(result.splits()).isFalse();
    assertThat(result.net().pieces()).isEqualTo(1);
    NetChecks.overlapFree(result.net());
    NetChecks.congruent(result.net(), form);
    NetChecks.edgesAccounted(result.net(), form);
    NetChecks.tabsHidden(result.net());
  }
}
