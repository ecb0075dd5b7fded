package facetwright.measure;

import facetwright.words.Decimals;

/**
 * An area as its reader knows areas: in square centimetres, or in square inches where the design
 * counts in inches.
 *
 * @param mm2 square millimetres
 */
public record Area(double mm2) {

  /** For what is bought: whole square centimetres, tenths of square inches. */
  public String rough(Unit unit) {
    return text(unit, unit.isMetric() ? 0 : 1);
  }

  /** Such as "12.5 cm²" or "1.9 in²". */
  public String text(Unit unit, int places) {
    Unit read = unit.forLarge();
    return Decimals.places(mm2 / (read.mm() * read.mm()), places) + " " + read.symbol() + "²";
  }
}
