package facetwright.net.fitting;

import java.io.Serializable;

/**
 * Words on a panel.
 *
 * @param panel its number
 * @param asked what stands there
 * @param up which way is up when it is read on the made form: an angle from the direction of the
 *     panel's first side, in radians, counter-clockwise seen on the outside; {@link #AS_IT_LIES}
 *     where it is not known how the panel stands
 */
public record Label(int panel, Lettered asked, double up) implements Serializable {
  /** Up as in the flat net. */
  public static final double AS_IT_LIES = Double.NaN;

  /** One of which nothing is known yet of how its panel stands. */
  public Label(int panel, Lettered asked) {
    this(panel, asked, AS_IT_LIES);
  }

  /** Of the panel's mirror image, whose first side runs the other way. */
  Label mirrored() {
    return new Label(panel, asked, Math.PI - up);
  }

  /** The same, up this way. */
  public Label up(double angle) {
    return new Label(panel, asked, angle);
  }
}
