package facetwright.form.make;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.form.FormException;
import facetwright.form.Limits;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Forms that stand on an outline of straight sides, hollow corners allowed: "base", "side 1" over
 * the outline's side 1 and so on, and "top" where it has one. The outline is simple and runs
 * counter-clockwise; it lies where it was given, on z = 0.
 */
public final class OverOutline {
  private OverOutline() {}

  /** Upright sides between two equal outlines. */
  public static Form prism(List<Vec2> outline, double height) {
    return frustum(outline, outline, height);
  }

  /**
   * Sides that lean from one outline to another.
   *
   * @param top an outline of as many sides, each in the direction of the one it stands over
   * @throws FormException when a side of the top runs another way: it would not be flat
   */
  public static Form frustum(List<Vec2> outline, List<Vec2> top, double height) {
    Limits.length("the height", height);
    int n = outline.size();
    FormCheck.require(
        n <= Limits.MOST_ROUND,
        "an outline to stand on may have " + Limits.MOST_ROUND + " sides, not " + n);
    FormCheck.require(
        top.size() == n,
        "the base has " + n + " sides and the top " + top.size() + ": both need as many");
    List<Vec3> corners = new ArrayList<>();
    outline.forEach(c -> corners.add(new Vec3(c.x(), c.y(), 0)));
    top.forEach(c -> corners.add(new Vec3(c.x(), c.y(), height)));
    List<Facet> facets = new ArrayList<>();
    facets.add(Facet.of("base", IntStream.range(0, n).boxed().toList().reversed()));
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      Vec2 below = outline.get(next).minus(outline.get(i));
      Vec2 above = top.get(next).minus(top.get(i));
      double turn = Math.atan2(below.cross(above), below.dot(above));
      FormCheck.require(
          Math.abs(turn) <= AngleTolerance.UNSEEN.radians(),
          "side "
              + (i + 1)
              + " of the top runs another way than that of the base, so that the facet between"
              + " them would not be flat: make the top of the same outline, set off");
      facets.add(Facet.of("side " + (i + 1), List.of(i, next, n + next, n + i)));
    }
    facets.add(Facet.of("top", IntStream.range(n, 2 * n).boxed().toList()));
    return Form.of(corners, facets);
  }

  /**
   * Sides that meet in a point over the outline's centre of area.
   *
   * @throws FormException when a side is not seen from there: it would lean over
   */
  public static Form pyramid(List<Vec2> outline, double height) {
    Limits.length("the height", height);
    int n = outline.size();
    FormCheck.require(
        n <= Limits.MOST_ROUND,
        "an outline to stand on may have " + Limits.MOST_ROUND + " sides, not " + n);
    Vec2 middle = new Polygon2(outline).centroid();
    List<Vec3> corners = new ArrayList<>();
    outline.forEach(c -> corners.add(new Vec3(c.x(), c.y(), 0)));
    corners.add(new Vec3(middle.x(), middle.y(), height));
    List<Facet> facets = new ArrayList<>();
    facets.add(Facet.of("base", IntStream.range(0, n).boxed().toList().reversed()));
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      String side = "side " + (i + 1);
      FormCheck.require(
          Planar.orientation(outline.get(i), outline.get(next), middle) > 0,
          () ->
              Message.text(
                  side
                      + " is not seen from the middle of this outline, so that sides up to a point"
                      + " there would pass through each other: take a prism, or an outline whose"
                      + " middle sees all sides"));
      facets.add(Facet.of(side, List.of(i, next, n)));
    }
    return Form.of(corners, facets);
  }
}
