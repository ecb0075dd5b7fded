package facetwright.aim;

import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/**
 * What an aim came to.
 *
 * @param unit what the knobs' numbers count
 * @param turns where each knob goes, in order
 * @param goals what became of each goal
 * @param stops knobs at an end that keeps goals from being reached
 * @param hurdle where goals are not reached, the nearest values tried at which there is no design,
 *     and why; empty where there are none
 * @param exact what the design measures with the knobs at their exact values
 * @param set what it measures with the knobs at values that can be set
 * @param trials how many designs were made
 * @param spent whether the search ended because there were to be no more of them
 */
public record Outcome(
    Unit unit,
    List<Turn> turns,
    List<Reached> goals,
    List<Stop> stops,
    String hurdle,
    Measured exact,
    Measured set,
    int trials,
    boolean spent) {
  public Outcome {
    turns = List.copyOf(turns);
    goals = List.copyOf(goals);
    stops = List.copyOf(stops);
  }

  /**
   * Where a knob goes.
   *
   * @param was where it stands, as a person types it
   * @param exact the value that was solved for
   * @param value the value to set
   * @param typed that value as a person types it
   */
  public record Turn(Knob knob, String was, double exact, double value, String typed) {
    public boolean isMoved() {
      return Math.abs(value - knob.now()) > RoundOff.PART * knob.range();
    }
  }

  /** What became of a goal. */
  public record Reached(Goal goal, Status status) {}

  /** How a goal fared, before the knobs are put onto marks. */
  public enum Status {
    /** Reached. */
    MET,
    /** Reached, but not with the knobs on marks that can be set. */
    OFF_MARKS,
    /** Not reached; the outcome is the nearest that was found. */
    NEAREST,
    /** None of the knobs changes it. */
    NO_DIAL,
    /** The measure can't be told, for some fold angles are left open. */
    NOT_KNOWN
  }

  /**
   * A knob that stands at an end and should go further.
   *
   * @param value where that end is
   * @param isUpper whether it is the greater end
   */
  public record Stop(Knob knob, double value, boolean isUpper) {}

  /** The same with other words on its goals. */
  public Outcome with(List<Reached> others) {
    return new Outcome(unit, turns, others, stops, hurdle, exact, set, trials, spent);
  }

  /** The same after so many trials more. */
  public Outcome after(int more) {
    return new Outcome(unit, turns, goals, stops, hurdle, exact, set, trials + more, spent);
  }

  /** Whether every goal is reached, a ring at the values set, all else at the exact ones. */
  public boolean isMet() {
    return goals.stream().allMatch(g -> g.status() == Status.MET);
  }

  /** What a measure comes to with the knobs set, less what is wanted. */
  public double miss(Goal.Value goal) {
    return goal.of(set) - goal.wanted();
  }

  /** Where the knobs go that move, by name, in the design's unit. */
  public SequencedMap<String, Double> values() {
    SequencedMap<String, Double> values = new LinkedHashMap<>();
    turns.stream().filter(Turn::isMoved).forEach(t -> values.put(t.knob().name(), t.value()));
    return values;
  }

  /** The knobs that move, by name, as a person types their values. */
  public SequencedMap<String, String> settings() {
    SequencedMap<String, String> settings = new LinkedHashMap<>();
    for (Turn turn : turns) {
      if (turn.isMoved()) {
        settings.put(turn.knob().name(), turn.typed());
      }
    }
    return settings;
  }
}
