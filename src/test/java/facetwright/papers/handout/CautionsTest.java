package facetwright.papers.handout;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.panel.PanelBuild;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.papers.order.Order;
import facetwright.words.Site;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What to take care of fits the piece. */
class CautionsTest {
  private static final Site AT = new Site(1, 1);

  private static List<String> of(Net net, String title) {
    return Cautions.of(net, title, Order.usual(Unit.MM).telling());
  }

  @Test
  void aLanternMayHoldALightAndABoxOfSweetsMayNot() {
    Net net =
        WrapDraft.of(Collections.nCopies(8, 24.0), WrapRow.usual(List.of(60.0)), AT)
            .seam(12, AT)
            .build();
    assertThat(of(net, "Harbour lantern")).anyMatch(line -> line.contains("hot bulb"));
    assertThat(of(net, "Chandler's carton"))
        .noneMatch(line -> line.contains("hot bulb") || line.contains("punch"));
  }

  @Test
  void aFlatCardHoldsNoLightAndNoRibbon() {
    PanelBuild build = new PanelBuild();
    build.rectangle("card", 90, 60, AT);
    assertThat(of(build.build(), "Card"))
        .noneMatch(line -> line.contains("bulb") || line.contains("ribbon"))
        .anyMatch(line -> line.contains("small parts away from infants"));
  }
}
