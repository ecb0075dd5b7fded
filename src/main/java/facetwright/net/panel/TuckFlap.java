package facetwright.net.panel;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.List;

/**
 * A flap to be tucked in: it is set back from both ends of its hinge, so that it does not jam
 * between the walls beside it, and grows narrower, so that it finds its way in.
 *
 * @param depth how far it reaches in, in mm
 * @param relief how far it is set back at each end of its hinge, in mm
 * @param bevel how far its sides lean in, in degrees from square
 * @param radius of the arcs at its far corners, by which it finds its way in, in mm; NaN for the
 *     usual, 0 for none
 * @param fold how far its hinge is folded
 */
public record TuckFlap(double depth, double relief, double bevel, double radius, FoldAngle fold) {
  /** Set back by so much: common practice, no source. */
  public static final double USUAL_RELIEF = 1.5;

  /** Sides that lean in by so much: common practice, no source. */
  public static final double USUAL_BEVEL = 10;

  /** Its far corners are rounded by this part of its depth: common practice, no source. */
  private static final double USUAL_ROUND = 1.0 / 3;

  /** By no more than this, in mm. */
  private static final double MOST_ROUND = 5;

  /** Of its far side each arc takes so much at most where no radius is said. */
  private static final double OF_FAR_SIDE = 0.4;

  /** The part of its hinge that a flap keeps at its far side at least. */
  private static final double LEAST_LEFT = 1.0 / 3;

  FlapShape shape(double width, String hinge, Site site) {
    return new FlapShape.Own(corners(width, hinge, site));
  }

  /**
   * Rounds the far corners of the flap made.
   *
   * @param flap with the corners of {@link #corners}, its hinge first
   * @throws facetwright.net.NetException where a radius said finds no room
   */
  public void round(PanelDraft flap, Site site) {
    EdgeDraft side = flap.edge(1);
    EdgeDraft far = flap.edge(2);
    EdgeDraft other = flap.edge(3);
    double turn = Math.toRadians(90 - bevel);
    double room = OF_FAR_SIDE * far.length() / Math.tan(turn / 2);
    double by =
        Double.isNaN(radius) ? Math.min(Math.min(depth * USUAL_ROUND, MOST_ROUND), room) : radius;
    if (by > 0) {
      FreeCorner near = new FreeCorner(side, far);
      FreeCorner next = new FreeCorner(far, other);
      FreeCorner.refuse(List.of(near, next), flap.name(), by, site);
      near.round(flap, by);
      next.round(flap, by);
    }
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
        relief >= 0 && in <= most + LengthTolerance.FINE.mm(),
        () ->
            Message.of(
                "the tuck on %s would be narrower than a third of its hinge: its sides are set"
                    + " back by %s in all, and may be by %s; %s",
                hinge, Value.limit(in), Value.limit(most), Lean.mend(depth, relief, bevel, most)),
        site);
    return List.of(
        new Vec2(relief, 0),
        new Vec2(width - relief, 0),
        new Vec2(width - in, depth),
        new Vec2(in, depth));
  }
}
