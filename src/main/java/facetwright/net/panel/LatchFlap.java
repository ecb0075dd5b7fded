package facetwright.net.panel;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.Opening;
import facetwright.words.Site;
import java.util.List;

/**
 * A flap that closes an edge without glue: folded in behind the panel that its edge meets, it runs
 * to a slot there, and a tongue at its end comes out through the slot. Its shoulders stop at the
 * slot, so that it goes in no farther.
 *
 * @param depth how far the tongue reaches beyond the slot, in mm
 * @param inset how far the slot lies in from the edge, in mm
 * @param width how wide the tongue is, in mm; NaN for a third of its edge
 * @param slot how wide the slot is, in mm
 */
public record LatchFlap(double depth, double inset, double width, double slot) {
  /** The part of its edge that a tongue may take: the rest is for its shoulders. */
  private static final double WIDEST = 0.8;

  /** Of what stands beside the tongue, the shoulders keep so much at least. */
  private static final double SHOULDER = 0.2;

  private double wide(double length) {
    return Double.isNaN(width) ? length / 3 : width;
  }

  /**
   * Its corners, seen with the whole edge at the bottom, from its left end.
   *
   * @param edge what messages call the edge
   * @throws facetwright.net.NetException where there is no room for its shoulders
   */
  public List<Vec2> corners(double length, String edge, Site site) {
    Ask.length("the depth of a tongue", depth, site);
    double shoulder = inset - TongueFlap.PLAY;
    Ask.that(
        shoulder > TongueFlap.PLAY,
        () ->
            Message.of(
                "the slot for the tongue on %s lies %s in from the edge: %s or more are needed",
                edge, Value.given(inset), Value.limit(2 * TongueFlap.PLAY)),
        site);
    double wide = wide(length);
    Ask.that(
        wide <= WIDEST * length,
        () ->
            Message.of(
                "a tongue %s wide leaves no shoulders on %s, which is %s long: make it at most %s"
                    + " wide",
                Value.given(wide), edge, Value.limit(length), Value.atMost(WIDEST * length)),
        site);
    double left = (length - wide) / 2;
    double back = Math.min(shoulder, left * (1 - SHOULDER));
    double in = Math.min(depth * Math.tan(Math.toRadians(TongueFlap.LEAN)), wide / 3);
    return List.of(
        Vec2.ZERO,
        new Vec2(length, 0),
        new Vec2(length - back, shoulder),
        new Vec2(left + wide, shoulder),
        new Vec2(left + wide, inset),
        new Vec2(left + wide - in, inset + depth),
        new Vec2(left + in, inset + depth),
        new Vec2(left, inset),
        new Vec2(left, shoulder),
        new Vec2(back, shoulder));
  }

  /**
   * The slot in the panel that the edge meets.
   *
   * @param side the other panel's side that the edge meets, that panel on its left
   */
  public Opening.Slot opening(Segment2 side, Site site) {
    Vec2 along = side.direction();
    Vec2 middle = side.middle().plus(along.left().times(inset));
    Vec2 half = along.times(wide(side.length()) / 2 + TongueFlap.PLAY);
    return Opening.Slot.along(new Segment2(middle.minus(half), middle.plus(half)), slot, site);
  }
}
