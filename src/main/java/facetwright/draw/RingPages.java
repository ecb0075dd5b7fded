package facetwright.draw;

import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Motion3;
import facetwright.geom.Unit;
import facetwright.geom.Vec2;
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
  private static final double EDGE = 15;
  private static final double GAP = 7;
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
   */
  public static List<Drawing> of(
      String title, Unit unit, Net piece, List<Motion3> poses, RingPlan plan, List<String> words) {
    SheetSize paper = SheetSizes.named(unit == Unit.INCH ? "Letter" : "A4");
    double width = paper.width() - 2 * EDGE;
    Block head =
        Block.text(
            Lettering.printable(title).strip() + ": a ring of " + plan.count(), words, width);
    List<Mark> marks = new ArrayList<>();
    double y = paper.height() - EDGE - head.height();
    marks.addAll(head.at(new Box2(EDGE, y, EDGE + head.width(), y + head.height()), false));
    FoldedDrawing ring = drawing(piece, poses, plan);
    double left = y - EDGE - 2 * GAP - 2 * caption("").height();
    Box2 above = ring.bounds(ABOVE);
    Box2 standing = ring.bounds(STANDING);
    double scale =
        Math.min(
            Math.min(1, left / (above.height() + standing.height())),
            width / Math.max(above.width(), standing.width()));
    y = picture(marks, ring, ABOVE, scale, "From above.", y, paper.width());
    picture(marks, ring, STANDING, scale, "As it stands.", y, paper.width());
    return List.of(new Drawing(paper.width(), paper.height(), marks));
  }

  private static Block caption(String text) {
    return Block.text("", List.of(text), 100);
  }

  private static double picture(
      List<Mark> marks,
      FoldedDrawing ring,
      Viewpoint from,
      double scale,
      String words,
      double top,
      double page) {
    Block caption = caption(words);
    double y = top - GAP - caption.height();
    marks.addAll(caption.at(new Box2(EDGE, y, page, y + caption.height()), false));
    Box2 box = ring.bounds(from);
    double foot = y - scale * box.height();
    Vec2 shift = new Vec2(page / 2 - scale * box.centre().x(), foot - scale * box.minY());
    for (Mark patch : new Scaling(scale).of(ring.seen(from))) {
      marks.add(patch.moved(Motion2.shift(shift)));
    }
    return foot;
  }
}
