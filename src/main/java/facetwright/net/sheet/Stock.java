package facetwright.net.sheet;

import facetwright.words.Decimals;
import java.io.Serializable;

/**
 * The paper a net is cut from.
 *
 * @param name such as "A4", or the measures where it has no name
 * @param width of the sheet as it lies, in mm
 * @param height of the sheet as it lies, in mm
 * @param weight in g/m²
 * @param caliper thickness in mm
 * @param grain which way the fibres run
 * @param colour what its maker calls it by, such as "navy"; empty where nobody says
 */
public record Stock(
    String name,
    double width,
    double height,
    double weight,
    double caliper,
    Grain grain,
    String colour)
    implements Serializable {

  /** The direction of the fibres: card folds more cleanly along it. */
  public enum Grain {
    LONG,
    SHORT,
    UNKNOWN
  }

  /** The weight of card where nobody says which, in g/m²; common practice, no source. */
  public static final double USUAL_WEIGHT = 220;

  /** Thickness per weight of smooth uncoated card, cm³/g; common practice, no source. */
  public static final double USUAL_BULK = 1.25;

  /** Room across that slides well beyond what the card takes, in mm; common practice, no source. */
  public static final double PLAY = 0.5;

  /**
   * @throws IllegalArgumentException when a measure is not over 0
   */
  public Stock {
    if (!(width > 0 && height > 0 && weight > 0 && caliper > 0)) {
      throw new IllegalArgumentException("a sheet's measures, weight and caliper must be over 0");
    }
  }

  /** Card of which nobody says the colour. */
  public Stock(
      String name, double width, double height, double weight, double caliper, Grain grain) {
    this(name, width, height, weight, caliper, grain, "");
  }

  /** Thickness in mm of usual card of this weight, where the maker has not measured it. */
  public static double usualCaliper(double weight) {
    return weight * USUAL_BULK / 1000;
  }

  /**
   * How far the sides of what slides over another lie outside of it, in mm: half the card for
   * either wall, the card of a tab glued to one of them, and half the play. Of cards of their own
   * the thicker one's tab counts.
   *
   * @param one how thick the one card is, in mm
   * @param other how thick the other is, in mm
   */
  public static double slidesOver(double one, double other) {
    return (one + other) / 2 + Math.max(one, other) + PLAY / 2;
  }

  /** A sheet of the same size of other card. */
  public Stock of(double newWeight, double newCaliper, String newColour) {
    return new Stock(name, width, height, newWeight, newCaliper, grain, newColour);
  }

  /** Weight, thickness and colour: "220 g/m², 0.28 mm, navy". */
  public String text() {
    return Decimals.places(weight, 0)
        + " g/m², "
        + Decimals.places(caliper, 2)
        + " mm"
        + (colour.isEmpty() ? "" : ", " + colour);
  }

  /** The same sheet turned a quarter. */
  public Stock turned() {
    return new Stock(
        name, /* width= */ height, /* height= */ width, weight, caliper, grain, colour);
  }
}
