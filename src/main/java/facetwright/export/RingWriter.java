package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.RingPages;
import facetwright.export.file.ExportException;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.RingText;
import facetwright.papers.ring.Rings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All pieces of the order seated in a ring: how it is put together and what it takes. */
public final class RingWriter implements Exporter {
  @Override
  public String format() {
    return "ring";
  }

  @Override
  public String fileName() {
    return "ring.pdf";
  }

  @Override
  public String name() {
    return "Ring";
  }

  @Override
  public String use() {
    return "All pieces side by side in a circle: which facets meet, and what it takes.";
  }

  @Override
  public String when() {
    return "where so many pieces can be seated in one";
  }

  @Override
  public String name(Job job) {
    return "Ring of " + job.order().copies();
  }

  /** Most orders are not for a ring. */
  @Override
  public boolean isUsual() {
    return false;
  }

  /** Whether so many pieces can be seated in a ring. */
  @Override
  public boolean adds(Job job) {
    return best(job).isPresent();
  }

  /**
   * The pages.
   *
   * @throws ExportException when so many pieces can't be seated in a ring
   */
  @Override
  public List<Drawing> pages(Job job) {
    RingPlan plan =
        best(job)
            .orElseThrow(
                () ->
                    new ExportException(
                        "No ring of " + job.order().copies() + " can be made of this piece.",
                        null));
    List<String> words = new ArrayList<>(RingText.lines(plan, job.laid().net(), job.order()));
    words.addAll(RingText.hints(Rings.of(job.laid().net(), job.form()), plan.count()));
    return RingPages.of(
        job.title(),
        job.order(),
        job.laid().net(),
        job.form().poses(),
        plan,
        words,
        materials(job, plan));
  }

  /** Everything reckoned for all pieces. */
  public static Works works(Job job) {
    return job.works();
  }

  /** What to buy for all pieces of a ring, a line a thing. */
  public static List<String> materials(Job job, RingPlan plan) {
    List<String> lines =
        new ArrayList<>(new WorksText(job.order()).materials(works(job).materials(), Prices.NONE));
    lines.addAll(RingText.spacerCard(plan, job.order()));
    return lines;
  }

  private static Optional<RingPlan> best(Job job) {
    int count = job.order().copies();
    return count < Rings.LEAST || count > Rings.MOST || !job.isSolved()
        ? Optional.empty()
        : Rings.of(job.laid().net(), job.form()).plans(count).stream().findFirst();
  }
}
