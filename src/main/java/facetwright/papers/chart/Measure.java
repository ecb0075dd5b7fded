package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Ruler;

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
  public String text(Telling tell) {
    return about(reading.text(), tell);
  }

  /** The same without its unit: "28", "about 28.5". */
  String number(Telling tell) {
    return about(reading.number(), tell);
  }

  /** As it stands on a picture: "28", or off the ruler's marks the nearest one, "~28.5". */
  public String mark(Telling tell) {
    return (isOnRuler() ? "" : "~") + tell.figures(reading.number());
  }

  private String about(String told, Telling tell) {
    String figures = tell.figures(told);
    return isOnRuler() ? figures : tell.say("measure.about", "measure", figures);
  }

  /** As the ruler reads it; off its marks with what it should be and by how much that misses. */
  public String set(Telling tell) {
    return isOnRuler() ? tell.figures(reading.text()) : offBrief(tell);
  }

  /** What it should be and by how much the nearest mark misses that; for one off the marks. */
  public String offText(Telling tell) {
    return off("chart.between-marks", tell);
  }

  /** The same in few words, for one among several: "12 mm (1/2 in is 0.7 mm too much)". */
  public String offBrief(Telling tell) {
    return off("chart.off-mark", tell);
  }

  private String off(String phrase, Telling tell) {
    double off = reading.errorMm();
    return tell.say(
        phrase,
        "length",
        tell.length(mm),
        "mark",
        tell.figures(reading.text()),
        "miss",
        tell.length(Math.abs(off)),
        "way",
        off > 0 ? "over" : "under");
  }

  /** In mm, as it is set by the ruler. */
  double asRead() {
    return isOnRuler() ? mm : reading.length().mm();
  }
}
