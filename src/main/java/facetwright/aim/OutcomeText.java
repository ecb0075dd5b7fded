package facetwright.aim;

import facetwright.geom.RingCount;
import facetwright.geom.RoundOff;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.words.Count;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** An outcome in words. */
public final class OutcomeText {
  private OutcomeText() {}

  /** One sentence or two for each goal: what it comes to, and why not where it is not reached. */
  public static List<String> goals(Outcome outcome) {
    return outcome.goals().stream().map(g -> goal(outcome, g)).toList();
  }

  /** One line for each knob: where it stood and where it goes. */
  public static List<String> turns(Outcome outcome) {
    return outcome.turns().stream().map(OutcomeText::turn).toList();
  }

  /** How many settings were tried: "Tried 12 settings." */
  public static String tried(Outcome outcome) {
    return "Tried "
        + Count.of(outcome.trials(), "setting")
        + (outcome.spent() ? ", and stopped there." : ".");
  }

  /** What keeps goals from being reached, as far as that is known. */
  public static List<String> hurdles(Outcome outcome) {
    List<String> hurdles = new ArrayList<>();
    stops(outcome).ifPresent(hurdles::add);
    if (!outcome.hurdle().isEmpty()) {
      hurdles.add("There is no design at " + outcome.hurdle() + ".");
    }
    return hurdles;
  }

  /**
   * Which other dials may help where a goal is not reached; empty where it is, or there are none.
   *
   * @param all the names of all dials
   */
  public static Optional<String> others(Outcome outcome, List<String> all) {
    List<String> turned = outcome.turns().stream().map(t -> t.knob().name()).toList();
    List<String> others = all.stream().filter(name -> !turned.contains(name)).toList();
    return outcome.isMet() || others.isEmpty()
        ? Optional.empty()
        : Optional.of("Other dials may help; let them turn, too: " + Sentence.listed(others) + ".");
  }

  /** Which dials stand at an end that keeps goals from being reached; empty where none does. */
  static Optional<String> stops(Outcome outcome) {
    List<String> ends =
        outcome.stops().stream()
            .map(
                s ->
                    s.knob().name()
                        + " is at its "
                        + (s.isUpper() ? "greatest (" : "least (")
                        + text(outcome, s)
                        + ")")
            .toList();
    return ends.isEmpty() ? Optional.empty() : Optional.of(Sentence.listed(ends) + ".");
  }

  /** Where a dial stops, as it would be typed: 3/4 for 0.75 in. */
  private static String text(Outcome outcome, Outcome.Stop stop) {
    return outcome.turns().stream()
        .filter(t -> t.knob().name().equals(stop.knob().name()))
        .filter(t -> Math.abs(t.value() - stop.value()) < RoundOff.PART)
        .findFirst()
        .map(t -> text(t.typed()))
        .orElse(Knob.text(stop.value()));
  }

  /** The knobs that move with their values, such as "wall 62.5 and side 28". */
  public static String settings(Outcome outcome) {
    List<String> moved =
        outcome.settings().entrySet().stream()
            .map(e -> e.getKey() + " " + text(e.getValue()))
            .toList();
    return moved.isEmpty() ? "the dials as they are" : Sentence.listed(moved);
  }

  private static String turn(Outcome.Turn turn) {
    String from = turn.knob().name() + ": " + text(turn.was());
    if (!turn.isMoved()) {
      return from + ", stays";
    }
    boolean same = Math.abs(turn.exact() - turn.value()) < RoundOff.SOLVED;
    return from
        + " → "
        + text(turn.typed())
        + (same ? "" : " (exactly " + Decimals.places(turn.exact(), 4) + ")");
  }

  /** A value as words tell it: "1 1/8 in" for what is typed as "1-1/8in". */
  public static String text(String typed) {
    return typed.replaceAll("(?<=\\d)-(?=\\d+/)", " ").replaceAll("(?<=\\d)(?=(?:mm|cm|in)$)", " ");
  }

  private static String goal(Outcome outcome, Outcome.Reached reached) {
    return switch (reached.goal()) {
      case Goal.Reach reach -> reach(outcome, reach, reached.status());
      case Goal.Ring ring -> ring(outcome, ring, reached.status());
      case Goal.Fit fit -> fit(outcome, fit, reached.status());
    };
  }

  private static String reach(Outcome outcome, Goal.Reach goal, Outcome.Status status) {
    Unit unit = outcome.unit();
    String word = goal.measure().word();
    return switch (status) {
      case NOT_KNOWN -> word + ": can't be told, for some fold angles are left open.";
      case NO_DIAL ->
          word
              + ": none of the dials turned ("
              + names(outcome)
              + ") changes it; it stays "
              + goal.measure().text(outcome.set().get(goal.measure()), unit)
              + ".";
      case MET ->
          word
              + ": "
              + goal.measure().text(outcome.set().get(goal.measure()), unit)
              + ", "
              + miss(outcome, goal)
              + bend(outcome, goal)
              + ".";
      case NEAREST, OFF_MARKS ->
          word
              + ": "
              + goal.measure().text(goal.wanted(), unit)
              + " can't be reached by turning "
              + names(outcome)
              + "; the nearest found is "
              + goal.measure().text(outcome.set().get(goal.measure()), unit)
              + ", "
              + miss(outcome, goal)
              + ".";
    };
  }

  private static String ring(Outcome outcome, Goal.Ring goal, Outcome.Status status) {
    String seats = "a " + (goal.standing() ? "standing " : "") + "ring of " + goal.count();
    return switch (status) {
      case NOT_KNOWN ->
          seats
              + ": no two flat sides of it can meet"
              + (goal.standing() ? " while it stands" : "")
              + ", so no ring can be told.";
      case NO_DIAL ->
          seats
              + ": none of the dials turned ("
              + names(outcome)
              + ") changes how it seats; "
              + open(outcome, goal)
              + ".";
      case MET ->
          Math.abs(outcome.miss(goal)) <= goal.tolerance()
              ? seats + " seats flush."
              : seats + " seats; " + open(outcome, goal) + ".";
      case OFF_MARKS ->
          seats
              + " does not seat flush with dials on the ruler's marks; at the nearest "
              + open(outcome, goal)
              + ".";
      case NEAREST ->
          seats
              + " does not seat flush by turning "
              + names(outcome)
              + "; at the nearest found "
              + open(outcome, goal)
              + ".";
    };
  }

  /** How neighbours in a ring miss each other, and what makes it up. */
  private static String open(Outcome outcome, Goal.Ring goal) {
    double miss = outcome.miss(goal);
    String mm = new Length(Math.abs(miss)).text(outcome.unit());
    if (mm.startsWith("0 ")) {
      return "neighbours meet to a hair";
    }
    return miss > 0
        ? "neighbours stand open by "
            + mm
            + " at the outer end"
            + (RingCount.isForgiven(miss) ? ", which glue and card make up" : "")
        : "neighbours are "
            + mm
            + " too thick at the outer end"
            + (RingCount.isForgiven(miss) ? ", which card gives" : "");
  }

  private static String fit(Outcome outcome, Goal.Fit goal, Outcome.Status status) {
    Unit unit = outcome.unit();
    Lie lie = outcome.set().lie().apply(goal.sheet());
    String net =
        "the net is "
            + Measure.NET_WIDTH.number(lie.width(), unit)
            + " × "
            + Measure.NET_HEIGHT.text(lie.height(), unit);
    return switch (status) {
      case MET ->
          lie.fits()
              ? "fits " + goal.sheet().name() + ": " + net + "."
              : "fits "
                  + goal.sheet().name()
                  + ", but not with dials on the ruler's marks: "
                  + net
                  + ".";
      case NO_DIAL ->
          "does not fit "
              + goal.sheet().name()
              + ", and none of the dials turned ("
              + names(outcome)
              + ") changes the net: "
              + net
              + ".";
      default ->
          "does not fit "
              + goal.sheet().name()
              + " at any setting found of "
              + names(outcome)
              + ": "
              + net
              + ".";
    };
  }

  private static String bend(Outcome outcome, Goal.Reach goal) {
    boolean bends =
        goal.measure() == Measure.GAP
            && outcome.set().knows(Measure.STRAIN)
            && outcome.set().get(Measure.STRAIN) > RoundOff.SOLVED;
    return bends
        ? ", if the card bends by "
            + Measure.STRAIN.text(outcome.set().get(Measure.STRAIN), outcome.unit())
        : "";
  }

  private static String names(Outcome outcome) {
    return outcome.turns().stream().map(t -> t.knob().name()).collect(Collectors.joining(", "));
  }

  private static String miss(Outcome outcome, Goal.Reach goal) {
    double miss = outcome.miss(goal);
    if (Math.abs(miss) <= goal.tolerance()) {
      return "as asked";
    }
    String amount = goal.measure().text(Math.abs(miss), outcome.unit());
    boolean tiny = amount.startsWith("0 ");
    return (tiny ? "a hair" : amount) + (miss > 0 ? " more" : " less") + " than asked";
  }
}
