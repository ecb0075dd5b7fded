package facetwright.workbench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.words.Site;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SelectionTest {
  private static Design lantern() throws Exception {
    String script = LibraryDesigns.text("harbour-lantern");
    return Facetwright.evaluate("lantern.js", script, Map.of(), Budget.USUAL);
  }

  private static int line(String words) throws Exception {
    String script = LibraryDesigns.text("harbour-lantern");
    return (int) script.substring(0, script.indexOf(words)).lines().count();
  }

  /** Lines that make no panel of their own still did something to the net. */
  @ParameterizedTest
  @ValueSource(strings = {".remove()", ".gusset()", ".tabs(", ".layer(", "wrap({"})
  void everyLineOfTheLanternSelectsWhatItDid(String words) throws Exception {
    Net net = lantern().net();
    Selection selection = Selection.ofLine(net, line(words));
    assertThat(selection).isInstanceOf(Selection.OfLine.class);
    assertThat(selection.site(net)).isEqualTo(new Site(line(words), 1));
  }

  @Test
  void cutAwayCardIsShownByTheSidesItFreed() throws Exception {
    Net net = lantern().net();
    Selection cut = Selection.ofLine(net, line(".remove()"));
    assertThat(cut.lone()).isNotEmpty().allMatch(side -> net.boundary().contains(side));
    Selection papers = Selection.ofLine(net, line(".layer("));
    for (int p = 0; p < net.panels().size(); p++) {
      int panel = p;
      assertThat(papers.hasPanel(p))
          .isEqualTo(net.layers().stream().anyMatch(l -> l.panel() == panel));
    }
    assertThat(papers.lone()).isEmpty();
  }

  @Test
  void aLineOfWordsSelectsNothing() throws Exception {
    Net net = lantern().net();
    assertThat(Selection.ofLine(net, 1)).isEqualTo(Selection.nothing());
    assertThat(net.panels().stream().filter(p -> p.role() == PanelRole.TAB)).isNotEmpty();
  }
}
