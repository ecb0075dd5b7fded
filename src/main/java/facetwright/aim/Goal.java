package facetwright.aim;

import facetwright.geom.LengthTolerance;
import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import java.io.Serializable;

/** What a design should come to. */
public sealed interface Goal extends Serializable {

  /** As a person says it: "height 120 mm". */
  String text(Unit unit);

  /**
   * A measure should come to a value.
   *
   * @param wanted in mm, mm² or mm³
   */
  record Reach(Measure measure, double wanted) implements Goal {
    /** A measure that misses by less of what is wanted is there. */
    private static final double RELATIVE = RoundOff.SOLVED;

    /** Nor need it be nearer than so many mm, mm² or mm³; the square of it where it has no unit. */
    private static final double LEAST = 1e-4;

    /** A gap under this closes. */
    static final LengthTolerance CLOSED = LengthTolerance.UNSEEN;

    /** A strain of a thousandth is as bad as a gap of a millimetre. */
    private static final double BEND = 1000;

    @Override
    public String text(Unit unit) {
      return measure.word() + " " + measure.text(wanted, unit);
    }

    /**
     * How far a design is off, in mm, mm² or mm³. Of two designs whose joins meet, the one whose
     * card has to bend less is nearer to a gap of 0.
     */
    double off(Measured measured) {
      double bend =
          measure == Measure.GAP && measured.knows(Measure.STRAIN)
              ? BEND * measured.get(Measure.STRAIN)
              : 0;
      return measured.get(measure) - wanted + bend;
    }

    /** How near counts as there: a millionth, 0.0001 mm at least, 0.001 mm for a gap. */
    double tolerance() {
      return measure == Measure.GAP
          ? CLOSED.mm()
          : Math.max(RELATIVE * Math.abs(wanted), measure.power() == 0 ? LEAST * LEAST : LEAST);
    }

    /** What a miss is measured against, so that goals of unlike measures can be weighed. */
    double scale() {
      return Math.max(Math.abs(wanted), measure.power() == 0 ? LEAST : 1);
    }
  }

  /** The net should lie whole on one sheet, and be as large as it can be there. */
  record Fit(SheetSize sheet) implements Goal {
    @Override
    public String text(Unit unit) {
      return "fits " + sheet.name();
    }
  }
}
