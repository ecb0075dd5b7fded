package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.ChartPages;
import java.util.List;

/** The score chart as a document. */
public final class ChartWriter implements Exporter {
  @Override
  public String format() {
    return "chart";
  }

  @Override
  public String ending() {
    return "chart.pdf";
  }

  @Override
  public String name() {
    return "Score chart";
  }

  @Override
  public String use() {
    return "What to score, mark and cut, step by step, with measures for your ruler.";
  }

  @Override
  public String when() {
    return "where measures are few enough to be marked";
  }

  /** Not where all is pricked through the template. */
  @Override
  public boolean adds(Job job) {
    return job.chart().isOfUse();
  }

  /** The pages, for the ruler of the order. */
  @Override
  public List<Drawing> pages(Job job) {
    return ChartPages.of(job.title(), job.order(), job.laid());
  }
}
