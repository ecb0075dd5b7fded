package facetwright.check.closing;

import facetwright.check.finding.Subject;
import facetwright.fold.touch.Collision;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.function.IntFunction;

/** A panel that senses and laps hold between two others, and that their crease is in the way of. */
public final class Held {
  private Held() {}

  /**
   * What is the matter.
   *
   * @param c one that {@link Collision#held holds} a panel
   * @param name how a panel is called
   */
  public static Message words(Collision c, IntFunction<?> name) {
    Message between =
        Message.of(
            "%s lies between %s and %s",
            name.apply(c.held().orElseThrow()),
            name.apply(c.crease().getFirst()),
            name.apply(c.crease().getLast()));
    return c.isInOnePlace()
        ? between.plus(", and what it is joined to there lies outside them")
        : Message.of(
            "%s and runs %s through the crease that joins them", between, Value.length(c.depth()));
  }

  static Message fix(Subject subject, Collision c) {
    Message shorter =
        c.isInOnePlace()
            ? Message.of("Make %s end short of that crease.", subject.name(c.held().orElseThrow()))
            : Message.of(
                "Make %s at least %s shorter.",
                subject.name(c.held().orElseThrow()), Value.atLeast(c.depth()));
    return shorter.plus(
        " That, or fold one of the scores the other way, so that it lies outside the two.");
  }
}
