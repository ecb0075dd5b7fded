package facetwright.aim;

import facetwright.geom.Length;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The values of one knob that a maker can set: the dial's own steps where it has them; otherwise
 * the lines of the ruler. A dial that need not be a length follows the ruler only where its lines
 * are fine for it; otherwise it goes by a decimal fraction of its own.
 *
 * @param knob the knob
 * @param origin where counting starts
 * @param apart distance between two marks, in the knob's own numbers
 * @param unit what the marks count, where they are a ruler's
 * @param design what the knob's numbers count
 * @param hasLines false where any value will do
 */
record Marks(Knob knob, double origin, double apart, Unit unit, Unit design, boolean hasLines) {
  private static final int FEW = 8;
  private static final int MANY = 20;
  private static final int PARTS = 100;
  private static final int FINEST = 1000;
  private static final double ROUNDING = 1e-9;
  private static final double AS_TYPED = 1e-6;

  /** The finest lines that a steel rule shows, 1/64 in; common practice, no source. */
  private static final double FINEST_LINES = Unit.INCH.mm() / 64;

  static Marks of(Knob knob, Grid grid, Unit design) {
    if (knob.isStepped()) {
      return new Marks(knob, knob.from(), knob.step(), design, design, true);
    }
    if (grid.division() == 0) {
      return new Marks(knob, 0, AS_TYPED, design, design, false);
    }
    double apart = grid.division() * grid.unit().mm() / design.mm();
    if (knob.isLength()) {
      while (grid.isUsual()
          && knob.range() < FEW * apart
          && apart * design.mm() / 2 >= FINEST_LINES) {
        apart /= 2;
      }
      return new Marks(knob, 0, apart, grid.unit(), design, true);
    }
    boolean fine = knob.range() >= FEW * apart && Math.abs(knob.now()) >= MANY * apart;
    if (fine || knob.range() >= MANY * apart || !grid.isUsual()) {
      return new Marks(knob, 0, apart, grid.unit(), design, true);
    }
    double part = Math.pow(10, Math.floor(Math.log10(knob.range() / PARTS)));
    return new Marks(knob, 0, part, design, design, true);
  }

  /** The marks round a value, nearest first, at most {@code most} on either side of it. */
  List<Double> near(double value, int most) {
    List<Double> found = new ArrayList<>();
    if (!hasLines) {
      found.add(Math.clamp(origin + Math.rint(value / apart) * apart, knob.from(), knob.to()));
      return found;
    }
    long below = (long) Math.floor((value - origin) / apart + ROUNDING);
    for (long n = below - most + 1; n <= below + most; n++) {
      double mark = origin + n * apart;
      double slack = ROUNDING * knob.range();
      if (mark >= knob.from() - slack && mark <= knob.to() + slack) {
        found.add(Math.clamp(mark, knob.from(), knob.to()));
      }
    }
    if (found.isEmpty()) {
      found.add(knob.settle(value));
    }
    found.sort(java.util.Comparator.comparingDouble(m -> Math.abs(m - value)));
    return found;
  }

  /** By a ruler of another unit; off its marks in the design's. */
  private String foreign(Length length) {
    double parts = unit.mm() / (apart * design.mm());
    long whole = Math.round(parts);
    boolean ruled = whole >= 1 && whole <= FINEST && Math.abs(parts - whole) <= AS_TYPED;
    Ruler.Reading reading = ruled ? new Ruler(unit, (int) whole).read(length) : null;
    boolean onIt = ruled && Math.abs(reading.errorMm()) <= AS_TYPED;
    Unit told = onIt || !ruled ? unit : design;
    return onIt
        ? reading.text().replace(" " + unit.symbol(), unit.symbol()).replace(' ', '-')
        : Knob.shown(length.in(told)) + told.symbol();
  }

  /** The value as a person types it on the command line: "62.5", "1-7/16", "62.5mm". */
  String typed(double value) {
    if (!knob.isStepped() && hasLines && unit != design) {
      return foreign(Length.of(value, design));
    }
    double parts = 1 / apart;
    boolean ruled =
        knob.isLength() && design == Unit.INCH && parts == Math.rint(parts) && parts <= FINEST;
    if (!ruled || parts < 1) {
      return Knob.shown(value);
    }
    Ruler.Reading reading = new Ruler(Unit.INCH, (int) parts).read(Length.of(value, Unit.INCH));
    boolean onIt = Math.abs(reading.errorMm()) <= AS_TYPED;
    return onIt ? reading.text().replace(" in", "").replace(' ', '-') : Knob.shown(value);
  }
}
