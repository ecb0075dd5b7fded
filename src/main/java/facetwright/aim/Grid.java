package facetwright.aim;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import java.io.Serializable;

/** What dials are set by: a maker's ruler, or none. */
public sealed interface Grid extends Serializable {
  /** No ruler: any value will do. */
  record Any() implements Grid {}

  /**
   * The marks of a ruler.
   *
   * @param isUsual whether nobody asked for it, so that a finer one may be taken where it is too
   *     coarse for a dial
   */
  record Marks(Ruler ruler, boolean isUsual) implements Grid {}

  /** Values as they come. */
  static Grid none() {
    return new Any();
  }

  /** The marks of the usual ruler. */
  static Grid usual(Unit design) {
    return new Marks(Ruler.usual(design), true);
  }

  /**
   * Reads "1/16in", "0.5 mm" or "none".
   *
   * @param plain what a number without a unit counts
   * @throws IllegalArgumentException when it is neither
   */
  static Grid read(String text, Unit plain) {
    if (text.strip().equalsIgnoreCase("none")) {
      return none();
    }
    try {
      return new Marks(Ruler.parse(text, plain), false);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(e.getMessage() + ", or none", e);
    }
  }

  /** The ruler whose fractions a script in a unit is written with. */
  default Ruler written(Unit design) {
    return switch (this) {
      case Any _ -> Ruler.forSizes(design);
      case Marks marks -> marks.ruler();
    };
  }

  /**
   * How far apart the marks of a knob are by this ruler, in the knob's own numbers: its own steps
   * where it has them.
   *
   * @param design what the knob's numbers count
   */
  default double apart(Knob knob, Unit design) {
    return Divisions.of(knob, this, design).apart();
  }

  /** A knob's value as a person types it, as a ruler's fraction where it is one. */
  default String typed(Knob knob, Unit design, double value) {
    return Divisions.of(knob, this, design).typed(value);
  }
}
