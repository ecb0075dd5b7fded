package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.FacetPages;
import java.util.List;
import java.util.SequencedMap;

/** The facets of a design, pictured and listed. */
public final class FacetsWriter implements Exporter {
  @Override
  public String format() {
    return "facets";
  }

  @Override
  public String ending() {
    return "facets.pdf";
  }

  @Override
  public String name() {
    return "Facets";
  }

  @Override
  public String use() {
    return "Every facet by picture and number, with its size and the words it answers to.";
  }

  /** It helps with the script, and not with the piece. */
  @Override
  public boolean isUsual() {
    return false;
  }

  /** Whether there is a script that speaks of facets. */
  @Override
  public boolean adds(Job job) {
    return !job.facets().all().isEmpty();
  }

  @Override
  public List<Drawing> pages(Job job) {
    return FacetPages.of(job.title(), job.order(), job.laid(), job.form(), job.facets());
  }

  /** The document, and each of its pages as a drawing and as a picture, as wide as is ordered. */
  public SequencedMap<String, byte[]> withPictures(Job job) {
    SequencedMap<String, byte[]> files = files(job);
    List<Drawing> pages = pages(job);
    for (int i = 0; i < pages.size(); i++) {
      String title =
          pages.size() == 1
              ? title(job)
              : reader(job).say("page.page", "title", title(job), "page", i + 1);
      files.put(job.named().file("facets.svg", i + 1), SvgWriter.write(title, pages.get(i)));
      files.put(
          job.named().file("facets.png", i + 1),
          PngWriter.page(title, pages.get(i), job.order().pixels()));
    }
    return files;
  }
}
