package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.CutPages;
import facetwright.draw.page.GuidePages;
import facetwright.papers.layers.Layers;
import facetwright.papers.materials.Works;
import java.util.ArrayList;
import java.util.List;

/** How the layers are cut, for as many pieces as the order says. */
public final class CutsWriter implements Exporter {
  @Override
  public String format() {
    return "layers";
  }

  @Override
  public String ending() {
    return "layers.pdf";
  }

  @Override
  public String name() {
    return "Cutting the layers";
  }

  @Override
  public String use() {
    return "How to cut the decorative layers with a trimmer, cut by cut.";
  }

  @Override
  public String when() {
    return "where the design has layers";
  }

  @Override
  public boolean adds(Job job) {
    return !Layers.papersOf(job.laid().net()).isEmpty();
  }

  /** The pages: of guides only, where nothing is left to cut. */
  @Override
  public List<Drawing> pages(Job job) {
    Works works = GuidesWriter.works(job);
    List<Drawing> pages = new ArrayList<>(CutPages.of(job.title(), job.order(), works));
    if (pages.isEmpty()) {
      pages.addAll(GuidePages.of(job.title(), job.order(), job.laid().net(), works));
    }
    return pages;
  }
}
