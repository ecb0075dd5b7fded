package facetwright.script.text;

import facetwright.script.text.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A call as a script writes it, its brackets closed.
 *
 * @param name the token of the called name
 * @param open the bracket that opens its arguments
 * @param close the bracket that closes them
 */
public record Call(int name, int open, int close) {

  /** The call whose name a token is; empty where no closed brackets follow. */
  public static Optional<Call> at(Reading reading, int name) {
    int open = reading.forth(name);
    boolean isCall =
        reading.is(name, Kind.NAME) && reading.is(open, '(') && reading.partner(open) >= 0;
    return isCall ? Optional.of(new Call(name, open, reading.partner(open))) : Optional.empty();
  }

  /** Every call of a name that stands alone, no member of anything, in the order of the script. */
  public static List<Call> of(Reading reading, String name) {
    List<Call> found = new ArrayList<>();
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.is(i, name) && reading.isOwnName(i) && !isMade(reading, i)) {
        at(reading, i).ifPresent(found::add);
      }
    }
    return found;
  }

  /**
   * The token that a chain of calls begins with: {@code a} of {@code a.b(1).c(2)}; -1 where that is
   * no name.
   *
   * @param member the name of one that is called in it
   */
  public static int first(Reading reading, int member) {
    int i = member;
    while (reading.isDot(reading.back(i))) {
      i = reading.back(reading.back(i));
      while (reading.is(i, ')') || reading.is(i, ']')) {
        i = reading.partner(i) < 0 ? -1 : reading.back(reading.partner(i));
      }
    }
    return reading.is(i, Kind.NAME) || reading.is(i, "this") ? i : -1;
  }

  /** Whether the name is that of a function made here. */
  private static boolean isMade(Reading reading, int name) {
    return reading.is(reading.back(name), "function");
  }

  public List<Span> arguments(Reading reading) {
    return Span.parts(reading, open);
  }

  /** From its name to its last bracket. */
  public Span span() {
    return new Span(name, close);
  }
}
