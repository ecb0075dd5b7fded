package facetwright.workbench;

import facetwright.fold.Measures;
import facetwright.geom.Length;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import facetwright.net.Laid;
import facetwright.script.Design;

/** A design in a sentence: whether it closes, how large it is, what it fits. */
final class Sentence {
  private Sentence() {}

  static String of(Design design) {
    Measures m = design.folded().measures();
    Unit unit = design.unit();
    String closing =
        switch (design.folded().closure()) {
          case CLOSES -> "Closes.";
          case CLOSES_WITH_STRAIN -> "Closes, if the card gives a little.";
          case OPEN -> "Does not close.";
          case NOT_SOLVED -> "Whether it closes is not known.";
        };
    Laid laid = design.laid();
    String sheets = laid.sheets() == 1 ? "" : laid.sheets() + " sheets of ";
    return closing
        + " "
        + length(m.height(), unit)
        + " tall, "
        + length(m.width(), unit)
        + " wide, "
        + length(m.depth(), unit)
        + " deep. "
        + (laid.fits() ? "Fits " : "Does not fit ")
        + sheets
        + laid.stock().name()
        + ".";
  }

  private static String length(double mm, Unit unit) {
    return Ruler.usual(unit).read(new Length(mm)).text();
  }
}
