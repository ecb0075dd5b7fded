package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.papers.order.Named;
import java.util.List;

/** The template over the printer's pages, for sheets that are larger than it. */
final class TilesWriter implements Exporter {
  @Override
  public String format() {
    return "tiles";
  }

  @Override
  public String ending() {
    return Named.TILES;
  }

  @Override
  public String name() {
    return "Template over pages";
  }

  @Override
  public String use() {
    return "The net at true size over pages that your printer takes, to be joined.";
  }

  @Override
  public String when() {
    return "where the sheet is larger than the printer's page";
  }

  @Override
  public boolean adds(Job job) {
    return job.isTiled();
  }

  @Override
  public List<Drawing> pages(Job job) {
    return adds(job) ? job.tiles() : job.templates();
  }
}
