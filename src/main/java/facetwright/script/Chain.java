package facetwright.script;

import facetwright.script.text.Call;
import facetwright.script.text.Reading;
import facetwright.script.text.Token.Kind;
import facetwright.words.Site;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What becomes of a call's result, as far as the script's text tells.
 *
 * @param fate what becomes of it
 * @param name what it is kept as; where it is dropped, the name that the chain of calls begins
 *     with; empty for none
 * @param start the token that the chain of calls begins with
 * @param end the bracket that ends the call
 */
record Chain(Fate fate, String name, int start, int end) {
  private static final Chain TAKEN = new Chain(Fate.TAKEN, "", 0, 0);

  /** What becomes of what a call comes to. */
  enum Fate {
    /** The call is a statement of its own. */
    DROPPED,
    /** It is given a name. */
    NAMED,
    /** A function of the script gives it back. */
    GIVEN_BACK,
    /** It is a part of something else, such as a list; or the text does not tell. */
    TAKEN
  }

  /**
   * @param site where the name of the called function stands
   */
  static Chain of(Reading reading, Site site) {
    OptionalInt offset = reading.offset(site.line(), site.column());
    int called = offset.isPresent() ? reading.at(offset.getAsInt()) : -1;
    Optional<Call> call = Call.at(reading, called);
    int start = call.isEmpty() ? -1 : Call.first(reading, called);
    if (start < 0) {
      return TAKEN;
    }
    int end = call.get().close();
    int before = reading.back(start);
    if (reading.is(before, '=')) {
      int target = reading.back(before);
      return reading.isOwnName(target) && ends(reading, end)
          ? new Chain(Fate.NAMED, reading.word(target), target, end)
          : TAKEN;
    }
    if (reading.is(before, "=>") || reading.is(before, "return")) {
      return new Chain(Fate.GIVEN_BACK, "", start, end);
    }
    boolean isHead = start != called && reading.isDot(reading.forth(start));
    return begins(reading, before, start) && ends(reading, end)
        ? new Chain(Fate.DROPPED, isHead ? reading.word(start) : "", start, end)
        : TAKEN;
  }

  /** Whether the script speaks of its name anywhere else, other than to give it another value. */
  boolean isNamedElsewhere(Reading reading) {
    for (int i = 0; i < reading.tokens().size(); i++) {
      boolean isOutside = i < start || i > end;
      if (isOutside && reading.isOwnName(i) && reading.word(i).equals(name)) {
        String before = reading.word(reading.back(i));
        boolean isMade = before.equals("const") || before.equals("let") || before.equals("var");
        if (!isMade && !reading.is(reading.forth(i), '=')) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a statement may begin between two tokens. */
  private static boolean begins(Reading reading, int before, int start) {
    boolean isSign =
        reading.is(before, ';')
            || reading.is(before, '{')
            || reading.is(before, '}')
            || reading.is(before, ')');
    boolean isWord = reading.is(before, "else") || reading.is(before, "do");
    return before < 0
        || isSign
        || isWord
        || ((!reading.is(before, Kind.MARK) || reading.is(before, ']'))
            && reading.line(reading.token(before).end())
                < reading.line(reading.token(start).start()));
  }

  /** Whether a statement may end there, or go on with another name. */
  private static boolean ends(Reading reading, int end) {
    return reading.endsBehind(end) || reading.is(reading.forth(end), ',');
  }
}
