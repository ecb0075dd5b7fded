package facetwright.adjust.round;

import facetwright.aim.Knob;
import facetwright.geom.RoundOff;
import facetwright.geom.SteadyOrder;
import facetwright.measure.Ruler;
import java.util.ArrayList;
import java.util.List;

/**
 * Where dials may stop, and how far they may be turned: so many marks of the ruler, but never by
 * more than a part of their value, for a small clearance is no clearance any more when it is
 * doubled.
 *
 * @param ruler the maker's
 * @param unitMm in mm, one of what the dials count
 * @param marks so many marks to either side at most, over 0
 */
record Stops(Ruler ruler, double unitMm, int marks) {
  /** A dial is turned by no more than this part of its value. */
  private static final double PART = 0.2;

  /** Stops are numbers of a dial, whatever they count. */
  private static final double ROUNDING = RoundOff.PART;

  /** How far a dial may be turned, in its own unit. */
  double reach(Knob knob) {
    return Math.min(marks * division(), PART * Math.abs(knob.now())) + ROUNDING;
  }

  boolean reaches(Knob knob, double value) {
    double slack = ROUNDING * knob.range();
    return Math.abs(value - knob.now()) <= reach(knob)
        && value >= knob.from() - slack
        && value <= knob.to() + slack;
  }

  /**
   * Where it stands first, then what is near, of two as near as each other the smaller; its own
   * steps where it has them.
   */
  List<Double> of(Knob knob) {
    double origin = knob.isStepped() ? knob.from() : 0;
    double apart = knob.isStepped() ? knob.step() : division();
    List<Double> stops = new ArrayList<>(List.of(knob.now()));
    long near = Math.round((knob.now() - origin) / apart);
    for (long n = near - marks; n <= near + marks; n++) {
      double at = origin + n * apart;
      boolean isNew = Math.abs(at - knob.now()) > ROUNDING * apart;
      if (isNew && (knob.isStepped() ? isStep(knob, at) : reaches(knob, at))) {
        stops.add(at);
      }
    }
    return SteadyOrder.by(stops, ROUNDING * apart, s -> Math.abs(s - knob.now()));
  }

  private boolean isStep(Knob knob, double at) {
    return at >= knob.from() - ROUNDING
        && at <= knob.to() + ROUNDING
        && Math.abs(at - knob.now()) <= Math.max(reach(knob), knob.step() + ROUNDING)
        && Math.abs(at - knob.now()) <= PART * Math.abs(knob.now());
  }

  private double division() {
    return ruler.divisionMm() / unitMm;
  }
}
