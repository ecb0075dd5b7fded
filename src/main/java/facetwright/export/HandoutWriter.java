package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.HandoutPages;
import java.util.ArrayList;
import java.util.List;

/** The handout as the printer's pages, templates at the end. */
public final class HandoutWriter implements Exporter {
  @Override
  public String format() {
    return "handout";
  }

  @Override
  public String ending() {
    return "handout.pdf";
  }

  @Override
  public String name() {
    return "Handout";
  }

  @Override
  public String use() {
    return "Everything a learner needs, in order, with pictures of each step.";
  }

  /** The pages, the templates at the end. */
  @Override
  public List<Drawing> pages(Job job) {
    HandoutContent content = job.handout();
    List<Drawing> pages =
        new ArrayList<>(
            HandoutPages.of(
                content.handout(),
                content.pictures(),
                job.order().page(),
                content.templates().size()));
    for (Drawing template : content.templates()) {
      boolean isFirst = template.equals(content.templates().getFirst());
      pages.add(
          isFirst ? template.headed(job.order().telling().say("handout.template")) : template);
    }
    return pages;
  }
}
