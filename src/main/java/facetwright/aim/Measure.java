package facetwright.aim;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.words.Decimals;

/** Something that a design measures; lengths in mm, areas in mm², volumes in mm³. */
public enum Measure {
  /** Of the finished form, square to the table. */
  HEIGHT("height", 1),
  /** The longer side of the smallest rectangle the finished form stands in. */
  WIDTH("width", 1),
  /** The shorter side of it. */
  DEPTH("depth", 1),
  /** Of the closed body. */
  VOLUME("volume", 3),
  /** Of the facets. */
  AREA("area", 2),
  /** Of the net as it lies on its sheet. */
  NET_WIDTH("net width", 1),
  /** Of the net as it lies on its sheet. */
  NET_HEIGHT("net height", 1),
  /** The farthest that a join or a loop of scores misses. */
  GAP("gap", 1),
  /** By how much of its length the card would have to give; 0.01 is a hundredth. */
  STRAIN("strain", 0);

  private static final int DIGITS = 3;

  private final String word;
  private final int power;

  Measure(String word, int power) {
    this.word = word;
    this.power = power;
  }

  /** As a person says it, such as "net width". */
  public String word() {
    return word;
  }

  /** 1 for a length, 2 for an area, 3 for a volume, 0 for a bare proportion. */
  public int power() {
    return power;
  }

  /** A value of this measure counted in a unit, or in its square or cube. */
  double in(Unit unit, double value) {
    return value / Math.pow(unit.mm(), power);
  }

  /** "120 mm", "4.724 in", "75 cm³", "0.4 %"; areas and volumes of metric designs in cm. */
  String text(double value, Unit unit) {
    return power == 0 ? number(value, unit) + " %" : number(value, unit) + " " + symbol(unit);
  }

  /** The same without the unit. */
  public String number(double value, Unit unit) {
    return switch (power) {
      case 0 -> Decimals.places(100 * value, 3);
      case 1 -> new Length(value).number(unit);
      default -> spread(in(unit.forLarge(), value));
    };
  }

  private static String spread(double amount) {
    return Math.abs(amount) < 1 ? Decimals.digits(amount, DIGITS) : Decimals.places(amount, 2);
  }

  private String symbol(Unit unit) {
    return power < 2 ? unit.symbol() : unit.forLarge().symbol() + (power == 2 ? "²" : "³");
  }
}
