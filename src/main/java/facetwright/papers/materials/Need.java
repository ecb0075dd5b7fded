package facetwright.papers.materials;

import facetwright.geom.RoundOff;
import facetwright.language.Telling;

/**
 * So much of one thing.
 *
 * @param key what a price names it by: "sheet", "tape", "ribbon", "light", "filling" or the name of
 *     a layer paper
 * @param what it is
 * @param amount exactly, in the unit
 * @param unit in which it is needed and sold
 */
public record Need(String key, Goods what, double amount, Unit unit) {
  private static final double METRE = 1000;

  /** 0.9144 m (international yard and pound, 1959), in mm. */
  private static final double YARD = 914.4;

  /** How a thing is sold. */
  public enum Unit {
    SHEETS("sheets"),
    METRES("m"),
    PIECES("pieces"),
    MILLILITRES("ml");

    private final String word;

    Unit(String word) {
      this.word = word;
    }

    /** The word by which phrases and programs tell which it is. */
    public String word() {
      return word;
    }
  }

  /** What is sold by the metre, for who reckons in inches; "none" of all else. */
  String yards(Telling tell) {
    return unit == Unit.METRES && !tell.unit().isMetric()
        ? tell.number(amount * METRE / YARD, 2)
        : "none";
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
