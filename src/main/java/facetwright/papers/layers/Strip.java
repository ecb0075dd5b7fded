package facetwright.papers.layers;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A strip of equal triangles, points up and down in turn. Each triangle is the one before it turned
 * half round, so none is mirrored. The cuts between run from tick to tick, edge to edge in turn.
 *
 * @param base the side of the triangle that lies along an edge of the strip, in mm
 * @param height of the triangle and of the strip, in mm
 * @param lead how far along the other edge the first tick stands, 0 to half the base
 * @param startsBelow whether the first triangle stands on the lower edge
 * @param triangles how many
 */
public record Strip(double base, double height, double lead, boolean startsBelow, int triangles) {

  /**
   * The strip for a triangle standing on one of its sides, or none where a corner would hang over
   * the end of that side.
   *
   * @param side the side that lies along the edge
   */
  static Optional<Strip> of(Polygon2 triangle, int side, int triangles) {
    Vec2 from = triangle.corner(side);
    Vec2 along = triangle.corner(side + 1).minus(from);
    Vec2 point = triangle.corner(side + 2).minus(from);
    double base = along.length();
    double foot = along.dot(point) / base;
    if (foot < -RoundOff.PART * base || foot > base * (1 + RoundOff.PART)) {
      return Optional.empty();
    }
    double clear = Math.clamp(foot, 0, base);
    return Optional.of(
        new Strip(
            base,
            along.cross(point) / base,
            Math.min(clear, base - clear),
            clear <= base / 2,
            triangles));
  }

  /** As many triangles as fit a length; 0 where none does. */
  Strip filling(double length) {
    int most = (int) Math.floor(2 * (length + LengthTolerance.FINE.mm()) / base);
    Strip strip = new Strip(base, height, lead, startsBelow, most);
    while (strip.triangles > 0 && strip.length() > length + LengthTolerance.FINE.mm()) {
      strip = strip.with(strip.triangles - 1);
    }
    return strip;
  }

  Strip with(int other) {
    return new Strip(base, height, lead, startsBelow, other);
  }

  /** How long the strip has to be, in mm. */
  public double length() {
    return Math.max(place(triangles), place(triangles + 1));
  }

  /** Where the cuts begin and end, from the left end of the strip, edges in turn, in mm. */
  private double place(int tick) {
    return Math.floorDiv(tick, 2) * base + (tick % 2 == 0 ? 0 : lead);
  }

  /** The places of all ticks in turn, as points of the strip with its lower left corner at 0, 0. */
  public List<Vec2> points() {
    List<Vec2> points = new ArrayList<>();
    for (int tick = 0; tick < triangles + 2; tick++) {
      points.add(new Vec2(place(tick), tick % 2 == 0 == startsBelow ? 0 : height));
    }
    return List.copyOf(points);
  }

  /** Distances of the ticks on the lower edge from its left end, in mm. */
  public List<Double> below() {
    return points().stream().filter(p -> p.y() == 0).map(Vec2::x).toList();
  }

  /** Distances of the ticks on the upper edge from its left end, in mm. */
  public List<Double> above() {
    return points().stream().filter(p -> p.y() > 0).map(Vec2::x).toList();
  }

  /** Left over at both ends, in mm². */
  public double waste() {
    return length() * height - triangles * base * height / 2;
  }
}
