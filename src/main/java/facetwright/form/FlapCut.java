package facetwright.form;

import java.io.Serializable;

/**
 * How a flap that holds without glue is cut; what it has not is 0. Measures in mm.
 *
 * @param relief how far a tuck is set back at the ends of its side, or how wide the cut of a hook
 *     is
 * @param radius of the arcs at the far corners of a tuck; NaN for the usual
 * @param inset how far the slot of a tongue lies in from the side
 * @param width how wide a tongue is; NaN for the usual
 * @param slot how wide its slot is
 */
public record FlapCut(double relief, double radius, double inset, double width, double slot)
    implements Serializable {
  /** A plain flap. */
  public static final FlapCut PLAIN = new FlapCut(0, 0, 0, 0, 0);

  /** A tuck. */
  public static FlapCut tuck(double relief, double radius) {
    return new FlapCut(relief, radius, 0, 0, 0);
  }

  /** A hook. */
  public static FlapCut hook(double relief) {
    return new FlapCut(relief, 0, 0, 0, 0);
  }

  /** A tongue. */
  public static FlapCut tongue(double inset, double width, double slot) {
    return new FlapCut(0, 0, inset, width, slot);
  }
}
