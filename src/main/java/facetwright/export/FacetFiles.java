package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.FacetPages;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.sheet.Laid;
import facetwright.papers.facets.FacetList;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/** The facets of a design, pictured and listed, as files. */
public final class FacetFiles {
  private FacetFiles() {}

  /** One document, and each of its pages as a drawing and as a picture, as wide as is ordered. */
  public static SequencedMap<String, byte[]> of(
      String title, String author, Order order, Laid laid, FoldedForm folded, FacetList facets) {
    List<Drawing> pages = FacetPages.of(title, order, laid, folded, facets);
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    Named named = new Named(title);
    String told = named.title(Named.paper("facets", order.telling()), order.telling());
    files.put(named.file("facets.pdf"), PdfWriter.write(told, author, order.language(), pages));
    for (int i = 0; i < pages.size(); i++) {
      String page =
          pages.size() == 1 ? told : order.telling().say("page.page", "title", told, "page", i + 1);
      files.put(named.file("facets.svg", i + 1), SvgWriter.write(page, pages.get(i)));
      files.put(
          named.file("facets.png", i + 1), PngWriter.page(page, pages.get(i), order.pixels()));
    }
    return files;
  }
}
