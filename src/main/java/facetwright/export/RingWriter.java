package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.page.RingPages;
import facetwright.export.file.ExportException;
import facetwright.geom.RingCount;
import facetwright.language.Telling;
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
  /** So many other ways are shown by picture. */
  private static final int OTHERS = 3;

  private final boolean isStanding;
  private final List<RingPages.Other> more;

  public RingWriter() {
    this(false, List.of());
  }

  /**
   * One that shows further rings.
   *
   * @param isStanding whether pieces must not be tipped
   * @param more beside the other ways to seat the piece itself
   */
  public RingWriter(boolean isStanding, List<RingPages.Other> more) {
    this.isStanding = isStanding;
    this.more = List.copyOf(more);
  }

  @Override
  public String format() {
    return "ring";
  }

  @Override
  public String ending() {
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

  @Override
  public String paper(Job job) {
    return reader(job).say("ring.title", "count", job.order().copies());
  }

  /** Most orders are not for a ring. */
  @Override
  public boolean isUsual() {
    return false;
  }

  /** Whether so many pieces can be seated in a ring. */
  @Override
  public boolean adds(Job job) {
    return !plans(job, rings(job)).isEmpty();
  }

  /**
   * The pages.
   *
   * @throws ExportException when so many pieces can't be seated in a ring
   */
  @Override
  public List<Drawing> pages(Job job) {
    Optional<Rings> rings = rings(job);
    List<RingPlan> plans = plans(job, rings);
    if (plans.isEmpty()) {
      throw new ExportException(
          "No ring of " + job.order().copies() + " can be made of this piece.", null);
    }
    RingPlan plan = plans.getFirst();
    Telling tell = job.order().telling();
    List<String> words = new ArrayList<>(RingText.lines(plan, caliper(job), tell));
    words.addAll(RingText.hints(rings.orElseThrow(), plan.count(), tell));
    List<RingPages.Other> others = new ArrayList<>();
    plans.stream()
        .skip(1)
        .limit(OTHERS)
        .forEach(
            p ->
                others.add(
                    new RingPages.Other(
                        job.laid().net(), job.form().poses(), p, RingText.brief(p, tell) + ".")));
    others.addAll(more);
    return RingPages.of(
        job.title(),
        job.order(),
        job.laid().net(),
        job.form().whole(),
        plan,
        others,
        words,
        materials(job, plan));
  }

  private static double caliper(Job job) {
    return job.laid().stock().caliper();
  }

  /** Everything reckoned for all pieces. */
  public static Works works(Job job) {
    return job.works();
  }

  /** What to buy for all pieces of a ring, a line a thing. */
  public static List<String> materials(Job job, RingPlan plan) {
    List<String> lines =
        new ArrayList<>(new WorksText(job.order()).materials(works(job).materials(), Prices.NONE));
    lines.addAll(RingText.spacerCard(plan, caliper(job), job.order().telling()));
    return lines;
  }

  private static List<RingPlan> plans(Job job, Optional<Rings> rings) {
    return rings.map(r -> r.plans(job.order().copies())).orElse(List.of());
  }

  /**
   * The ways to seat the piece; empty where so many make no ring, or its panels' places are open.
   */
  private Optional<Rings> rings(Job job) {
    int count = job.order().copies();
    return count < RingCount.LEAST || count > RingCount.MOST || !job.isSolved()
        ? Optional.empty()
        : Optional.of(Rings.of(job.laid().net(), job.form()))
            .map(r -> isStanding ? r.standing() : r);
  }
}
