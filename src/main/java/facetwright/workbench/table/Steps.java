package facetwright.workbench.table;

import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.workbench.desk.Selection;
import java.util.List;

/** The way from one thing of a net to the next, for those who go by keys. */
record Steps(Net net) {
  /** What lies across the way counts so many times as much as what lies along it. */
  private static final double ASIDE = 2;

  /** The next panel in the order in which they were made, or the one before; round and round. */
  Selection panel(Selection from, int by) {
    int now = from instanceof Selection.OfPanel(int p) ? p : by > 0 ? -1 : 0;
    return new Selection.OfPanel(Math.floorMod(now + by, net.panels().size()));
  }

  /** The next score, or the one before; where there is none, what was selected stays. */
  Selection score(Selection from, int by) {
    int now = from instanceof Selection.OfScore(int s) ? s : by > 0 ? -1 : 0;
    return net.scores().isEmpty()
        ? from
        : new Selection.OfScore(Math.floorMod(now + by, net.scores().size()));
  }

  /** All corners of panels. */
  private List<Vec2> corners() {
    return net.panels().stream().flatMap(p -> p.outline().corners().stream()).toList();
  }

  /** The corner nearest to a place. */
  Vec2 nearest(Vec2 place) {
    return corners().stream()
        .min((a, b) -> Double.compare(a.distance(place), b.distance(place)))
        .orElse(place);
  }

  /**
   * The nearest corner on a way, or the corner one is at where there is none.
   *
   * @param way a unit vector
   * @param least how far off it has to be, in mm
   */
  Vec2 corner(Vec2 from, Vec2 way, double least) {
    Vec2 found = from;
    double shortest = Double.POSITIVE_INFINITY;
    for (Vec2 corner : corners()) {
      Vec2 off = corner.minus(from);
      double along = off.dot(way);
      double aside = Math.abs(off.cross(way));
      double far = along + ASIDE * aside;
      if (along > least && aside <= along * ASIDE && far < shortest) {
        found = corner;
        shortest = far;
      }
    }
    return found;
  }

  /** The middle of what is selected; nothing's middle is the net's. */
  Vec2 middle(Selection selection) {
    return switch (selection) {
      case Selection.OfPanel(int p) when p < net.panels().size() ->
          net.panels().get(p).outline().centroid();
      case Selection.OfScore(int s) when s < net.scores().size() ->
          net.segment(net.scores().get(s).a()).middle();
      default -> net.box().centre();
    };
  }

  /** What is selected, as a spot of the net. */
  static Spot spot(Selection selection) {
    return switch (selection) {
      case Selection.OfPanel(int p) -> new Spot.OnPanel(p);
      case Selection.OfScore(int s) -> new Spot.OnScore(s);
      default -> new Spot.Bare();
    };
  }
}
