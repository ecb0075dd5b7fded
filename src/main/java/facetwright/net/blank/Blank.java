package facetwright.net.blank;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.Backing;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.PanelRole;
import facetwright.net.Shapes;
import facetwright.net.fitting.Lettered;
import facetwright.words.SaidTwice;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/**
 * A net drawn on a rectangular blank: score and cut lines by measurements from its edges. {@link
 * #build()} finds the panels between them. Places are in mm from the blank's lower left corner, its
 * outside up; a panel is meant by any point inside it.
 *
 * <p>A cut laid on a score parts the panels there, so that a score may run right across and be slit
 * at its ends. Every line must end on other lines or on the edge of the blank: one that ends inside
 * a panel is refused at {@code build()}, and so is a score inside a panel's window.
 */
public final class Blank {
  final double width;
  final double height;
  final Site site;
  final List<Line> lines = new ArrayList<>();
  final List<Mark> marks = new ArrayList<>();
  final SaidTwice twice = new SaidTwice();

  private Blank(double width, double height, Site site) {
    this.width = Ask.length("the blank's width", width, site);
    this.height = Ask.length("the blank's height", height, site);
    this.site = site;
  }

  /** A blank cut to this size. */
  public static Blank of(double width, double height, Site site) {
    return new Blank(width, height, site);
  }

  /** A line from bottom to top, measured from the left edge. */
  public Segment2 fromLeft(double x, Site at) {
    return fromLeft(x, 0, height, at);
  }

  /** The same, starting and stopping at these measures from the bottom. */
  public Segment2 fromLeft(double x, double start, double stop, Site at) {
    return line(new Vec2(x, start), new Vec2(x, stop), at);
  }

  /** A line from bottom to top, measured from the right edge. */
  public Segment2 fromRight(double x, Site at) {
    return fromLeft(width - x, at);
  }

  /** The same, starting and stopping at these measures from the bottom. */
  public Segment2 fromRight(double x, double start, double stop, Site at) {
    return fromLeft(width - x, start, stop, at);
  }

  /** A line from left to right, measured from the bottom edge. */
  public Segment2 fromBottom(double y, Site at) {
    return fromBottom(y, 0, width, at);
  }

  /** The same, starting and stopping at these measures from the left. */
  public Segment2 fromBottom(double y, double start, double stop, Site at) {
    return line(new Vec2(start, y), new Vec2(stop, y), at);
  }

  /** A line from left to right, measured from the top edge. */
  public Segment2 fromTop(double y, Site at) {
    return fromBottom(height - y, at);
  }

  /** The same, starting and stopping at these measures from the left. */
  public Segment2 fromTop(double y, double start, double stop, Site at) {
    return fromBottom(height - y, start, stop, at);
  }

  Segment2 line(Vec2 from, Vec2 to, Site at) {
    within(from, at);
    within(to, at);
    Ask.that(from.distance(to) > BlankRegions.GRID.mm() * 100, "this line has no length", at);
    return new Segment2(from, to);
  }

  /**
   * A score whose stretches, from crossing to crossing and counted from its start, are folded in
   * turn as listed, and over again.
   *
   * @param kind no cut
   * @param folds one at least
   */
  public Blank score(Segment2 line, LineKind kind, List<LineFold> folds, Site at) {
    inside("score", line, at);
    lines.add(new Line(line(line.from(), line.to(), at), kind, folds, at));
    return this;
  }

  /**
   * The part of a line that lies in the panel at a point, between the lines drawn so far.
   *
   * @return each stretch of it, one at least
   */
  public List<Segment2> inPanel(Segment2 line, Vec2 point, Site at) {
    List<Segment2> found =
        new BlankRegions(this).clipped(line(line.from(), line.to(), at), within(point, at));
    Ask.that(
        !found.isEmpty(),
        () ->
            Message.of(
                "the line from %s to %s does not run through the panel at %s: draw what bounds that"
                    + " panel first, and give a point inside it, on no line",
                Ask.place(line.from()), Ask.place(line.to()), Ask.place(point)),
        at);
    return found;
  }

  /** Refuses a line along an edge of the blank, where there is nothing to part. */
  private void inside(String what, Segment2 line, Site at) {
    Vec2 a = line.from();
    Vec2 b = line.to();
    boolean upright = isBoth(a.x(), b.x(), 0) || isBoth(a.x(), b.x(), width);
    boolean level = isBoth(a.y(), b.y(), 0) || isBoth(a.y(), b.y(), height);
    Ask.that(
        !upright && !level,
        () ->
            Message.of(
                "the %s from %s to %s lies on the edge of the blank, where there is nothing to %s:"
                    + " measure it over 0 and under %s, or leave it out",
                what,
                Ask.place(a),
                Ask.place(b),
                what.equals("cut") ? "cut" : "fold",
                Value.limit(upright ? width : height)),
        at);
  }

  private static boolean isBoth(double a, double b, double edge) {
    return LengthTolerance.FINE.same(a, edge) && LengthTolerance.FINE.same(b, edge);
  }

  /**
   * Cuts along a path of points, such as a notch from edge to edge; a part of it may run along an
   * edge of the blank, but not all of a straight one.
   */
  public Blank cut(List<Vec2> path, Site at) {
    Ask.count("the points of a cut", path.size(), 2, 2000, at);
    List<Segment2> parts = new ArrayList<>();
    for (int i = 0; i + 1 < path.size(); i++) {
      parts.add(line(path.get(i), path.get(i + 1), at));
    }
    if (parts.size() == 1) {
      inside("cut", parts.getFirst(), at);
    }
    parts.forEach(p -> lines.add(Line.cut(p, at)));
    return this;
  }

  /** The panel at this point is cut away. */
  public Blank waste(Vec2 point, Site at) {
    return mark(new Mark.Waste(within(point, at), at));
  }

  /** Names the panel at this point. */
  public Blank name(Vec2 point, String name, Site at) {
    return mark(new Mark.Name(within(point, at), name, at));
  }

  /** The panel at this point is a tab, a gusset or a facet. */
  public Blank role(Vec2 point, PanelRole role, Site at) {
    return mark(new Mark.Role(within(point, at), role, at));
  }

  /** Glues a decorative paper on the panel at this point. */
  public Blank layer(Vec2 point, double reveal, String paper, Site at) {
    Ask.between("a reveal", reveal, 0, Ask.LONGEST, at);
    return mark(new Mark.Layered(within(point, at), reveal, paper, at));
  }

  /** Writes on the panel at this point. */
  public Blank label(Vec2 point, Lettered words) {
    return mark(new Mark.Written(within(point, words.site()), words));
  }

  /** Puts paper or film behind the windows of the panel at this point. */
  public Blank backing(Vec2 point, Backing with) {
    return mark(new Mark.Backed(within(point, with.site()), with));
  }

  /** Cuts a window inside a panel. */
  public Blank window(List<Vec2> corners, Site at) {
    return window(Shapes.outline("a window", corners, at), at);
  }

  /** The same along an outline. */
  public Blank window(Polygon2 outline, Site at) {
    outline.corners().forEach(c -> within(c, at));
    return mark(new Mark.Window(outline, at));
  }

  /** Cuts a window of the panel's own shape, a border left all round. */
  public Blank window(Vec2 point, double border, Site at) {
    Ask.length("a window's border", border, at);
    return mark(new Mark.Bordered(within(point, at), border, at));
  }

  /**
   * Says what the lines between panels are, whatever is said of them all along.
   *
   * @param a points in panels
   * @param b points in those on the other side; a line between any two counts
   * @param kind null to leave it a score or a perforation, as it is
   * @param fold null to leave it as it is
   */
  public Blank fold(List<Vec2> a, List<Vec2> b, LineKind kind, LineFold fold, Site at) {
    a.forEach(p -> within(p, at));
    b.forEach(p -> within(p, at));
    return mark(new Mark.Folded(a, b, kind, fold, at));
  }

  public Blank hole(Vec2 middle, double diameter, Site at) {
    Ask.length("a hole's diameter", diameter, at);
    return mark(new Mark.Hole(within(middle, at), diameter, at));
  }

  /** The form stands on the panel at this point; without this, on its largest facet. */
  public Blank standOn(Vec2 point, Site at) {
    return mark(new Mark.Base(within(point, at), at));
  }

  /**
   * Two sides meet when made: of the panel at {@code a} and of that at {@code b}, each the side
   * nearest to the point.
   *
   * @param tab a point in the tab that hangs on {@code a}'s panel and is glued under {@code b}'s;
   *     the side it hangs on is then the one that meets. Null for none
   */
  public Blank join(Vec2 a, Vec2 b, Vec2 tab, Site at) {
    return mark(
        new Mark.Joined(within(a, at), within(b, at), tab == null ? null : within(tab, at), at));
  }

  /** The panel at one point lies flat under the panel at another when made. */
  public Blank lap(Vec2 under, Vec2 over, Site at) {
    return mark(new Mark.Lapped(within(under, at), within(over, at), at));
  }

  /**
   * The net between the lines.
   *
   * @throws NetException naming the line that ends inside a panel, the point that lies in none, or
   *     the broken invariant
   */
  public Net build() {
    return new BlankBuild(this).build();
  }

  /** What was said twice of the same; known once it is built. */
  public SaidTwice twice() {
    return twice;
  }

  private Blank mark(Mark mark) {
    marks.add(mark);
    return this;
  }

  private Vec2 within(Vec2 p, Site at) {
    double slack = BlankRegions.GRID.mm();
    Ask.that(
        p.x() >= -slack && p.x() <= width + slack && p.y() >= -slack && p.y() <= height + slack,
        () ->
            Message.of(
                "the point %s lies off the blank, which is %s wide and %s high",
                Ask.place(p), Value.limit(width), Value.limit(height)),
        at);
    return p;
  }
}
