package facetwright.cli.desk;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;

/** The ruler that a command is asked to measure by. */
public final class Rulers {
  /** What {@link Ruler#usual} says, in an option's words, which have to be constant. */
  public static final String USUAL = "usual: 1/16 in for designs in inches, else 0.5 mm";

  private Rulers() {}

  /** The ruler that was asked for, or the usual one where nothing was written. */
  public static Ruler asked(String written, Unit unit) {
    if (written.isEmpty()) {
      return Ruler.usual(unit);
    }
    try {
      return Ruler.parse(written, unit);
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--ruler: " + e.getMessage() + ".");
    }
  }
}
