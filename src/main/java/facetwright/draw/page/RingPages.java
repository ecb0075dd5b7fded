package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.FoldedDrawing;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.CheckRuler;
import facetwright.draw.picture.MeetingPicture;
import facetwright.draw.picture.Scaling;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.papers.order.Order;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.Seating;
import facetwright.papers.ring.Spacer;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A page on a ring: words, the ring from above, and the ring as it stands. */
public final class RingPages {
  /** The most that a picture takes of the page's height, in mm. */
  private static final double TALL = 72;

  /** A longer strip finds no room on a page beside its words, in mm. */
  private static final double LONGEST = 205;

  /** The most that a picture of a single piece takes of it, in mm. */
  private static final double MEETING = 34;

  /** From where the facet towards the neighbour clockwise is seen, and that towards the other. */
  private static final Viewpoint ONE = new Viewpoint(Math.toRadians(-60), Math.toRadians(25));

  private static final Viewpoint OTHER = new Viewpoint(Math.toRadians(60), Math.toRadians(25));

  /** So many pictures of others stand side by side. */
  private static final int ABREAST = 3;

  private static final Viewpoint ABOVE = new Viewpoint(-Math.PI / 2, Math.PI / 2);
  private static final Viewpoint STANDING = new Viewpoint(Math.toRadians(-80), Math.toRadians(32));

  private RingPages() {}

  /**
   * Another ring of as many.
   *
   * @param piece what it is made of, perhaps with a dial turned
   * @param poses where the panels of a single piece stand
   * @param words how it is come by, how large it is and what it takes
   */
  public record Other(Net piece, List<Motion3> poses, RingPlan plan, String words) {
    public Other {
      poses = List.copyOf(poses);
    }
  }

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
   * @param poses where the panels of a single piece stand
   * @param others other ways to seat it, and the same design otherwise turned
   * @param words what to say of the ring
   * @param materials what to buy for all its pieces, a line a thing
   */
  public static List<Drawing> of(
      String title,
      Order order,
      Net piece,
      List<Motion3> poses,
      RingPlan plan,
      List<Other> others,
      List<String> words,
      List<String> materials) {
    Telling tell = order.telling();
    Flow flow = new Flow(order.page(), title, tell.say("ring.kind", "count", plan.count()), tell);
    flow.title(title, Sentence.capital(tell.say("ring.kind", "count", plan.count())) + ".");
    FoldedDrawing ring = drawing(piece, poses, plan);
    double wide = (flow.width() - 6) / 2;
    Grid.row(
        flow,
        List.of(picture(ring, ABOVE, wide, TALL, tell), picture(ring, STANDING, wide, TALL, tell)),
        List.of("", ""),
        List.of(tell.say("ring.above"), tell.say("ring.stands")),
        2);
    meeting(flow, piece, poses, plan, tell);
    flow.heading(tell.say("ring.how"));
    words.forEach(w -> flow.item("–", w));
    flow.heading(tell.say("ring.takes", "count", plan.count()));
    materials.forEach(m -> flow.item("–", m));
    plan.seating().spacer().filter(Spacer::isFolded).ifPresent(s -> spacer(flow, s, tell));
    others(flow, others, tell);
    return flow.pages();
  }

  /** The two facets of a piece that meet its neighbours, as it lies in the ring. */
  private static void meeting(
      Flow flow, Net piece, List<Motion3> poses, RingPlan plan, Telling tell) {
    Motion3 first = plan.copies().getFirst();
    List<Motion3> placed = poses.stream().map(p -> p.then(first)).toList();
    Seating s = plan.seating();
    double wide = (flow.width() - 6) / 2;
    Grid.row(
        flow,
        List.of(
            MeetingPicture.of(piece, placed, s.one(), 1, ONE, wide, MEETING, tell),
            MeetingPicture.of(piece, placed, s.other(), 2, OTHER, wide, MEETING, tell)),
        List.of("", ""),
        List.of(tell.say("ring.facet-one"), tell.say("ring.facet-two")),
        2);
  }

  private static void others(Flow flow, List<Other> others, Telling tell) {
    if (others.isEmpty()) {
      return;
    }
    flow.heading(tell.say("ring.others"), MEETING + 30);
    double wide = (flow.width() - 12) / ABREAST;
    for (int from = 0; from < others.size(); from += ABREAST) {
      List<Other> row = others.subList(from, Math.min(from + ABREAST, others.size()));
      Grid.row(
          flow,
          row.stream()
              .map(
                  o ->
                      picture(
                          drawing(o.piece(), o.poses(), o.plan()), STANDING, wide, MEETING, tell))
              .toList(),
          Collections.nCopies(row.size(), ""),
          row.stream().map(Other::words).toList(),
          ABREAST);
    }
  }

  /** The strip of a spacer at true size, upright where it is longer than the page is wide. */
  private static void spacer(Flow flow, Spacer s, Telling tell) {
    boolean isUpright = s.strip() > flow.width();
    double wide = isUpright ? s.height() : s.strip();
    double high = isUpright ? s.strip() : s.height();
    if (wide > flow.width() || high > LONGEST) {
      return;
    }
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Stroke.around(Polygon2.rectangle(0, 0, wide, high), LineKind.CUT));
    for (double at : s.scores()) {
      Vec2 from = isUpright ? new Vec2(0, at) : new Vec2(at, 0);
      Vec2 to = isUpright ? new Vec2(wide, at) : new Vec2(at, high);
      marks.add(Mark.Stroke.line(from, to, LineKind.MOUNTAIN));
    }
    Block ruler = CheckRuler.both(LineKind.GUIDE);
    flow.heading(tell.say("ring.spacer-true"), ruler.height() + high + 20);
    flow.words(CheckRuler.print(tell) + " " + tell.say("ring.spacer-lines"));
    flow.gap(2);
    flow.put(ruler);
    flow.gap(4);
    flow.put(new Block(wide, high, marks));
  }

  private static Block picture(
      FoldedDrawing ring, Viewpoint from, double wide, double tall, Telling tell) {
    return Scaling.fitted(ring.seen(from), ring.bounds(from), wide, tall, tell);
  }
}
