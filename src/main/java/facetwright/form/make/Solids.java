package facetwright.form.make;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.form.FormException;
import facetwright.form.Limits;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Makes forms to start from. They stand on z = 0 about the z axis with side 1 at the front (−y),
 * and their facets are named "base", "top" and "side 1", "side 2", … counter-clockwise from above;
 * where there is more than one row, "row 1 side 1" from the bottom up. Numbers of sides lie in 3 to
 * 64, lengths are over 0 and up to 10 000 mm.
 *
 * <p>A <em>radius</em> runs from the axis to a corner; the {@code …BySide} makers take the side of
 * the polygon instead.
 */
public final class Solids {
  private Solids() {}

  public static Form prism(int sides, double radius, double height) {
    return frustum(sides, radius, radius, height);
  }

  public static Form prismBySide(int sides, double side, double height) {
    return prism(sides, radiusOf(sides, side), height);
  }

  /** A box: a prism over a rectangle, its front {@code width} wide. */
  public static Form box(double width, double depth, double height) {
    Limits.length("the width", width);
    Limits.length("the depth", depth);
    Limits.length("the height", height);
    List<Vec3> corners = new ArrayList<>();
    for (double z : new double[] {0, height}) {
      corners.add(new Vec3(-width / 2, -depth / 2, z));
      corners.add(new Vec3(width / 2, -depth / 2, z));
      corners.add(new Vec3(width / 2, depth / 2, z));
      corners.add(new Vec3(-width / 2, depth / 2, z));
    }
    List<Facet> facets = new ArrayList<>();
    facets.add(Facet.of("base", List.of(3, 2, 1, 0)));
    for (int i = 0; i < 4; i++) {
      int next = (i + 1) % 4;
      facets.add(Facet.of("side " + (i + 1), List.of(i, next, next + 4, i + 4)));
    }
    facets.add(Facet.of("top", List.of(4, 5, 6, 7)));
    return Form.of(corners, facets);
  }

  public static Form pyramid(int sides, double radius, double height) {
    Limits.sides(sides);
    Limits.length("the radius", radius);
    Limits.length("the height", height);
    return turned(List.of(new Vec2(radius, 0), new Vec2(0, height)), sides);
  }

  public static Form pyramidBySide(int sides, double side, double height) {
    return pyramid(sides, radiusOf(sides, side), height);
  }

  /** A pyramid cut off level. */
  public static Form frustum(int sides, double bottomRadius, double topRadius, double height) {
    Limits.sides(sides);
    Limits.length("the bottom radius", bottomRadius);
    Limits.length("the top radius", topRadius);
    Limits.length("the height", height);
    return turned(List.of(new Vec2(bottomRadius, 0), new Vec2(topRadius, height)), sides);
  }

  public static Form frustumBySide(int sides, double bottomSide, double topSide, double height) {
    return frustum(sides, radiusOf(sides, bottomSide), radiusOf(sides, topSide), height);
  }

  /** Two pyramids base to base, each {@code height} high; it stands on a point. */
  public static Form bipyramid(int sides, double radius, double height) {
    Limits.sides(sides);
    Limits.length("the radius", radius);
    Limits.length("the height", height);
    return turned(
        List.of(new Vec2(0, 0), new Vec2(radius, height), new Vec2(0, 2 * height)), sides);
  }

  public static Form bipyramidBySide(int sides, double side, double height) {
    return bipyramid(sides, radiusOf(sides, side), height);
  }

  /** Two polygons turned half a step against each other, with a belt of triangles. */
  public static Form antiprism(int sides, double radius, double height) {
    Limits.sides(sides);
    Limits.length("the radius", radius);
    Limits.length("the height", height);
    List<Vec3> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      corners.add(Ring.corner(sides, radius, 0, i, 0));
    }
    for (int i = 0; i < sides; i++) {
      corners.add(Ring.corner(sides, radius, height, i, 0.5));
    }
    List<Facet> facets = new ArrayList<>();
    facets.add(Facet.of("base", IntStream.range(0, sides).boxed().toList().reversed()));
    for (int i = 0; i < sides; i++) {
      int next = (i + 1) % sides;
      facets.add(Facet.of("side " + (2 * i + 1), List.of(i, next, sides + i)));
      facets.add(Facet.of("side " + (2 * i + 2), List.of(next, sides + next, sides + i)));
    }
    facets.add(Facet.of("top", IntStream.range(sides, 2 * sides).boxed().toList()));
    return Form.of(corners, facets);
  }

  public static Form antiprismBySide(int sides, double side, double height) {
    return antiprism(sides, radiusOf(sides, side), height);
  }

  /**
   * A profile turned about the z axis in a number of flat steps. A radius of 0 at the first or the
   * last point closes the form to a point there; otherwise a level "base" or "top" closes it.
   *
   * @param profile points from bottom to top: x is the radius through the corners, y the height
   */
  public static Form turned(List<Vec2> profile, int sides) {
    Limits.sides(sides);
    return Lathe.form(profile, sides);
  }

  /**
   * The convex hull of points, facets in one plane made one. Facets are named "facet 1", "facet 2",
   * ….
   *
   * @throws FormException when all points lie in one plane, or are fewer than 4 or more than 2000
   */
  public static Form hull(List<Vec3> points) {
    return Hull.form(points);
  }

  /**
   * A form given facet by facet. Corners at one place count as one. Facets are named "facet 1",
   * "facet 2", ….
   *
   * @param facets indices into the corners, counter-clockwise seen from outside
   */
  public static Form mesh(List<Vec3> corners, List<List<Integer>> facets) {
    Map<Vec3, Integer> first = new LinkedHashMap<>();
    for (int i = 0; i < corners.size(); i++) {
      first.putIfAbsent(corners.get(i).plus(Vec3.ZERO), i);
    }
    List<Facet> all = new ArrayList<>();
    for (List<Integer> facet : facets) {
      String name = "facet " + (all.size() + 1);
      List<Integer> welded = new ArrayList<>();
      for (int c : facet) {
        FormCheck.require(
            c >= 0 && c < corners.size(),
            name + " names corner " + c + ", but corners run from 0 to " + (corners.size() - 1));
        welded.add(first.get(corners.get(c).plus(Vec3.ZERO)));
      }
      all.add(Facet.of(name, welded));
    }
    return Form.of(corners, all);
  }

  private static double radiusOf(int sides, double side) {
    Limits.sides(sides);
    Limits.length("the side", side);
    return Ring.radius(sides, side);
  }
}
