package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Finding.Severity;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.making.Bodies;
import facetwright.fold.pose.PartNames;
import facetwright.fold.pose.Together;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How two parts go together of which the script says that one goes over or into the other. Where
 * their outlines are of one shape, sides are compared with sides; of other shapes, the room is that
 * on the side where there is least as the one lies in the other.
 *
 * <p>What it does not detect: of other shapes, what is glued to walls.
 *
 * @param nest which goes into which
 * @param slip the same compared side by side; empty where their shapes differ
 */
record PlacedFit(Subject subject, Together.Nest nest, Optional<Slip> slip) {

  /** All of a design. */
  static List<PlacedFit> all(Subject subject) {
    List<Together.Nest> nests = subject.folded().together().nests();
    if (nests.isEmpty()) {
      return List.of();
    }
    List<List<Integer>> bodies = Bodies.of(subject.net());
    List<PlacedFit> all = new ArrayList<>();
    for (Together.Nest nest : nests) {
      Part outer = Part.of(subject, body(bodies, part(subject, nest.outer())));
      Part inner = Part.of(subject, body(bodies, part(subject, nest.inner())));
      boolean isOver =
          placing(subject, nest).shut() instanceof Parts.Placing.Over && !nest.isTube();
      List<Slip> ways = new ArrayList<>();
      for (Part.Mouth mouth : outer.mouths()) {
        for (Part.Section section : inner.sections()) {
          if (!isOver || section.isFaceOn()) {
            Slip.of(outer, mouth, inner, section, caliper(subject, nest), isOver)
                .ifPresent(ways::add);
          }
        }
      }
      all.add(
          new PlacedFit(
              subject, nest, nest.with().size() > 1 ? Optional.empty() : FitRule.best(ways)));
    }
    return all;
  }

  /** Half the card of either, which is what their walls take where they lie side by side. */
  private static double caliper(Subject subject, Together.Nest nest) {
    Parts parts = subject.net().parts();
    return (parts.caliper(nest.outer(), subject.caliper())
            + parts.caliper(nest.inner(), subject.caliper()))
        / 2;
  }

  private static Parts.Placing placing(Subject subject, Together.Nest nest) {
    return subject.net().parts().placings().get(nest.placing());
  }

  private static Parts.Part part(Subject subject, int part) {
    return subject.net().parts().all().get(part);
  }

  private static List<Integer> body(List<List<Integer>> bodies, Parts.Part part) {
    return bodies.stream().filter(b -> b.contains(part.panels().getFirst())).findFirst().get();
  }

  /** Room across beyond what the card takes where there is least, in mm; below 0 too tight. */
  double least() {
    return slip.map(Slip::least).orElseGet(this::beyondCard);
  }

  private double beyondCard() {
    double caliper = caliper(subject, nest);
    double between = nest.between().times() * caliper - nest.between().mm();
    return 2 * nest.room() - 2 * caliper - Math.max(0, between);
  }

  /** The same where there is most. */
  private double most() {
    return slip.map(Slip::most).orElse(least());
  }

  boolean isTight() {
    return least() < -Slip.LEAST;
  }

  /** Whether the one rests on the other before the walls of the two lie side by side. */
  private boolean standsOff() {
    return nest.off() > Slip.LEAST && 2 * nest.slack() > Slip.LOOSE;
  }

  private boolean isOver() {
    return placing(subject, nest).shut() instanceof Parts.Placing.Over;
  }

  private boolean isLoose() {
    return most() > Slip.LOOSE + Slip.LEAST;
  }

  private Message comes() {
    return called(placing(subject, nest).part());
  }

  private Message onto() {
    return called(placing(subject, nest).onto());
  }

  /** A part, of what goes in at once all of it. */
  private Message called(int part) {
    List<Integer> all = part == nest.inner() ? nest.with() : List.of(part);
    return PartNames.of(subject.net().parts(), all);
  }

  private boolean comeSeveral() {
    return nest.with().size() > 1 && placing(subject, nest).part() == nest.inner();
  }

  private String word() {
    return placing(subject, nest).word();
  }

  /** How it fits, to follow on other words. */
  Message words() {
    if (isTight()) {
      return Message.of(
          comeSeveral() ? "%s do not go %s %s" : "%s does not go %s %s", comes(), word(), onto());
    }
    if (standsOff()) {
      return Message.of(
          isOver()
              ? "%s does not go %s %s: its rim stays %s above the walls there"
              : comeSeveral()
                  ? "%s go %s %s, but stop %s before they are as wide as the opening"
                  : "%s goes %s %s, but stops %s before it is as wide as the opening",
          comes(),
          word(),
          onto(),
          Value.length(nest.off()));
    }
    return Message.of(
        comeSeveral()
            ? "%s go %s %s with %s of room across beyond the card%s"
            : "%s goes %s %s with %s of room across beyond the card%s",
        comes(),
        word(),
        onto(),
        room(),
        isLoose() ? ", loose" : "");
  }

  /** The room across, from least to most where a beginner could tell the two apart. */
  private Message room() {
    Value least = Value.length(Math.max(0, least()));
    return isLoose() && most() - Math.max(0, least()) > Slip.LEAST
        ? Message.of("%s to %s", least, Value.length(most()))
        : Message.of("%s", least);
  }

  /** What is amiss; empty where it is just right. */
  Optional<Finding> finding() {
    if (!isTight() && standsOff()) {
      return Optional.of(standing());
    }
    if (!isTight() && !isLoose()) {
      return Optional.empty();
    }
    if (slip.isPresent()) {
      return Optional.of(
          told(new FitText(subject, slip.get(), caliper(subject, nest), isOver()).finding()));
    }
    double off = isTight() ? Slip.EASY - least() : most() - Slip.EASY;
    Message what =
        isTight()
            ? Message.of(
                comeSeveral()
                    ? "%s lack %s on a side to go %s %s: the card is %s thick."
                    : "%s lacks %s on a side to go %s %s: the card is %s thick.",
                comes(),
                Value.atLeast(-least() / 2),
                word(),
                onto(),
                Value.length(caliper(subject, nest)))
            : Message.of(
                comeSeveral()
                    ? "%s go %s %s loose, with %s more room across than the card takes."
                    : "%s goes %s %s loose, with %s more room across than the card takes.",
                comes(),
                word(),
                onto(),
                Value.length(most()));
    Value.Name outer = Value.name(part(subject, nest.outer()).name());
    int panel = largest(part(subject, nest.outer()));
    return Optional.of(
        told(
            new Finding(
                FitRule.NAME,
                isTight() ? Severity.ERROR : Severity.WARNING,
                what,
                Message.of(
                    "Set each side of %s %s farther %s.",
                    outer, Value.length(Math.ceil(50 * off) / 100), isTight() ? "out" : "in"),
                new Place.AtPanel(panel),
                placing(subject, nest).site())));
  }

  /** It rests on something that reaches farther than the opening is deep. */
  private Finding standing() {
    Parts.Placing goes = placing(subject, nest).shut();
    double by =
        goes instanceof Parts.Placing.Over o
            ? o.by()
            : goes instanceof Parts.Placing.Into i ? i.by() : Parts.Placing.ALL_THE_WAY;
    Value.Name outer = Value.name(part(subject, nest.outer()).name());
    Value.Name inner = Value.name(part(subject, nest.inner()).name());
    Message deeper =
        Double.isNaN(by)
            ? Message.of(
                "Make %s more than %s deeper, or leave off what reaches so far on %s.",
                outer, Value.length(nest.off()), inner)
            : Message.of(
                "Leave out by, or make it more than %s; what still stands in the way is told then.",
                Value.length(by + nest.off()));
    return new Finding(
            FitRule.NAME,
            isOver() ? Severity.ERROR : Severity.WARNING,
            Message.of("%s.", words()).capital(),
            deeper,
            new Place.AtPanel(largest(part(subject, nest.outer()))),
            placing(subject, nest).site())
        .telling(isOver() ? words() : Message.EMPTY);
  }

  private Finding told(Finding found) {
    return isTight() ? found.telling(words()) : found;
  }

  private int largest(Parts.Part part) {
    return part.panels().stream()
        .max(Comparator.comparingDouble(p -> Math.rint(subject.panel(p).outline().area())))
        .orElseThrow();
  }
}
