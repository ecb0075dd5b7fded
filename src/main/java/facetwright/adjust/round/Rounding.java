package facetwright.adjust.round;

import facetwright.aim.Knob;
import facetwright.geom.RoundOff;
import facetwright.geom.SteadyOrder;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.Measure;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A design rounded to a ruler: its dials turned, each by little, so that as few measures as can be
 * lie between two marks.
 *
 * <p>Measures of the form count first; then the design whose dials are turned and whose finished
 * size is changed least is taken, unless another spares cuts that lie between marks. Dials leave
 * the marks only where that at least halves the measures of the form between them. It never takes a
 * design that closes or fits its sheet worse than it does as it stands. Of designs as good as each
 * other it takes the one whose dials are turned least, and then the one with the smaller values of
 * the dials named first.
 *
 * <p>What it does not promise: that no other values would put one more measure on a mark; it tries
 * only so many. A measure that no dial moves alone, such as a diagonal, may lie between marks
 * whatever is turned.
 *
 * @param ruler the maker's
 * @param marks by how many of its marks a dial might be turned at most
 * @param turns every dial that is a length, whether it is turned or not
 * @param before as the design stands
 * @param after as it comes out
 * @param constants numbers in the script that keep measures between marks
 * @param files that the script uses: what comes from there no dial moves, and it stays as it is
 * @param trials how many designs were made to find out
 */
public record Rounding(
    Ruler ruler,
    int marks,
    List<Turn> turns,
    Draft before,
    Draft after,
    List<Constant> constants,
    List<String> files,
    int trials) {
  private static final int MOST = 96;

  /** A measure that only a cut goes by is worth so great a part of turning and size. */
  private static final double A_CUT = 0.01;

  /** Parts of turning and size that differ by no more count as the same. */
  private static final double SAME = 1e-6;

  public Rounding {
    turns = List.copyOf(turns);
    constants = List.copyOf(constants);
    files = List.copyOf(files);
  }

  /**
   * A dial and where it comes to.
   *
   * @param value in the design's unit
   */
  public record Turn(Knob knob, double value) {

    public boolean isTurned() {
      return Math.abs(value - knob.now()) > RoundOff.PART * Math.max(1, Math.abs(value));
    }

    /** As it is typed on the command line: "1-1/8in", "28.5". */
    public String typed(Ruler ruler, Unit design) {
      Measure reads = Measure.of(Length.of(value, design).mm(), ruler);
      return reads.isOnRuler() && (ruler.unit() != design || ruler.unit().isInFractions())
          ? reads.reading().typed()
          : Decimals.places(value, 6);
    }
  }

  /**
   * Rounds a design.
   *
   * @param marks by how many marks of the ruler a dial may be turned at most, over 0
   * @throws ScriptException when the script has to be given up
   */
  public static Rounding of(WhatIf what, Ruler ruler, int marks) throws ScriptException {
    List<Knob> knobs = what.lengths();
    Drafts drafts = new Drafts(what, knobs, ruler);
    Stops stops = new Stops(ruler, drafts.unitMm(), marks);
    Draft before = drafts.now();
    ToDoubleFunction<Draft> change =
        d -> Draft.turned(knobs, d.dials()) + d.sizeChange(before) + A_CUT * d.toSet().cutsOff();
    Draft best = before;
    for (List<Double> values : places(knobs, stops)) {
      if (best.isOnRuler() || drafts.count() >= MOST) {
        break;
      }
      Optional<Draft> draft = drafts.at(values);
      if (draft.isPresent()
          && draft.get().isAsSoundAs(before)
          && isBetter(draft.get(), best, change)) {
        best = draft.get();
      }
    }
    for (Draft start : List.of(best, before)) {
      if (!best.isOnRuler()) {
        Optional<Draft> draft = new ProjectedNewton(drafts, stops).from(start);
        if (draft.isPresent()
            && draft.get().isAsSoundAs(before)
            && 2 * draft.get().toSet().formOff() <= best.toSet().formOff()
            && draft.get().toSet().formOff() < best.toSet().formOff()) {
          best = draft.get();
        }
      }
    }
    Constants constants = new Constants(what, best, ruler);
    List<Constant> found = best.isOnRuler() ? List.of() : constants.find();
    Draft after = best;
    return new Rounding(
        ruler,
        marks,
        knobs.stream().map(k -> new Turn(k, after.dials().get(k.name()))).toList(),
        before,
        after,
        found,
        Gathered.of(what.source()).pieces().stream().map(Piece::name).toList(),
        drafts.count() - 1 + constants.count());
  }

  private static boolean isBetter(Draft a, Draft b, ToDoubleFunction<Draft> change) {
    return a.toSet().formOff() == b.toSet().formOff()
        ? change.applyAsDouble(a) < change.applyAsDouble(b) - SAME
        : a.toSet().formOff() < b.toSet().formOff();
  }

  /** Whether any dial is turned. */
  public boolean isTurned() {
    return turns.stream().anyMatch(Turn::isTurned);
  }

  /** Every way to put dials on stops, the least turned first. */
  private static List<List<Double>> places(List<Knob> knobs, Stops stops) {
    List<List<Double>> places = new ArrayList<>(List.of(List.of()));
    for (Knob knob : knobs) {
      List<List<Double>> more = new ArrayList<>();
      for (List<Double> start : places) {
        for (double stop : stops.of(knob)) {
          List<Double> longer = new ArrayList<>(start);
          longer.add(stop);
          more.add(longer);
        }
      }
      List<List<Double>> sorted = SteadyOrder.by(more, SAME, p -> turned(knobs, p));
      places = sorted.subList(0, Math.min(MOST, sorted.size()));
    }
    return places;
  }

  private static double turned(List<Knob> knobs, List<Double> values) {
    double sum = 0;
    for (int i = 0; i < values.size(); i++) {
      double now = knobs.get(i).now();
      sum += Math.abs(values.get(i) - now) / Math.max(Math.abs(now), RoundOff.PART);
    }
    return sum;
  }

  /** A ruler twice as fine, as far as rulers go. */
  static Ruler halves(Ruler ruler) {
    return ruler.parts() <= 500 ? new Ruler(ruler.unit(), 2 * ruler.parts(), ruler.each()) : ruler;
  }

  /** What a draft comes to when each measure is set on the nearest mark; empty where that fails. */
  public static Optional<AsSet.Result> asSet(Draft draft) {
    return AsSet.of(draft.design().laid(), draft.chart());
  }
}
