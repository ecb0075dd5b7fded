package facetwright.fold.touch;

import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec3;
import facetwright.net.Opening;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.List;

/**
 * A panel in space.
 *
 * @param rings its outline, then its openings
 * @param normal of its outside, length 1
 */
record PosedPanel(List<List<Vec3>> rings, Vec3 normal) {
  /**
   * Normals whose cosine misses 1 by no more, which is some 8°, may be of one plane; whether what
   * they share lies in it decides.
   */
  private static final double PARALLEL = 0.01;

  /**
   * Of a plane's two sides that which this points to counts as above; no usual plane is along it.
   */
  static final Vec3 ASIDE = new Vec3(0.5377, 0.6191, 0.5721);

  static PosedPanel of(Panel panel, Motion3 pose) {
    List<List<Vec3>> rings = new ArrayList<>();
    rings.add(ring(panel.outline(), pose));
    for (Opening opening : panel.openings()) {
      rings.add(ring(opening.outline(), pose));
    }
    return new PosedPanel(rings, pose.ez().unit());
  }

  private static List<Vec3> ring(Polygon2 outline, Motion3 pose) {
    return outline.corners().stream().map(pose::apply).toList();
  }

  List<Vec3> outline() {
    return rings.getFirst();
  }

  Vec3 anchor() {
    return outline().getFirst();
  }

  /** A corner, counted on round. */
  Vec3 corner(int i) {
    return outline().get(i % outline().size());
  }

  /** Whether its outside is the upper side of its plane. */
  boolean isUp() {
    return normal.dot(ASIDE) > 0;
  }

  /** How far it reaches from a point in a direction, in mm. */
  double reach(Vec3 from, Vec3 way) {
    double most = Double.NEGATIVE_INFINITY;
    for (Vec3 corner : outline()) {
      most = Math.max(most, corner.minus(from).dot(way));
    }
    return most;
  }

  /**
   * Whether this panel and the other lie in one plane where one is over the other, whichever way
   * up. Panels that hardly slant may do so where they overlap, and stand apart elsewhere.
   */
  boolean liesOn(PosedPanel other, double by) {
    return 1 - Math.abs(normal.dot(other.normal)) <= PARALLEL
        && ((liesIn(other, by) && other.liesIn(this, by))
            || (!isClear(other, by)
                && !other.isClear(this, by)
                && Patch.of(this).isNear(this, other, by)));
  }

  /** Whether all of this panel is farther than this from the other's plane, on one side. */
  private boolean isClear(PosedPanel other, double by) {
    boolean isOver = true;
    boolean isUnder = true;
    for (Vec3 corner : outline()) {
      double above = other.above(corner);
      isOver &= above > by;
      isUnder &= above < -by;
    }
    return isOver || isUnder;
  }

  /** How far a point lies outside (positive) or inside this panel's plane, in mm. */
  double above(Vec3 p) {
    return p.minus(anchor()).dot(normal);
  }

  /** Whether all of this panel is as near as this to the other's plane. */
  boolean liesIn(PosedPanel other, double by) {
    for (Vec3 corner : outline()) {
      if (Math.abs(other.above(corner)) > by) {
        return false;
      }
    }
    return true;
  }

  /** Whether this panel reaches more than so far to both sides of the other's plane. */
  boolean straddles(PosedPanel other, double by) {
    boolean over = false;
    boolean under = false;
    for (Vec3 corner : outline()) {
      double above = other.above(corner);
      over |= above > by;
      under |= above < -by;
    }
    return over && under;
  }

  /**
   * Where card of this panel lies at a given distance above another's plane: stretches along a
   * direction that runs in both planes. A side counts from its lower end on and without its upper
   * end, so that a cut through a corner is counted once or twice or not at all, but never goes out
   * of step.
   *
   * @param o where the stretches are measured from
   */
  Spans section(PosedPanel other, double level, Vec3 o, Vec3 along) {
    int corners = rings.stream().mapToInt(List::size).sum();
    double[] places = new double[corners];
    int count = 0;
    for (List<Vec3> ring : rings) {
      Vec3 from = ring.getLast();
      double low = other.above(from) - level;
      for (Vec3 to : ring) {
        double high = other.above(to) - level;
        if (low > 0 != high > 0) {
          places[count++] = from.toward(to, low / (low - high)).minus(o).dot(along);
        }
        from = to;
        low = high;
      }
    }
    return Spans.between(places, count);
  }

  /**
   * How far this panel reaches through the other's plane over a stretch: the lesser of its reaches
   * above and below.
   */
  double reach(PosedPanel other, double start, double end, Vec3 o, Vec3 along) {
    double over = 0;
    double under = 0;
    Vec3 last = outline().getLast();
    for (Vec3 corner : outline()) {
      double a = last.minus(o).dot(along);
      double b = corner.minus(o).dot(along);
      if (Math.max(a, b) >= start && Math.min(a, b) <= end) {
        for (double at : new double[] {start, end}) {
          double part = a == b ? 0 : Math.clamp((at - a) / (b - a), 0, 1);
          double above = other.above(last.toward(corner, part));
          over = Math.max(over, above);
          under = Math.max(under, -above);
        }
        for (Vec3 tip : new Vec3[] {last, corner}) {
          double s = tip.minus(o).dot(along);
          if (s >= start && s <= end) {
            over = Math.max(over, other.above(tip));
            under = Math.max(under, -other.above(tip));
          }
        }
      }
      last = corner;
    }
    return Math.min(over, under);
  }
}
