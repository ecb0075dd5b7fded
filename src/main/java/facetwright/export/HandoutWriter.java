package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.HandoutPages;
import java.util.ArrayList;
import java.util.List;

/** The handout as the printer's pages, templates at the end. */
public final class HandoutWriter implements Exporter {
  @Override
  public String format() {
    return "handout";
  }

  @Override
  public String fileName() {
    return "handout.pdf";
  }

  /** The pages, the templates at the end. */
  public static List<Drawing> pages(Job job) {
    HandoutContent content = job.handout();
    List<Drawing> pages =
        new ArrayList<>(
            HandoutPages.of(
                content.handout(),
                content.pictures(),
                job.order().page(),
                content.templates().size()));
    pages.addAll(content.templates());
    return pages;
  }

  @Override
  public byte[] write(Job job) {
    return PdfWriter.write(job.title(), job.author(), pages(job));
  }
}
