package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.papers.order.Named;
import java.util.List;

/**
 * The template on the printer's pages: over several for sheets that are larger than one, and turned
 * over, to be printed on the face that ends up inside.
 */
final class TilesWriter implements Exporter {
  private final boolean isInside;

  private TilesWriter(boolean isInside) {
    this.isInside = isInside;
  }

  static TilesWriter ofOutside() {
    return new TilesWriter(false);
  }

  static TilesWriter ofInside() {
    return new TilesWriter(true);
  }

  @Override
  public String format() {
    return isInside ? "inside" : "tiles";
  }

  @Override
  public String ending() {
    return isInside ? "template-inside.pdf" : Named.TILES;
  }

  @Override
  public String name() {
    return isInside ? "Template for the inside" : "Template over pages";
  }

  @Override
  public String use() {
    return isInside
        ? "The net at true size, turned over, to be printed on the card's inside: no line shows."
        : "The net at true size over pages that your printer takes, to be joined.";
  }

  @Override
  public String when() {
    return isInside ? "" : "where the sheet is larger than the printer's page";
  }

  @Override
  public boolean adds(Job job) {
    return isInside || job.isTiled();
  }

  @Override
  public List<Drawing> pages(Job job) {
    return isInside ? job.insides() : job.isTiled() ? job.tiles() : job.templates();
  }
}
