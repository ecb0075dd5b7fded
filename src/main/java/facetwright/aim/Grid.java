package facetwright.aim;

import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import java.io.Serializable;
import java.util.Locale;
import java.util.Optional;

/**
 * The distance between two lines of the maker's ruler.
 *
 * @param unit what the ruler counts
 * @param division the distance in that unit; 0 for no ruler
 * @param isUsual whether nobody asked for it, so that a finer one may be taken where it is too
 *     coarse for a dial
 */
public record Grid(Unit unit, double division, boolean isUsual) implements Serializable {
  /** Values as they come. */
  public static final Grid NONE = new Grid(Unit.MM, 0, false);

  private static final double SIXTEENTH = 1.0 / 16;
  private static final double HALF = 0.5;

  /** Sixteenths of an inch for a design in inches, half millimetres for others. */
  public static Grid usual(Unit design) {
    return design == Unit.INCH
        ? new Grid(Unit.INCH, SIXTEENTH, true)
        : new Grid(Unit.MM, HALF, true);
  }

  /**
   * Reads "1/16in", "0.5 mm" or "none".
   *
   * @param plain what a number without a unit counts
   * @throws IllegalArgumentException when it is neither
   */
  public static Grid read(String text, Unit plain) {
    if (text.strip().equalsIgnoreCase("none")) {
      return NONE;
    }
    Length length;
    try {
      length = Length.parse(text, plain);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(wanted(text), e);
    }
    if (!(length.mm() >= 0.01 && length.mm() <= 100)) {
      throw new IllegalArgumentException(wanted(text));
    }
    String end = text.strip().toLowerCase(Locale.ROOT);
    Unit unit =
        end.endsWith("mm")
            ? Unit.MM
            : end.endsWith("cm") ? Unit.CM : end.matches(".*\\d") ? plain : Unit.INCH;
    return new Grid(unit, length.in(unit), false);
  }

  /** The ruler that has these lines for its marks; empty where none has. */
  public Optional<Ruler> ruler() {
    return Ruler.withMarks(division, unit);
  }

  /** The ruler whose fractions a script in a unit is written with. */
  public Ruler written(Unit design) {
    return ruler().orElse(new Ruler(design, design == Unit.INCH ? 16 : 10));
  }

  /**
   * How far apart the marks of a knob are by this ruler, in the knob's own numbers: its own steps
   * where it has them.
   *
   * @param design what the knob's numbers count
   */
  public double apart(Knob knob, Unit design) {
    return Divisions.of(knob, this, design).apart();
  }

  /** A knob's value as a person types it, as a ruler's fraction where it is one. */
  public String typed(Knob knob, Unit design, double value) {
    return Divisions.of(knob, this, design).typed(value);
  }

  private static String wanted(String text) {
    return "\""
        + text
        + "\" is no ruler: give the distance between two lines of your ruler, such as \"1/16 in\""
        + " or \"0.5 mm\", or none";
  }
}
