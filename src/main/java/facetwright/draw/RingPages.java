package facetwright.draw;

import facetwright.geom.Motion3;
import facetwright.geom.Unit;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.SheetSize;
import facetwright.net.SheetSizes;
import facetwright.papers.ring.RingPlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A page on a ring: words, the ring from above, and the ring as it stands. */
public final class RingPages {
  /** The most that a picture takes of the page's height, in mm. */
  private static final double TALL = 110;

  private static final Viewpoint ABOVE = new Viewpoint(-Math.PI / 2, Math.PI / 2);
  private static final Viewpoint STANDING = new Viewpoint(Math.toRadians(-80), Math.toRadians(32));

  private RingPages() {}

  /** The copies of a ring as one net and its poses. */
  static FoldedDrawing drawing(Net piece, List<Motion3> poses, RingPlan plan) {
    List<Motion3> placed = new ArrayList<>();
    for (Motion3 copy : plan.copies()) {
      poses.forEach(p -> placed.add(p.then(copy)));
    }
    Net all = NetMerge.of(Collections.nCopies(plan.count(), piece));
    return new FoldedDrawing(all, placed, true);
  }

  /**
   * @param title of the design
   * @param unit lengths are told in it; the page is A4 or Letter by it
   * @param poses where the panels of a single piece stand
   * @param words what to say of the ring
   * @param materials what to buy for all its pieces, a line a thing
   */
  public static List<Drawing> of(
      String title,
      Unit unit,
      Net piece,
      List<Motion3> poses,
      RingPlan plan,
      List<String> words,
      List<String> materials) {
    SheetSize paper = SheetSizes.named(unit == Unit.INCH ? "Letter" : "A4");
    Flow flow = new Flow(paper, title, "a ring of " + plan.count());
    flow.title(title, "A ring of " + plan.count() + ".");
    FoldedDrawing ring = drawing(piece, poses, plan);
    double wide = (flow.width() - 6) / 2;
    flow.row(
        List.of(picture(ring, ABOVE, wide, TALL), picture(ring, STANDING, wide, TALL)),
        List.of("", ""),
        List.of("From above.", "As it stands."),
        2);
    flow.heading("How it is put together");
    words.forEach(w -> flow.item("–", w));
    flow.heading("What all " + plan.count() + " take");
    materials.forEach(m -> flow.item("–", m));
    return flow.pages();
  }

  private static Block picture(FoldedDrawing ring, Viewpoint from, double wide, double tall) {
    return Scaling.fitted(ring.seen(from), ring.bounds(from), wide, tall);
  }
}
