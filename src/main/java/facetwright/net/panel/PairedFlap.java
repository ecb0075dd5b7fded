package facetwright.net.panel;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.Join.Hold;
import facetwright.words.Site;
import java.util.List;

/**
 * One of the two flaps where both edges of a join bear one. Each is scored along the half of its
 * edge that lies left, looking from outside, so that the two never share a place. Glued, each is as
 * long as its score. As a hook it runs on along the other half, cut free of it: pushed into each
 * other's cut, the two hold without glue.
 *
 * @param depth how far it reaches, in mm
 * @param bevel how far its ends are cut back from square, in degrees; NaN for 45°, or what its
 *     depth leaves
 * @param hold {@link Hold#GLUE} or {@link Hold#HOOK}
 * @param relief of a hook: how wide its cut is, and how far its tip stays short of the end of the
 *     edge, in mm
 */
public record PairedFlap(double depth, double bevel, Hold hold, double relief) {
  /** As wide as heavy card is thick, with play: common practice, no source. */
  public static final double USUAL_RELIEF = 0.5;

  /** Of its half of the edge, a hook keeps at least so much at its far side. */
  private static final double LEAST_LEFT = 1.0 / 4;

  FlapShape shape(double length, String edge, Site site) {
    return new FlapShape.Own(corners(length, edge, site));
  }

  /**
   * Its corners, seen with the whole edge at the bottom, from its left end.
   *
   * @param edge what messages call the edge
   * @throws facetwright.net.NetException where nothing of it would be left
   */
  public List<Vec2> corners(double length, String edge, Site site) {
    Ask.length("the depth of a " + word(), depth, site);
    double half = length / 2;
    if (hold == Hold.GLUE) {
      FlapShape plain =
          Double.isNaN(bevel) ? new FlapShape.UsualTab(depth) : new FlapShape.Tapered(depth, bevel);
      return plain.corners(half, site);
    }
    double most = half * (1 - LEAST_LEFT);
    double wanted = Double.isNaN(bevel) ? depth : depth * Math.tan(Math.toRadians(bevel));
    double back = Double.isNaN(bevel) ? Math.min(wanted, most - relief) : wanted;
    Ask.that(
        depth > relief && relief + back <= most + LengthTolerance.FINE.mm() && back >= 0,
        () ->
            Message.of(
                "a hook on %s would have no tip left: its end is set back by %s in all, and may be"
                    + " by %s, and it has to reach past its cut; %s",
                edge,
                Value.limit(relief + wanted),
                Value.limit(most),
                Lean.mend(depth, relief, Double.isNaN(bevel) ? 0 : bevel, most)),
        site);
    return List.of(
        Vec2.ZERO,
        new Vec2(half, 0),
        new Vec2(half, relief),
        new Vec2(length - relief, relief),
        new Vec2(length - relief - back, depth),
        new Vec2(Math.min(back, half / 2), depth));
  }

  /** What a maker calls it. */
  public String word() {
    return hold.word();
  }
}
