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
  public String fileName() {
    return "chart.pdf";
  }

  /** The pages, for the ruler of the order. */
  public static List<Drawing> pages(Job job) {
    return ChartPages.of(job.title(), job.order(), job.laid());
  }

  @Override
  public byte[] write(Job job) {
    return PdfWriter.write(job.title(), job.author(), pages(job));
  }
}
