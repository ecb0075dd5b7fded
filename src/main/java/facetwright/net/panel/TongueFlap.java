package facetwright.net.panel;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.net.Opening;
import facetwright.words.Site;
import java.util.List;

/**
 * A tongue that goes through a slot in another panel and is folded over outside it.
 *
 * @param width how wide it is where it goes through, in mm; NaN for a third of its edge
 * @param depth how far it reaches, in mm
 * @param at where its middle is along its edge, from the left, in mm; NaN for the middle
 * @param inset how far the slot lies in from the other panel's edge, in mm
 * @param slot how wide the slot is, in mm
 * @param fold how far the tongue is folded over
 */
public record TongueFlap(
    double width, double depth, double at, double inset, double slot, FoldAngle fold) {
  /** A slot is longer than its tongue by this at each end, in mm: common practice, no source. */
  public static final double PLAY = 0.5;

  /** A tongue's sides lean in by so much, in degrees: common practice, no source. */
  static final double LEAN = 15;

  private double wide(CardEdge edge) {
    return Double.isNaN(width) ? edge.length() / 3 : width;
  }

  private double middle(CardEdge edge) {
    return Double.isNaN(at) ? edge.length() / 2 : at;
  }

  FlapShape shape(CardEdge edge, Site site) {
    Ask.length("the depth of a tongue", depth, site);
    double wide = Ask.length("the width of a tongue", wide(edge), edge.length(), site);
    double least = wide / 2;
    Ask.that(
        middle(edge) >= least && middle(edge) <= edge.length() - least,
        () ->
            Message.of(
                "a tongue %s wide reaches past the end of %s: its middle lies from %s to %s along"
                    + " it",
                Value.given(wide),
                edge.name(),
                Value.limit(least),
                Value.limit(edge.length() - least)),
        site);
    double left = middle(edge) - least;
    double in = Math.min(depth * Math.tan(Math.toRadians(LEAN)), wide / 3);
    return new FlapShape.Own(
        List.of(
            new Vec2(left, 0),
            new Vec2(left + wide, 0),
            new Vec2(left + wide - in, depth),
            new Vec2(left + in, depth)));
  }

  /**
   * The slot: along the other panel's edge, on which this one's is centred, and inside of it.
   *
   * @param edge the edge that bears the tongue
   */
  Opening.Slot opening(CardEdge edge, CardEdge other, Site site) {
    Ask.length("how far in a slot lies", inset, site);
    Ask.length("the width of a slot", slot, site);
    Segment2 line = other.whole();
    Vec2 along = line.direction();
    Vec2 middle =
        line.middle()
            .plus(along.times(middle(edge) - edge.length() / 2))
            .plus(along.left().times(inset));
    Vec2 half = along.times(wide(edge) / 2 + PLAY);
    return Opening.Slot.along(new Segment2(middle.minus(half), middle.plus(half)), slot, site);
  }
}
