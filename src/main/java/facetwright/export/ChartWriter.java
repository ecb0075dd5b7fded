package facetwright.export;

import facetwright.draw.ChartPages;

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

  @Override
  public byte[] write(Job job) {
    return PdfWriter.write(
        job.title(), job.author(), ChartPages.of(job.title(), job.unit(), job.laid()));
  }
}
