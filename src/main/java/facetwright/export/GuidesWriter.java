package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.GuidePages;
import facetwright.export.file.ExportException;
import facetwright.papers.materials.Works;
import java.util.List;

/** The shopping list, and punch guides and tick strips at true size. */
public final class GuidesWriter implements Exporter {
  @Override
  public String format() {
    return "guides";
  }

  @Override
  public String fileName() {
    return "guides.pdf";
  }

  /** Everything reckoned for the order, on the usual sheets of layer paper. */
  static Works works(Job job) {
    try {
      return job.works();
    } catch (IllegalArgumentException e) {
      throw new ExportException(
          e.getMessage()
              + " The other papers can be made with --only; facetwright layers takes"
              + " --paper.",
          e);
    }
  }

  public static List<Drawing> pages(Job job) {
    return GuidePages.of(job.title(), job.order(), job.laid().net(), works(job));
  }

  @Override
  public byte[] write(Job job) {
    return PdfWriter.write(job.title(), job.author(), pages(job));
  }
}
