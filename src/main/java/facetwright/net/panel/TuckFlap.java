package facetwright.net.panel;

import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.words.Site;
import java.util.List;

/**
 * A flap to be tucked in: it is set back from both ends of its hinge, so that it does not jam
 * between the walls beside it, and grows narrower, so that it finds its way in.
 *
 * @param depth how far it reaches in, in mm
 * @param relief how far it is set back at each end of its hinge, in mm
 * @param bevel how far its sides lean in, in degrees from square
 * @param fold how far its hinge is folded
 */
public record TuckFlap(double depth, double relief, double bevel, FoldAngle fold) {
  /** Set back by so much: common practice, no source. */
  public static final double USUAL_RELIEF = 1.5;

  /** Sides that lean in by so much: common practice, no source. */
  public static final double USUAL_BEVEL = 10;

  /** The part of its hinge that a flap keeps at its far side at least. */
  private static final double LEAST_LEFT = 1.0 / 3;

  FlapShape shape(double width, String hinge, Site site) {
    return new FlapShape.Own(corners(width, hinge, site));
  }

  /**
   * Its corners, seen with the whole edge at the bottom, from its left end.
   *
   * @param hinge what messages call the edge
   * @throws facetwright.net.NetException where it would be too narrow
   */
  public List<Vec2> corners(double width, String hinge, Site site) {
    Ask.length("the depth of a tuck", depth, site);
    double in = relief + depth * Math.tan(Math.toRadians(bevel));
    double most = width * (1 - LEAST_LEFT) / 2;
    Ask.that(
        relief >= 0 && in <= most,
        () ->
            Message.of(
                "the tuck on %s would be narrower than a third of its hinge: its sides are set"
                    + " back by %s in all, and may be by %s; take less depth, relief or bevel",
                hinge, Value.limit(in), Value.limit(most)),
        site);
    return List.of(
        new Vec2(relief, 0),
        new Vec2(width - relief, 0),
        new Vec2(width - in, depth),
        new Vec2(in, depth));
  }
}
