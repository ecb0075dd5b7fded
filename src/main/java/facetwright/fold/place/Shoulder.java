package facetwright.fold.place;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * How far behind its foremost end what goes into an opening is as wide as its outline: at once for
 * a box, a spike's height behind its tip where a spike stands on the box.
 *
 * @param outline of what goes in, as its frame sees it
 * @param skin the part that goes in
 * @param frame looking along the way it goes
 */
record Shoulder(Polygon2 outline, Skin skin, Frame frame) {

  /**
   * How far an opening that it has gone into so deep stays from where it is so wide, in mm; 0 where
   * it goes past that anywhere.
   */
  double off(double depth) {
    double foremost = skin.reach(frame.axis());
    List<Vec2> round = round();
    double least = Double.POSITIVE_INFINITY;
    for (List<Vec3> ring : rings()) {
      for (Vec3 corner : ring) {
        Vec2 flat = frame.flat(corner);
        if (round.stream().anyMatch(c -> c.distance(flat) <= Room.LEAST.mm())) {
          least = Math.min(least, foremost - frame.depth(corner));
        }
      }
    }
    return Double.isInfinite(least) ? 0 : Math.max(0, least - depth);
  }

  /**
   * How much narrower it is where the opening comes to be, in mm on the side where it is so least;
   * 0 where the opening goes past its shoulder.
   */
  double slack(double depth) {
    if (off(depth) <= Room.LEAST.mm()) {
      return 0;
    }
    Geometry there = hull(section(skin.reach(frame.axis()) - depth));
    return round().stream()
        .mapToDouble(c -> Planar.factory().createPoint(Planar.coordinate(c)).distance(there))
        .min()
        .orElse(0);
  }

  /** Its outermost corners. */
  private List<Vec2> round() {
    return Arrays.stream(hull(outline.corners()).getCoordinates())
        .map(c -> new Vec2(c.x, c.y))
        .toList();
  }

  private List<List<Vec3>> rings() {
    List<List<Vec3>> rings = new ArrayList<>(skin.faces());
    skin.mouths().forEach(m -> rings.add(m.ring()));
    return rings;
  }

  private static Geometry hull(List<Vec2> places) {
    return Planar.factory()
        .createMultiPointFromCoords(
            places.stream().map(Planar::coordinate).toArray(Coordinate[]::new))
        .convexHull();
  }

  /** Where its faces go through a plane square to the way it goes. */
  private List<Vec2> section(double at) {
    List<Vec2> places = new ArrayList<>();
    for (List<Vec3> ring : rings()) {
      for (int i = 0; i < ring.size(); i++) {
        Vec3 here = ring.get(i);
        Vec3 next = ring.get((i + 1) % ring.size());
        double a = frame.depth(here) - at;
        double b = frame.depth(next) - at;
        if (a == 0) {
          places.add(frame.flat(here));
        } else if (a < 0 != b < 0 && b != 0) {
          places.add(frame.flat(here.toward(next, a / (a - b))));
        }
      }
    }
    return places;
  }
}
