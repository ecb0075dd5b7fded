package facetwright.net;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Most;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/** Outlines that a maker gives by corners, checked at the call. */
public final class Shapes {
  /** How wide a panel or an opening has to be in the mean, in mm: a hair is fifty times as much. */
  static final double NARROWEST = 0.001;

  private static final int MOST_CORNERS = 2000;

  /** What is left of an opening that is made smaller, at least. */
  private static final double LEAST_PART = 0.02;

  private Shapes() {}

  /** The words for an opening that reaches over the edge of its panel. */
  public static Message overEdge(String opening, Opening cut, Polygon2 panel) {
    double round =
        cut instanceof Opening.Hole hole
            ? cut.outline().corner(0).distance(hole.centre()) - hole.diameter() / 2
            : 0;
    double past = Planar.past(cut.outline(), panel) - round;
    Message most = largest(cut, panel);
    return past < LengthTolerance.FINE.mm()
        ? Message.of(
            "%s touches the edge: make it smaller or move it inward, by %s to leave a border that"
                + " holds%s",
            opening, Value.given(Clearance.FROM_EDGE), most)
        : Message.of(
            "%s reaches %s over the edge: make it smaller or move it inward, by %s to leave a"
                + " border that holds%s",
            opening, Value.atLeast(past), Value.atLeast(past + Clearance.FROM_EDGE), most);
  }

  /** How large it may be where it lies; nothing where it lies off the panel. */
  private static Message largest(Opening cut, Polygon2 panel) {
    Vec2 middle = cut instanceof Opening.Hole hole ? hole.centre() : cut.outline().box().centre();
    Polygon card = Planar.polygon(panel);
    if (!card.contains(Planar.factory().createPoint(Planar.coordinate(middle)))) {
      return Message.EMPTY;
    }
    double part = Most.under(1, p -> p > 0 && isHeld(card, smaller(cut.outline(), middle, p)));
    if (part < LEAST_PART) {
      return Message.EMPTY;
    }
    if (cut instanceof Opening.Hole hole) {
      return Message.of(
          "; where it lies it may be %s across", Value.atMost(part * hole.diameter()));
    }
    Box2 box = cut.datum().measured(cut.outline()).box();
    return Message.of(
        "; where it lies it may be %s wide and %s high",
        Value.atMost(part * box.width()), Value.atMost(part * box.height()));
  }

  private static Polygon2 smaller(Polygon2 outline, Vec2 middle, double part) {
    return new Polygon2(
        outline.corners().stream().map(c -> middle.plus(c.minus(middle).times(part))).toList());
  }

  /** Whether card is left all round that holds. */
  private static boolean isHeld(Polygon card, Polygon2 cut) {
    Polygon hole = Planar.polygon(cut);
    return card.contains(hole) && card.getExteriorRing().distance(hole) >= Clearance.FROM_EDGE;
  }

  /**
   * A simple outline through the corners; clockwise ones are turned, the first stays first. A
   * corner given twice over counts once.
   *
   * @param what it is the outline of, such as "a window"
   * @throws NetException when they lie on one line, or the outline crosses or touches itself
   */
  public static Polygon2 outline(String what, List<Vec2> corners, Site site) {
    Ask.count("the corners of " + what, corners.size(), 3, MOST_CORNERS, site);
    for (Vec2 c : corners) {
      Ask.between("a corner of " + what, c.x(), -Ask.LONGEST, Ask.LONGEST, site);
      Ask.between("a corner of " + what, c.y(), -Ask.LONGEST, Ask.LONGEST, site);
    }
    List<Vec2> apart = Polygon2.distinct(corners);
    Ask.that(
        apart.size() >= 3,
        "the corners of " + what + " lie in no more than two places: give three that lie apart",
        site);
    Ask.that(
        !isOneLine(apart),
        "the corners of " + what + " lie on one line: move one of them off it",
        site);
    Optional<Vec2> contact = Planar.selfContact(apart);
    if (contact.isPresent()) {
      throw new NetException(
          Message.of(
              "%s%s",
              what.equals("the outline") ? what : "the outline of " + what,
              crossing(contact.get())),
          site);
    }
    Polygon2 outline = Polygon2.ofEitherSense(apart);
    if (outline.corners().equals(apart)) {
      return outline;
    }
    List<Vec2> turned = new ArrayList<>(outline.corners());
    Collections.rotate(turned, 1);
    return new Polygon2(turned);
  }

  /**
   * Why a border leaves no window.
   *
   * @param of what the window was to be in, as it is told
   * @param most the border that it has to be under, in mm
   */
  public static Message noWindow(double border, Object of, double most) {
    return Message.of(
        "a border of %s leaves no window in %s: it must be under %s",
        Value.given(border), of, Value.atMost(most));
  }

  /**
   * Why a hole leaves nothing of what it is punched into.
   *
   * @param width of that the shorter way, in mm
   */
  public static Message noHole(double diameter, String in, double width) {
    double held = width - 2 * Clearance.FROM_EDGE;
    return Message.of(
        "a hole %s across leaves nothing of %s, which is %s the shorter way: %s %s",
        Value.given(diameter),
        in,
        Value.limit(width),
        held > 0 ? "make it at most" : "make it less than",
        Value.atMost(held > 0 ? held : width));
  }

  /** What is wrong with an outline that meets itself at this place, and what to do. */
  static Message crossing(Vec2 at) {
    return Message.of(
        " crosses or touches itself at %s: give its corners in order once round it", Ask.place(at));
  }

  /** Whether none lies off the line from the first to the one farthest from it. */
  private static boolean isOneLine(List<Vec2> corners) {
    Vec2 from = corners.getFirst();
    Vec2 to = corners.stream().max(Comparator.comparingDouble(from::distance)).orElseThrow();
    Vec2 along = to.minus(from).unit();
    return corners.stream().allMatch(c -> Math.abs(along.cross(c.minus(from))) < NARROWEST);
  }
}
