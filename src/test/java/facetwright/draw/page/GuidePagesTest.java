package facetwright.draw.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.papers.guide.PunchGuide;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages on layers and guides. */
class GuidePagesTest {
  private static Design design(String name) throws Exception {
    return LibraryDesigns.design(name);
  }

  private static Works works(Design d, int pieces) {
    return Works.of(d.laid(), d.gluing(), d.unit(), List.of(), pieces);
  }

  /** A maker reads type of 8 pt at arm's length; nothing hangs over the edge of the page. */
  @ParameterizedTest
  @ValueSource(strings = {"harbour-lantern", "gull-bauble", "supper-tray", "twisted-tower"})
  void typeIsLargeEnoughAndOnThePage(String name) throws Exception {
    Design d = design(name);
    for (int pieces : new int[] {1, 30}) {
      Works works = works(d, pieces);
      List<Drawing> pages = new ArrayList<>(CutPages.of(d.title(), Order.usual(d.unit()), works));
      pages.addAll(GuidePages.of(d.title(), Order.usual(d.unit()), d.net(), works));
      assertThat(pages).isNotEmpty();
      for (Drawing page : pages) {
        Box2 paper = new Box2(0, 0, page.width(), page.height());
        for (Mark mark : page.marks()) {
          if (mark instanceof Mark.Text text) {
            assertThat(text.size()).isGreaterThanOrEqualTo(Lettering.pt(8) - 1e-9);
            assertThat(text.at().x() + (text.angle() == 0 ? text.width() / 2 : 0))
                .isLessThanOrEqualTo(page.width());
          }
          if (mark instanceof Mark.Stroke stroke) {
            assertThat(paper.holds(Box2.around(stroke.points()), new LengthTolerance(1e-6)))
                .isTrue();
          }
        }
      }
    }
  }

  /** The hole on the page stands as far from the guide's corner as in the tab. */
  @Test
  void thePunchGuideIsTrueToScale() throws Exception {
    Design d = design("harbour-lantern");
    PunchGuide guide = PunchGuide.of(d.net()).getFirst();
    Drawing page = GuidePages.of(d.title(), Order.usual(d.unit()), d.net(), works(d, 1)).getFirst();
    Mark.Circle hole =
        page.marks().stream()
            .filter(Mark.Circle.class::isInstance)
            .map(Mark.Circle.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(hole.radius()).isEqualTo(guide.diameter() / 2);
    boolean cornered =
        page.marks().stream()
            .filter(Mark.Stroke.class::isInstance)
            .map(Mark.Stroke.class::cast)
            .filter(s -> s.closed() && s.kind() == LineKind.CUT)
            .map(s -> Box2.around(s.points()))
            .anyMatch(
                b ->
                    Math.abs(hole.centre().x() - b.minX() - guide.along()) < 1e-9
                        && Math.abs(hole.centre().y() - b.minY() - guide.up()) < 1e-9);
    assertThat(cornered).isTrue();
    assertThat(page.width()).isCloseTo(210, within(1e-9));
  }

  @Test
  void aDesignWithoutLayersHasNoCutPages() throws Exception {
    Design d = design("fog-drum");
    assertThat(d.net().layers()).isEmpty();
    assertThat(CutPages.of(d.title(), Order.usual(d.unit()), works(d, 1))).isEmpty();
  }
}
