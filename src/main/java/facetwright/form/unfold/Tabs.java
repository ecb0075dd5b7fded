package facetwright.form.unfold;

import facetwright.form.FormCheck;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.draft.UsualTab;
import facetwright.words.Decimals;
import java.io.Serializable;

/**
 * How tabs are made.
 *
 * @param on whether there are any
 * @param depth how far a tab reaches under its neighbour, in mm
 * @param bevel the angle between the glued edge and a tab's slanted end, in degrees, 5 to 90; ends
 *     are slanted further where they would clash or show
 * @param minDepth a tab that would have to be narrower than this is left out, in mm
 */
public record Tabs(boolean on, double depth, double bevel, double minDepth)
    implements Serializable {
  /** As tabs are cut usually, none under 3 mm deep: common practice, no source. */
  public static final Tabs USUAL = new Tabs(true, UsualTab.DEPTH, UsualTab.BEVEL, 3);

  public static final Tabs NONE = new Tabs(false, USUAL.depth, USUAL.bevel, USUAL.minDepth);

  public Tabs {
    FormCheck.require(
        depth >= 1 && depth <= 200,
        () ->
            Message.of(
                "a tab is %s to %s deep, not %s",
                Value.given(1), Value.given(200), Value.given(depth)));
    FormCheck.require(
        bevel >= 5 && bevel <= 90, "a tab's bevel lies in 5° to 90°, not " + Decimals.plain(bevel));
    FormCheck.require(
        minDepth > 0 && minDepth <= depth,
        "the least depth of a tab is over 0 and at most its depth, not "
            + Decimals.plain(minDepth));
  }

  /** The usual tabs with another depth in mm. */
  public static Tabs deep(double depth) {
    return new Tabs(true, depth, USUAL.bevel, Math.min(USUAL.minDepth, depth));
  }

  public Tabs withBevel(double degrees) {
    return new Tabs(on, depth, degrees, minDepth);
  }
}
