package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;

/**
 * A length that the maker sets by a ruler.
 *
 * @param mm what it should be, in mm
 * @param reading the nearest place on the ruler
 */
public record Measure(double mm, Ruler.Reading reading) {
  /** What no eye sees on a ruler, in mm. */
  private static final LengthTolerance UNSEEN = new LengthTolerance(0.005);

  public static Measure of(double mm, Ruler ruler) {
    return new Measure(mm, ruler.read(new Length(mm)));
  }

  /** Whether it lies on one of the ruler's marks. */
  public boolean isOnRuler() {
    return reading.exact(UNSEEN);
  }

  /** As the ruler reads it, "28 mm"; off its marks the nearest one, "about 28.5 mm". */
  public String text() {
    return about() + reading.text();
  }

  /** The same without its unit: "28", "about 28.5". */
  String number() {
    return about() + reading.number();
  }

  /** As it stands on a picture: "28", or off the ruler's marks the nearest one, "~28.5". */
  public String mark() {
    return (isOnRuler() ? "" : "~") + reading.number();
  }

  private String about() {
    return isOnRuler() ? "" : "about ";
  }

  /**
   * As the ruler reads it; off its marks with what it should be and by how much the nearest misses.
   *
   * @param unit what the maker reckons in
   */
  public String text(Unit unit) {
    return isOnRuler() ? reading.text() : offBrief(unit);
  }

  /**
   * What it should be and by how much the nearest mark misses that; for one off the marks.
   *
   * @param unit what the maker reckons in
   */
  public String offText(Unit unit) {
    return new Length(mm).text(unit)
        + " lies between two marks; the nearest, "
        + reading.text()
        + ", is "
        + miss(unit);
  }

  /**
   * The same in few words, for one among several: "12 mm (1/2 in is 0.7 mm too much)".
   *
   * @param unit what the maker reckons in
   */
  public String offBrief(Unit unit) {
    return new Length(mm).text(unit) + " (" + reading.text() + " is " + miss(unit) + ")";
  }

  /** By how much the nearest mark misses, and which way. */
  private String miss(Unit unit) {
    double off = reading.errorMm();
    return new Length(Math.abs(off)).text(unit) + (off > 0 ? " too much" : " too little");
  }

  /** In mm, as it is set by the ruler. */
  double asRead() {
    return isOnRuler() ? mm : reading.length().mm();
  }
}
