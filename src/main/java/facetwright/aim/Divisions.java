package facetwright.aim;

import facetwright.geom.LengthTolerance;
import facetwright.geom.RoundOff;
import facetwright.measure.Length;
import facetwright.measure.Quantity;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
record Divisions(Knob knob, double origin, double apart, Unit unit, Unit design, boolean hasLines) {
  private static final int FEW = 8;
  private static final int MANY = 20;
  private static final int PARTS = 100;

  /** Any value is typed to so much, in the dial's own numbers. */
  private static final double AS_TYPED = 1e-6;

  static Divisions of(Knob knob, Grid grid, Unit design) {
    if (knob.isStepped()) {
      return new Divisions(knob, knob.from(), knob.step(), design, design, true);
    }
    if (knob.counts() == Quantity.ANGLE) {
      return grid instanceof Grid.Any
          ? new Divisions(knob, 0, AS_TYPED, design, design, false)
          : new Divisions(knob, 0, degrees(knob), design, design, true);
    }
    return switch (grid) {
      case Grid.Any _ -> new Divisions(knob, 0, AS_TYPED, design, design, false);
      case Grid.Marks marks -> of(knob, marks, design);
    };
  }

  /** Whole degrees, or a decimal part of one where its range has few of them. */
  private static double degrees(Knob knob) {
    return knob.range() >= FEW ? 1 : Math.pow(10, Math.floor(Math.log10(knob.range() / FEW)));
  }

  private static Divisions of(Knob knob, Grid.Marks grid, Unit design) {
    Unit unit = grid.ruler().unit();
    double apart = grid.ruler().divisionMm() / design.mm();
    if (knob.isLength()) {
      while (grid.isUsual()
          && knob.range() < FEW * apart
          && apart * design.mm() / 2 >= Ruler.SIXTY_FOURTHS.divisionMm()) {
        apart /= 2;
      }
      return new Divisions(knob, 0, apart, unit, design, true);
    }
    boolean fine = knob.range() >= FEW * apart && Math.abs(knob.now()) >= MANY * apart;
    if (fine || knob.range() >= MANY * apart || !grid.isUsual()) {
      return new Divisions(knob, 0, apart, unit, design, true);
    }
    double part = Math.pow(10, Math.floor(Math.log10(knob.range() / PARTS)));
    return new Divisions(knob, 0, part, design, design, true);
  }

  /** The marks round a value, nearest first, at most {@code most} on either side of it. */
  List<Double> near(double value, int most) {
    List<Double> found = new ArrayList<>();
    if (!hasLines) {
      found.add(Math.clamp(origin + Math.rint(value / apart) * apart, knob.from(), knob.to()));
      return found;
    }
    long below = (long) RoundOff.floor((value - origin) / apart);
    for (long n = below - most + 1; n <= below + most; n++) {
      double mark = origin + n * apart;
      double slack = RoundOff.PART * knob.range();
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

  /** The value as a person types it on the command line: "62.5", "1-7/16", "62.5mm". */
  String typed(double value) {
    Length length = Length.of(value, design);
    boolean foreign = !knob.isStepped() && hasLines && unit != design;
    if (foreign) {
      Optional<Ruler> ruler = Ruler.withMarks(new Length(apart * design.mm()).in(unit), unit);
      // Off the marks of a ruler, in the design's own unit.
      Unit told = ruler.isPresent() ? design : unit;
      return onMark(ruler, length).orElseGet(() -> Knob.text(length.in(told)) + told.symbol());
    }
    return Optional.of(design)
        .filter(d -> knob.isLength() && d.isInFractions())
        .flatMap(d -> onMark(Ruler.withMarks(apart, d), length))
        .map(text -> text.replace(design.symbol(), ""))
        .orElseGet(() -> Knob.text(value));
  }

  /** A ruler's mark as it is typed; empty off the marks or without a ruler. */
  private static Optional<String> onMark(Optional<Ruler> ruler, Length length) {
    return ruler
        .map(r -> r.read(length))
        .filter(r -> Math.abs(r.errorMm()) <= LengthTolerance.FINE.mm())
        .map(Ruler.Reading::typed);
  }
}
