package facetwright.papers.materials;

import facetwright.geom.RoundOff;
import facetwright.words.Decimals;

/**
 * So much of one thing.
 *
 * @param key what a price names it by: "sheet", "tape", "ribbon", "light", "filling" or the name of
 *     a layer paper
 * @param what in words
 * @param amount exactly, in the unit
 * @param unit in which it is needed and sold
 */
public record Need(String key, String what, double amount, Unit unit) {
  private static final double METRE = 1000;

  /** 0.9144 m (international yard and pound, 1959), in mm. */
  private static final double YARD = 914.4;

  /** How a thing is sold. */
  public enum Unit {
    SHEETS("sheet", "sheets"),
    METRES("m", "m"),
    PIECES("piece", "pieces"),
    MILLILITRES("ml", "ml");

    private final String one;
    private final String many;

    Unit(String one, String many) {
      this.one = one;
      this.many = many;
    }

    /** Such as "sheets". */
    public String text(double amount) {
      return amount == 1 ? one : many;
    }
  }

  /** What is sold by the metre, for who reckons in inches, to follow on the amount; else empty. */
  String inYards(facetwright.measure.Unit reader) {
    return unit == Unit.METRES && !reader.isMetric()
        ? " m, " + Decimals.places(amount * METRE / YARD, 2) + " yd"
        : "";
  }

  /**
   * With one in ten to spare, rounded up to whole units; of papers at least one sheet more, and of
   * single things none until there are ten.
   */
  int withSpare() {
    // The slack keeps 10 sheets and 1 spare from becoming 12 by rounding.
    int wanted = (int) RoundOff.ceil(amount * (1 + Rules.SPARE));
    if (unit == Unit.PIECES && amount * Rules.SPARE < 1) {
      return (int) RoundOff.ceil(amount);
    }
    return unit == Unit.SHEETS ? Math.max(wanted, (int) Math.ceil(amount) + 1) : wanted;
  }
}
