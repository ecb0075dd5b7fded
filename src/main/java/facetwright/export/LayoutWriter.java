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
  public String ending() {
    return "layout.pdf";
  }

  @Override
  public String name() {
    return "Several from one sheet";
  }

  @Override
  public String use() {
    return "As many as one sheet gives: how they lie, the cuts that part the sheet, and the sheet"
        + " at true size.";
  }

  @Override
  public String when() {
    return "where a sheet gives more than one";
  }

  /** Where a sheet gives one only, the template shows it. */
  @Override
  public boolean adds(Job job) {
    return job.copies().count() > 1;
  }

  @Override
  public List<Drawing> pages(Job job) {
    return CopyPages.of(job.title(), job.order(), job.laid(), job.copies(), job.gluing());
  }
}
