package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.CopyPages;
import java.util.List;

/** As many copies as one sheet gives, as a picture and at true size. */
public final class LayoutWriter implements Exporter {
  @Override
  public String format() {
    return "layout";
  }

  @Override
  public String fileName() {
    return "layout.pdf";
  }

  /** Where a sheet gives one only, the template shows it. */
  @Override
  public boolean adds(Job job) {
    return job.copies().count() > 1;
  }

  public static List<Drawing> pages(Job job) {
    return CopyPages.of(job.title(), job.order(), job.laid(), job.copies());
  }

  @Override
  public byte[] write(Job job) {
    return PdfWriter.write(job.title(), job.author(), pages(job));
  }
}
