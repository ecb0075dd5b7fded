package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Unit;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bookmarks lead to where their words stand, as another reader finds them. */
class BookmarksTest {
  private static final double HIGH_PT = 24;

  @ParameterizedTest
  @ValueSource(strings = {"harbour-lantern", "biscuit-box", "gull-bauble", "tide-marker"})
  void leadToTheirHeadings(String name) throws Exception {
    Design design = LibraryDesigns.design(name);
    Job job = Jobs.of(design.title(), "", design.laid(), design.folded(), Order.usual(Unit.MM));
    byte[] bytes = new HandoutWriter().write(job);
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      List<String> titles = new ArrayList<>();
      for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
        PDPageXYZDestination there = (PDPageXYZDestination) item.getDestination();
        PDPage page = pdf.getPage(there.retrievePageNumber());
        if (!item.getTitle().equals("Template")) {
          assertThat(words(page, there.getTop()))
              .contains(item.getTitle().substring(0, Math.min(12, item.getTitle().length())));
        }
      }
      assertThat(titles).startsWith(design.title()).contains("Template").hasSizeGreaterThan(4);
    }
  }

  /** What stands in the strip below a height, as wide as the page. */
  private static String words(PDPage page, int top) throws Exception {
    PDFTextStripperByArea area = new PDFTextStripperByArea();
    double above = page.getMediaBox().getHeight() - top;
    area.addRegion(
        "strip", new Rectangle2D.Double(0, above - 2, page.getMediaBox().getWidth(), HIGH_PT + 2));
    area.extractRegions(page);
    return area.getTextForRegion("strip").replaceAll("\\s+", " ");
  }
}
