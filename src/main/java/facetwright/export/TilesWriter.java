package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.TemplatePages;
import facetwright.draw.TiledPages;
import java.util.List;

/** The template over pages of the printer's paper, for sheets that are larger than it. */
public final class TilesWriter implements Exporter {
  @Override
  public String format() {
    return "tiles";
  }

  @Override
  public String fileName() {
    return "template-tiles.pdf";
  }

  @Override
  public boolean adds(Job job) {
    return TiledPages.isLarger(job.laid(), job.order().paper());
  }

  @Override
  public byte[] write(Job job) {
    List<Drawing> pages =
        adds(job)
            ? TiledPages.of(job.title(), job.laid(), job.order().paper())
            : TemplatePages.of(job.title(), job.unit(), job.laid());
    return PdfWriter.write(job.title(), job.author(), pages);
  }
}
