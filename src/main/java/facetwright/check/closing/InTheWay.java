package facetwright.check.closing;

import facetwright.check.finding.Subject;
import facetwright.fold.touch.Collision;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/** What is said of panels that are in each other's way. */
public final class InTheWay {
  private InTheWay() {}

  /**
   * What is the matter, in the middle of a sentence.
   *
   * @param name how a panel is called
   */
  public static Message words(Subject subject, Collision c, IntFunction<?> name) {
    return switch (c.kind()) {
      case PASSING ->
          Message.of(
              "%s and %s pass through each other, %s deep",
              name.apply(c.a()), name.apply(c.b()), Value.length(c.depth()));
      case ROUND ->
          Message.of(
              "%s and %s lie in one place, for the card runs round more than once",
              name.apply(c.a()), name.apply(c.b()));
      case HELD -> held(subject, c, name);
      case OUTSIDE ->
          Message.of(
              "%s is glued under %s, and yet the folds bring it onto the outside of that",
              name.apply(c.outside().orElseThrow()), name.apply(c.crease().getFirst()));
      case STUCK ->
          Message.of(
              "%s and %s lie in one place, and whichever lies over the other, something runs"
                  + " through a crease",
              name.apply(c.a()), name.apply(c.b()));
    };
  }

  private static Message held(Subject subject, Collision c, IntFunction<?> name) {
    int held = c.held().orElseThrow();
    OptionalInt host = c.pastHost(subject.net());
    int one = c.crease().getFirst();
    int other = c.crease().getLast();
    if (host.isPresent()) {
      return Message.of(
          "%s reaches %s past the edge of %s, under which it is glued, and through %s",
          name.apply(held),
          Value.length(c.depth()),
          name.apply(host.getAsInt()),
          name.apply(host.getAsInt() == one ? other : one));
    }
    Message between =
        Message.of(
            "%s lies between %s and %s", name.apply(held), name.apply(one), name.apply(other));
    return c.isInOnePlace()
        ? between.plus(", and what it is joined to there lies outside them")
        : Message.of(
            "%s and runs %s through the crease that joins them", between, Value.length(c.depth()));
  }

  /** What to do where folds are what has to change; empty of those that pass through each other. */
  static Message fix(Subject subject, Collision c) {
    return switch (c.kind()) {
      case PASSING -> Message.EMPTY;
      case ROUND ->
          Message.text(
              "The card runs round more than once: change the fold angles, so that they add up to"
                  + " 360° once round, or take panels out.");
      case HELD ->
          Message.of(
              "Make %s %s. That, or fold one of the scores the other way, so that it lies outside"
                  + " the two.",
              subject.name(c.held().orElseThrow()),
              c.isInOnePlace()
                  ? "end short of that crease"
                  : Message.of("at least %s shorter", Value.atLeast(c.depth())));
      case OUTSIDE ->
          Message.text(
              "Glue them the other way round, or fold one of the scores between them the other"
                  + " way.");
      case STUCK ->
          Message.text(
              "Fold one of the scores between them the other way, or make the panels shorter that"
                  + " reach across its crease.");
    };
  }
}
