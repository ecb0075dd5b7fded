package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Finding.Severity;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.place.Swinging;
import facetwright.fold.pose.Together;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts;
import facetwright.net.Parts.Placing;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is hinged and catches as it opens, or comes down to the table. */
public final class SwingRule implements Rule {
  static final String NAME = "swing";

  /**
   * Card gives so much, in mm, that what catches by less still opens; common practice, no source.
   */
  private static final double GIVES = 0.5;

  /** Measures are told in steps of this, in mm, rounded up. */
  private static final double TOLD = 0.1;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Together.Swing swing : subject.folded().together().swings()) {
      caught(subject, swing).ifPresent(found::add);
      down(subject, swing).ifPresent(found::add);
    }
    return found;
  }

  private static Swinging swinging(Subject subject, Together.Swing swing) {
    Parts parts = subject.net().parts();
    Placing placing = parts.placings().get(swing.placing());
    double caliper =
        (parts.caliper(placing.part(), subject.caliper())
                + parts.caliper(placing.onto(), subject.caliper()))
            / 2;
    return new Swinging(subject.net(), subject.folded().together(), swing, caliper);
  }

  private static Value.Name name(Subject subject, int part) {
    return Value.name(subject.net().parts().all().get(part).name());
  }

  /** How all that is hinged opens, to follow on other words; what catches is told by findings. */
  public static List<Message> words(Subject subject) {
    List<Message> words = new ArrayList<>();
    for (Together.Swing swing : subject.folded().together().swings()) {
      Placing placing = subject.net().parts().placings().get(swing.placing());
      Swinging.Way way = swinging(subject, swing).way();
      if (!way.catches()) {
        Message clear =
            Double.isInfinite(way.room())
                ? Message.text("")
                : Message.of(", clear by %s", Value.length(way.room()));
        words.add(
            Message.of(
                "%s opens to %s°%s",
                name(subject, placing.part()),
                Decimals.plain(Math.toDegrees(swing.radians())),
                clear));
      }
    }
    return words;
  }

  private static Optional<Finding> caught(Subject subject, Together.Swing swing) {
    Swinging swinging = swinging(subject, swing);
    Swinging.Way way = swinging.way();
    if (!way.catches()) {
      return Optional.empty();
    }
    Placing placing = subject.net().parts().placings().get(swing.placing());
    Value.Name part = name(subject, placing.part());
    Message what =
        Message.of(
            "%s catches on %s as it opens, at %s°: %s on %s (looked at every half degree).",
            part,
            name(subject, placing.onto()),
            Decimals.plain(way.at()),
            subject.name(way.moving()),
            subject.name(way.still()));
    OptionalDouble shallower = swinging.shallower();
    OptionalDouble outward = swinging.outward();
    Message remedy =
        shallower.isPresent() && outward.isPresent()
            ? Message.of(
                "Let %s reach %s less far down, or be %s deeper from the hinge to the side across.",
                part, told(shallower.getAsDouble()), told(outward.getAsDouble()))
            : shallower.isPresent()
                ? Message.of("Let %s reach %s less far down.", part, told(shallower.getAsDouble()))
                : outward.isPresent()
                    ? Message.of(
                        "Make %s %s deeper from the hinge to the side across.",
                        part, told(outward.getAsDouble()))
                    : Message.text("Let it open less far, or hinge it at another side.");
    boolean isStuck = outward.isEmpty() || outward.getAsDouble() > GIVES;
    Finding finding =
        new Finding(
            NAME,
            isStuck ? Severity.ERROR : Severity.WARNING,
            what,
            remedy,
            new Place.AtPanel(way.moving()),
            placing.site());
    return Optional.of(
        isStuck
            ? finding.telling(
                Message.of("%s catches on %s as it opens", part, name(subject, placing.onto())))
            : finding);
  }

  private static Value told(double mm) {
    return Value.atLeast(Math.ceil(mm / TOLD) * TOLD);
  }

  private static Optional<Finding> down(Subject subject, Together.Swing swing) {
    OptionalDouble table = swinging(subject, swing).table();
    if (table.isEmpty()) {
      return Optional.empty();
    }
    Placing placing = subject.net().parts().placings().get(swing.placing());
    return Optional.of(
        new Finding(
            NAME,
            Severity.WARNING,
            Message.of(
                "%s comes down to the table at %s°.",
                name(subject, placing.part()), Decimals.plain(table.getAsDouble())),
            Message.of("Let it open by %s° at most.", Decimals.plain(table.getAsDouble())),
            new Place.AtPanel(subject.net().parts().all().get(placing.part()).panels().getFirst()),
            placing.site()));
  }
}
