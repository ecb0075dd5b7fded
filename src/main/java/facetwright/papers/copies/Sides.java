package facetwright.papers.copies;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The sides of outlines. */
final class Sides {
  private Sides() {}

  /** Every side of every outer ring, by its two ends. */
  static List<List<Coordinate>> of(Geometry shape) {
    List<List<Coordinate>> sides = new ArrayList<>();
    for (int n = 0; n < shape.getNumGeometries(); n++) {
      if (shape.getGeometryN(n) instanceof Polygon p) {
        Coordinate[] ring = p.getExteriorRing().getCoordinates();
        for (int i = 0; i + 1 < ring.length; i++) {
          sides.add(List.of(ring[i], ring[i + 1]));
        }
      }
    }
    return sides;
  }
}
