package facetwright.net.panel;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.net.Shapes;
import facetwright.words.Site;
import java.util.List;

/** The shape of a panel to attach, drawn with its hinge at the bottom. Measures in mm. */
public sealed interface FlapShape {

  /**
   * A flap or tab with both ends cut back; where they meet, a triangle.
   *
   * @param bevel degrees each end is cut back from square, 0 to 80
   */
  record Tapered(double depth, double bevel) implements FlapShape {}

  /** A tab with both ends cut back by 45°, or by less where they would meet before its depth. */
  record UsualTab(double depth) implements FlapShape {}

  /**
   * A triangle.
   *
   * @param apex how far along the hinge its tip stands: 0 at the left end, 0.5 in the middle
   */
  record Triangle(double height, double apex) implements FlapShape {}

  /** A regular polygon standing on its hinge. */
  record Regular(int sides) implements FlapShape {}

  /**
   * Its own shape, measured from the left end of the whole edge: x along it, y outward. The first
   * two corners are the ends of the hinge, left then right, at y = 0.
   */
  record Own(List<Vec2> corners) implements FlapShape {
    public Own {
      corners = List.copyOf(corners);
    }
  }

  /** The corners on a hinge of this width, its left end at the origin; three where ends meet. */
  private static List<Vec2> cutBack(double width, double depth, double back) {
    return width - 2 * back <= LengthTolerance.FINE.mm()
        ? List.of(Vec2.ZERO, new Vec2(width, 0), new Vec2(width / 2, depth))
        : List.of(
            Vec2.ZERO, new Vec2(width, 0), new Vec2(width - back, depth), new Vec2(back, depth));
  }

  /**
   * Corners on a hinge of this width, counter-clockwise, the hinge first, from its left end.
   *
   * @throws NetException when the shape is no shape on such a hinge
   */
  default List<Vec2> corners(double width, Site site) {
    return switch (this) {
      case Tapered(double depth, double bevel) -> {
        Ask.length("the depth of a flap", depth, site);
        Ask.angle("the bevel of a flap", bevel, 0, 80, site);
        double back = depth * Math.tan(Math.toRadians(bevel));
        Ask.that(
            2 * back <= width + LengthTolerance.FINE.mm(),
            () ->
                Message.of(
                    "the flap's bevels meet: on %s it can be at most %s deep if beveled by %s, or"
                        + " take a bevel of at most %s if %s deep",
                    Value.limit(width),
                    Value.atMost(width / 2 / back * depth),
                    Value.angle(bevel),
                    Value.angle(RoundOff.floor(Math.toDegrees(Math.atan(width / 2 / depth)))),
                    Value.limit(depth)),
            site);
        yield cutBack(width, depth, back);
      }
      case UsualTab(double depth) -> {
        Ask.length("the depth of a flap", depth, site);
        yield cutBack(width, depth, Math.min(depth, width / 2));
      }
      case Triangle(double height, double apex) -> {
        Ask.length("the height of a triangle", height, site);
        Ask.number("the place of a triangle's tip", apex, -10, 11, site);
        yield List.of(Vec2.ZERO, new Vec2(width, 0), new Vec2(width * apex, height));
      }
      case Regular(int sides) -> {
        Ask.count("the sides of a regular panel", sides, Ask.FEWEST_SIDES, Ask.MOST_SIDES, site);
        double radius = width / 2 / Math.sin(Math.PI / sides);
        double first = -Math.PI / 2 - Math.PI / sides;
        Polygon2 about = Polygon2.regular(Vec2.ZERO, sides, radius, first);
        Vec2 left = about.corner(0);
        yield about.corners().stream().map(c -> c.minus(left)).toList();
      }
      case Own(List<Vec2> corners) -> {
        Polygon2 outline = Shapes.outline("an attached panel", corners, site);
        Vec2 a = corners.get(0);
        Vec2 b = corners.get(1);
        Ask.that(
            a.y() == 0
                && b.y() == 0
                && b.x() > a.x() + LengthTolerance.FINE.mm()
                && outline.corners().equals(Polygon2.distinct(corners)),
            "the corners of an attached panel run counter-clockwise, beginning with the left and"
                + " the right end of its hinge, at y = 0",
            site);
        yield outline.corners();
      }
    };
  }
}
