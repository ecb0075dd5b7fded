package facetwright.script.sandbox;

import facetwright.script.text.Call;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Token;
import facetwright.words.Site;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.Value;

/** What a script throws of its own will, in its own words, and what does the same better. */
final class OwnThrow {
  private static final String CHECK =
      "The script itself stops here. As a check it leaves the net in sight: must(condition, \"what"
          + " to do\") says the words of a condition that does not hold.";
  private static final String WORDS =
      "Throw words that say what is wrong: throw new Error(\"too tall\").";
  private static final String WAITING =
      "A promise is given up with these words. A script runs from top to bottom, without waiting:"
          + " take promises, async and await out.";
  private static final String REJECTED = "Unhandled promise rejection: ";

  /** Numbers and the like, thrown as they are. */
  private static final Pattern NO_WORDS =
      Pattern.compile("-?\\d[\\d.e+-]*|-?Infinity|NaN|true|false|null|undefined|");

  /** Errors that the engine makes, too, and what their message begins with. */
  private static final Pattern ENGINES =
      Pattern.compile("^(?:Range|Type|Reference|Eval|Syntax|URI|Aggregate|Internal)Error(?:: |$)");

  private static final Pattern NAMED = Pattern.compile("^[A-Za-z_$][\\w$]*(?:: |$)");
  private static final Pattern REFUSED = Pattern.compile("^Error: Operation is not allowed");

  private OwnThrow() {}

  /**
   * What the script threw; empty for what the engine did.
   *
   * @param message the engine's words for it
   * @param thrown what was thrown; null where that is not known
   * @param site where it was thrown, as far as the engine knows
   * @param spot the same in the text it lies in
   */
  static Optional<ScriptException> of(String message, Value thrown, Site site, Spot spot) {
    Reading reading = Reading.of(spot.text());
    int rejected = message.indexOf(REJECTED);
    if (rejected >= 0) {
      String words = message.substring(rejected + REJECTED.length());
      return Optional.of(fault(words, rejected(reading, words, site), WAITING));
    }
    if (thrown == null) {
      return Optional.empty();
    }
    if (thrown.isNull()
        || thrown.isString()
        || thrown.hasArrayElements()
        || NO_WORDS.matcher(message).matches()) {
      boolean isWorded = thrown.isString() && !thrown.asString().isBlank();
      return Optional.of(
          isWorded ? fault(thrown.asString(), site, CHECK) : odd(message, thrown, site));
    }
    boolean isEngines = ENGINES.matcher(message).find() || REFUSED.matcher(message).find();
    if (isEngines && !isThrown(reading, spot.site())) {
      return Optional.empty();
    }
    Matcher named = NAMED.matcher(message);
    String words = named.find() ? message.substring(named.end()) : message;
    boolean isPromised = isPromised(reading, spot.site());
    return Optional.of(
        words.isBlank()
            ? fault("the script throws an error that says nothing", site, WORDS)
            : fault(words, site, isPromised ? WAITING : CHECK));
  }

  private static ScriptException fault(String words, Site site, String remedy) {
    return new ScriptException(ScriptException.Kind.THROWN, words, site, remedy);
  }

  /** Something that is neither words nor an error. */
  private static ScriptException odd(String message, Value thrown, Site site) {
    String shown =
        thrown.isNull()
            ? "nothing"
            : thrown.isString() ? "an empty text" : thrown.hasArrayElements() ? "a list" : message;
    return fault(shown + " was thrown, as if it were an error", site, WORDS);
  }

  /** Whether the word throw stands at a place or before what stands there. */
  private static boolean isThrown(Reading reading, Site site) {
    int token = token(reading, site);
    return reading.is(token, "throw") || reading.is(reading.back(token), "throw");
  }

  /** Whether what stands at a place is given to the word reject. */
  private static boolean isPromised(Reading reading, Site site) {
    int before = reading.back(token(reading, site));
    return reading.is(before, '(') && reading.is(reading.back(before), "reject");
  }

  private static int token(Reading reading, Site site) {
    OptionalInt at = reading.offset(site.line(), site.column());
    return at.isEmpty() ? -1 : reading.at(at.getAsInt());
  }

  /** Where the words of a promise stand that was given up, or else where one is made. */
  private static Site rejected(Reading reading, String words, Site last) {
    int made = -1;
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.said(i).filter(words::equals).isPresent()) {
        return site(reading, i, last);
      }
      boolean isMaking = reading.is(i, "Promise") || reading.is(i, "async");
      made = made < 0 && isMaking ? i : made;
    }
    return made < 0 ? last : site(reading, made, last);
  }

  /** A token of the script itself; a file's stays where its call is. */
  private static Site site(Reading reading, int token, Site last) {
    int start = reading.token(token).start();
    return last.isInFile() ? last : new Site(reading.line(start), reading.column(start));
  }

  /** What is told of {@code console}, which is not there; empty for another name. */
  static Optional<ScriptException> console(String name, Site site, Spot spot) {
    if (!name.equals("console")) {
      return Optional.empty();
    }
    Reading reading = Reading.of(spot.text());
    int member = reading.forth(reading.forth(token(reading, spot.site())));
    boolean isWarning =
        List.of("error", "warn", "assert").stream().anyMatch(w -> reading.is(member, w));
    String words =
        Call.at(reading, member).map(call -> call.arguments(reading)).orElse(List.of()).stream()
            .filter(given -> given.is(reading, Token.Kind.TEXT))
            .map(Span::first)
            .flatMap(i -> reading.said(i).stream())
            .findFirst()
            .orElse("");
    return Optional.of(
        new ScriptException(
            ScriptException.Kind.UNKNOWN_NAME,
            "a script has no console" + (words.isEmpty() ? "" : " to write on: " + words),
            site,
            isWarning
                ? "To check a value, write must(condition, \"what to do\"); to see one, say it:"
                    + " say([\"side\", side])"
                : Faults.SAY));
  }
}
