package facetwright.aim;

import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The turn of one dial that would help most where a form does not close.
 *
 * @param knob the dial
 * @param value where it should go
 * @param typed that value as a person types it
 * @param now what the design measures as it stands; its gap may not be known
 * @param then what it would measure; its gap and strain are known
 */
public record KnobMend(Knob knob, double value, String typed, Measured now, Measured then) {
  /** A strain under this is none. */
  private static final double EASY = RoundOff.SOLVED;

  private static final double WORTH_IT = 0.9;
  private static final int TRIALS = 16;

  /**
   * Looks for it: for each dial its neighbouring steps or whole numbers, and where the slope of the
   * gap (or of the strain, where there is no gap) leads. Empty when no single turn found takes away
   * a tenth of it; where the gap is not known, when none makes it close.
   *
   * @param now what the design measures with each knob where it stands
   * @param trial makes it with one knob elsewhere; some twenty times a knob at most
   */
  public static Optional<KnobMend> find(List<Knob> knobs, Measured now, Unit unit, Trial trial) {
    KnobMend best = null;
    for (int i = 0; i < knobs.size(); i++) {
      for (KnobMend mend : turns(knobs, i, now, unit, trial)) {
        best = mend.helps() && (best == null || mend.betterThan(best)) ? mend : best;
      }
    }
    return Optional.ofNullable(best);
  }

  private static List<KnobMend> turns(
      List<Knob> knobs, int i, Measured now, Unit unit, Trial trial) {
    Knob knob = knobs.get(i);
    Trial alone =
        values -> {
          List<Double> all = new ArrayList<>(knobs.stream().map(Knob::now).toList());
          all.set(i, values.getFirst());
          return trial.at(all);
        };
    List<KnobMend> found = new ArrayList<>();
    boolean whole = !knob.isLength() && knob.now() == Math.rint(knob.now());
    if (knob.isStepped() || whole) {
      double step = knob.isStepped() ? knob.step() : 1;
      double slack = RoundOff.PART * knob.range();
      for (double value : new double[] {knob.now() + step, knob.now() - step}) {
        if (value >= knob.from() - slack
            && value <= knob.to() + slack
            && alone.at(List.of(value)) instanceof Measured there) {
          found.add(new KnobMend(knob, value, Knob.text(value), now, there));
        }
      }
    }
    if (!knob.isStepped() && now.knows(Measure.GAP)) {
      Measure measure = gap(now) > Goal.Reach.CLOSED.mm() ? Measure.GAP : Measure.STRAIN;
      Aim aim =
          new Aim(
              List.of(new Goal.Reach(measure, 0)), List.of(knob), Grid.usual(unit), unit, TRIALS);
      Outcome outcome = aim.solve(now, alone);
      Outcome.Turn turn = outcome.turns().getFirst();
      if (turn.isMoved()) {
        found.add(new KnobMend(knob, turn.value(), turn.typed(), now, outcome.set()));
      }
    }
    return found;
  }

  private static double gap(Measured measured) {
    return measured.knows(Measure.GAP) ? measured.get(Measure.GAP) : Double.POSITIVE_INFINITY;
  }

  private static double strain(Measured measured) {
    return measured.knows(Measure.STRAIN) ? measured.get(Measure.STRAIN) : Double.POSITIVE_INFINITY;
  }

  private boolean helps() {
    if (!now.knows(Measure.GAP)) {
      return gap(then) <= Goal.Reach.CLOSED.mm() && strain(then) <= EASY;
    }
    return gap(now) > Goal.Reach.CLOSED.mm()
        ? gap(then) < WORTH_IT * gap(now)
        : gap(then) <= Goal.Reach.CLOSED.mm() && strain(then) < WORTH_IT * strain(now);
  }

  private boolean betterThan(KnobMend other) {
    double gap = Math.max(gap(then), Goal.Reach.CLOSED.mm());
    double otherGap = Math.max(gap(other.then), Goal.Reach.CLOSED.mm());
    if (gap != otherGap) {
      return gap < otherGap;
    }
    double strain = Math.max(strain(then), EASY);
    double otherStrain = Math.max(strain(other.then), EASY);
    return strain == otherStrain ? change() < other.change() : strain < otherStrain;
  }

  private double change() {
    return Math.abs(value - knob.now()) / knob.range();
  }

  /** "Turn columns from 7 to 8: the gap goes from 12.3 mm to 0 mm." */
  public String text(Unit unit) {
    return "Turn "
        + knob.name()
        + " from "
        + Grid.usual(unit).typed(knob, unit, knob.now())
        + " to "
        + typed
        + ": "
        + promise(unit)
        + ".";
  }

  private String promise(Unit unit) {
    if (!now.knows(Measure.GAP)) {
      return "then it closes";
    }
    String bend = "the card bends by " + Measure.STRAIN.text(strain(then), unit);
    if (gap(now) <= Goal.Reach.CLOSED.mm()) {
      return strain(then) <= EASY
          ? "then the card need not bend"
          : bend + " instead of " + Measure.STRAIN.text(strain(now), unit);
    }
    return "the gap goes from "
        + Measure.GAP.text(gap(now), unit)
        + " to "
        + Measure.GAP.text(gap(then), unit)
        + (strain(then) > EASY ? ", and " + bend : "");
  }
}
