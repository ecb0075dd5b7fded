package facetwright.draw.page;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.export.Papers;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.papers.order.Order;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pages of a score chart can be read and stay on the paper. */
class ChartPagesTest {
  @Test
  void wordsAreLargeEnoughAndOnThePaper() {
    Laid laid = SheetLayout.lay(Papers.tray(60, 20), Papers.A4, new Room(5, 2));
    for (Unit unit : List.of(Unit.MM, Unit.INCH)) {
      List<Drawing> pages = ChartPages.of("Kite box " + "w".repeat(300), Order.usual(unit), laid);
      assertThat(pages).isNotEmpty();
      for (Drawing page : pages) {
        for (Mark mark : page.marks()) {
          if (mark instanceof Mark.Text t) {
            assertThat(t.size()).isGreaterThanOrEqualTo(Lettering.pt(Lettering.SMALLEST_PT) - 1e-9);
            assertThat(t.at().x()).isGreaterThan(5);
            assertThat(t.at().x() + t.width()).isLessThan(page.width() - 5);
            assertThat(t.at().y()).isBetween(8.0, page.height() - 8);
          }
        }
      }
    }
  }

  @Test
  void saysWhatCounts() {
    Laid laid = SheetLayout.lay(Papers.tray(60, 20), Papers.A4, new Room(5, 2));
    String words =
        String.join(
            " ",
            ChartPages.of("Kite box", Order.usual(Unit.MM), laid).stream()
                .flatMap(p -> p.marks().stream())
                .map(m -> m instanceof Mark.Text t ? t.content() : "")
                .toList());
    assertThat(words)
        .contains("Kite box", "Ruler: 0.5 mm", "different measure", "Trim the sheet", "Caution:");
  }
}
