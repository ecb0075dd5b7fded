package facetwright.aim;

import facetwright.geom.LengthTolerance;
import facetwright.geom.RingCount;
import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import java.io.Serializable;

/** What a design should come to. */
public sealed interface Goal extends Serializable {

  /** As a person says it: "height 120 mm". */
  String text(Unit unit);

  /** Something that can be measured should come to a value: how far off it is leads there. */
  sealed interface Value extends Goal {
    /** Whether it can be told of a design. */
    boolean isKnown(Measured measured);

    /** What it comes to in a design. */
    double of(Measured measured);

    /** What it should come to. */
    double wanted();

    /** How far a design is off. */
    double off(Measured measured);

    /** How near counts as there. */
    double tolerance();

    /** What a miss is measured against, so that goals of unlike measures can be weighed. */
    double scale();
  }

  /**
   * A measure should come to a value.
   *
   * @param wanted in mm, mm² or mm³
   */
  record Reach(Measure measure, double wanted) implements Value {
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

    @Override
    public boolean isKnown(Measured measured) {
      return measured.knows(measure);
    }

    @Override
    public double of(Measured measured) {
      return measured.get(measure);
    }

    /**
     * How far a design is off, in mm, mm² or mm³. Of two designs whose joins meet, the one whose
     * card has to bend less is nearer to a gap of 0.
     */
    @Override
    public double off(Measured measured) {
      double bend =
          measure == Measure.GAP && measured.knows(Measure.STRAIN)
              ? BEND * measured.get(Measure.STRAIN)
              : 0;
      return measured.get(measure) - wanted + bend;
    }

    /** How near counts as there: a millionth, 0.0001 mm at least, 0.001 mm for a gap. */
    @Override
    public double tolerance() {
      return measure == Measure.GAP
          ? CLOSED.mm()
          : Math.max(RELATIVE * Math.abs(wanted), measure.power() == 0 ? LEAST * LEAST : LEAST);
    }

    @Override
    public double scale() {
      return Math.max(Math.abs(wanted), measure.power() == 0 ? LEAST : 1);
    }
  }

  /**
   * So many copies should seat flush in a ring, with no wedge between. It is measured by how far
   * two neighbours stand open at the outer end of where they meet, in mm; below 0 where they take
   * more of the circle than there is.
   *
   * @param standing whether each has to stand as it does alone, and not be tipped
   * @param by which two sides of a piece meet, by the names of their panels; empty for those that
   *     the ring is planned by
   */
  record Ring(int count, boolean standing, String by) implements Value {
    /** A miss that is solved away. */
    private static final double FLUSH = 1e-3;

    /** Being too thick by more than is forgiven counts as so many gaps of as much. */
    private static final double TOO_THICK = 5;

    /**
     * @throws IllegalArgumentException when the count is out of range; the message has no full stop
     */
    public Ring {
      RingCount.checked(count);
    }

    /** By whichever sides it is planned by, be the pieces tipped. */
    public Ring(int count) {
      this(count, false, "");
    }

    /** The same by two sides. */
    public Ring by(String sides) {
      return new Ring(count, standing, sides);
    }

    @Override
    public String text(Unit unit) {
      return "ring of " + count + (standing ? " standing" : "");
    }

    @Override
    public boolean isKnown(Measured measured) {
      return measured.ring().apply(this).isPresent();
    }

    @Override
    public double of(Measured measured) {
      return measured.ring().apply(this).orElseThrow();
    }

    @Override
    public double wanted() {
      return 0;
    }

    /**
     * A gap can be filled, but what is too thick to go round can't be made: that is farther off.
     */
    @Override
    public double off(Measured measured) {
      double over = of(measured) + RingCount.FORGIVEN;
      return over < 0 ? TOO_THICK * over - RingCount.FORGIVEN : of(measured);
    }

    @Override
    public double tolerance() {
      return FLUSH;
    }

    @Override
    public double scale() {
      return 1;
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
