package facetwright.export;

import facetwright.draw.Drawing;
import java.util.List;

/** The template over the printer's pages, for sheets that are larger than it. */
final class TilesWriter implements Exporter {
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
    return job.isTiled();
  }

  @Override
  public byte[] write(Job job) {
    List<Drawing> pages = adds(job) ? job.tiles() : job.templates();
    return PdfWriter.write(job.title(), job.author(), pages);
  }
}
