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
  public String ending() {
    return "guides.pdf";
  }

  @Override
  public String name() {
    return "Shopping list and guides";
  }

  @Override
  public String use() {
    return "What to buy, and punch guides and tick strips at true size.";
  }

  /** Everything reckoned for the order, on the usual sheets of layer paper. */
  static Works works(Job job) {
    try {
      return job.works();
    } catch (IllegalArgumentException e) {
      throw new ExportException(
          e.getMessage() + " Plan the layers for a larger sheet of that paper.", e);
    }
  }

  @Override
  public List<Drawing> pages(Job job) {
    return GuidePages.of(job.title(), job.order(), job.laid().net(), works(job));
  }
}
