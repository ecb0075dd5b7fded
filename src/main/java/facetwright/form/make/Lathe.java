package facetwright.form.make;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import java.util.ArrayList;
import java.util.List;

/** A profile turned about the z axis in flat steps. */
final class Lathe {
  private static final int MOST_POINTS = 200;

  private Lathe() {}

  static Form form(List<Vec2> profile, int sides) {
    check(profile);
    List<Vec3> corners = new ArrayList<>();
    List<List<Integer>> rings = new ArrayList<>();
    for (Vec2 point : profile) {
      List<Integer> ring = new ArrayList<>();
      int count = point.x() == 0 ? 1 : sides;
      for (int i = 0; i < count; i++) {
        ring.add(corners.size());
        corners.add(
            count == 1
                ? new Vec3(0, 0, point.y())
                : Ring.corner(sides, point.x(), point.y(), i, 0));
      }
      rings.add(ring);
    }
    List<Facet> facets = new ArrayList<>();
    if (rings.getFirst().size() > 1) {
      facets.add(Facet.of("base", rings.getFirst().reversed()));
    }
    for (int row = 0; row + 1 < rings.size(); row++) {
      String name = rings.size() == 2 ? "" : "row " + (row + 1) + " ";
      for (int i = 0; i < sides; i++) {
        facets.add(
            Facet.of(name + "side " + (i + 1), side(rings.get(row), rings.get(row + 1), i, sides)));
      }
    }
    if (rings.getLast().size() > 1) {
      facets.add(Facet.of("top", rings.getLast()));
    }
    return Form.of(corners, facets);
  }

  private static List<Integer> side(List<Integer> low, List<Integer> high, int i, int sides) {
    int next = (i + 1) % sides;
    if (low.size() == 1) {
      return List.of(low.getFirst(), high.get(next), high.get(i));
    }
    if (high.size() == 1) {
      return List.of(low.get(i), low.get(next), high.getFirst());
    }
    return List.of(low.get(i), low.get(next), high.get(next), high.get(i));
  }

  private static void check(List<Vec2> profile) {
    int n = profile.size();
    FormCheck.require(
        n >= 2 && n <= MOST_POINTS, "a profile has 2 to " + MOST_POINTS + " points, not " + n);
    for (int i = 0; i < n; i++) {
      Vec2 p = profile.get(i);
      String which = "point " + (i + 1) + " of the profile ";
      FormCheck.require(
          p.x() >= 0 && p.x() <= Ask.LONGEST && Math.abs(p.y()) <= Ask.LONGEST,
          () ->
              Message.of(
                  "%shas a radius over %s or under 0, or lies too high or low",
                  which, Value.given(Ask.LONGEST)));
      FormCheck.require(
          p.x() > 0 || i == 0 || i == n - 1,
          which + "touches the axis: only the first and the last point may have radius 0");
      FormCheck.require(
          i == 0 || !LengthTolerance.FINE.same(p, profile.get(i - 1)),
          which + "repeats the one before: leave it out");
    }
    FormCheck.require(
        n > 2 || profile.getFirst().x() > 0 || profile.getLast().x() > 0,
        "a profile of two points needs a radius over 0");
    FormCheck.require(
        !crosses(profile), "the profile crosses itself: list its points from bottom to top");
  }

  private static boolean crosses(List<Vec2> p) {
    for (int i = 0; i + 1 < p.size(); i++) {
      for (int j = i + 2; j + 1 < p.size(); j++) {
        if (apart(p.get(i), p.get(i + 1), p.get(j), p.get(j + 1))
            && apart(p.get(j), p.get(j + 1), p.get(i), p.get(i + 1))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether c and d lie on two sides of the line through a and b, or on it. */
  private static boolean apart(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    Vec2 along = b.minus(a);
    return along.cross(c.minus(a)) * along.cross(d.minus(a)) <= 0;
  }
}
