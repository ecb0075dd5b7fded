package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.Folding;
import facetwright.fold.touch.Collisions;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.net.Net;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The facets of a sound form only touch: its nets fold up without one through another. */
class RefoldClearTest {

  static List<String> solids() {
    return Reference.solids();
  }

  @ParameterizedTest
  @MethodSource("solids")
  void solidsFoldUpClear(String name) {
    Form form = Reference.form(name, 50);
    for (UnfoldStyle style : UnfoldStyle.values()) {
      Net net = new Nets(form, Unfolding.as(style).with(Tabs.deep(6))).on(0, 0).net();
      assertThat(Collisions.of(net, Folding.fold(net).poses())).as(name + " " + style).isEmpty();
    }
  }
}
