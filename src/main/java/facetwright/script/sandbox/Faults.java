package facetwright.script.sandbox;

import facetwright.message.Message;
import facetwright.net.NetException;
import facetwright.script.text.Names;
import facetwright.script.text.Reading;
import facetwright.words.Mend;
import facetwright.words.NearName;
import facetwright.words.Site;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.PolyglotException.StackFrame;
import org.graalvm.polyglot.SourceSection;
import org.graalvm.polyglot.Value;

/** Turns what a run threw into a {@link ScriptException}. */
final class Faults {
  static final String INTERNAL_MESSAGE =
      "Facetwright failed at this call; that is a fault of the program, not of your script";
  static final String INTERNAL_REMEDY = "Try other values here, and report the script";

  static final String ONE_FILE =
      "A script has no import and no export: use(\"tubs.js\") gives what another file offers";

  static final String SAY = "To see a value while you write, say it: say([\"side\", side])";

  private static final Pattern JAVA_NAME =
      Pattern.compile("\\b[a-z]\\w*(?:\\.[\\w$]+)+\\S*@[0-9a-f]+");
  private static final Pattern SYNTAX_PLACE =
      Pattern.compile("^SyntaxError: (?:" + Where.ANY + ":\\d+:\\d+ )?");
  private static final Pattern NOT_DEFINED =
      Pattern.compile("^ReferenceError: (\\S+) is not defined");
  private static final Pattern NOT_A_FUNCTION =
      Pattern.compile("^TypeError: (?:.*\\.)?([\\w$]+) is not a function");
  private static final Pattern NO_MEMBER =
      Pattern.compile("^TypeError: invokeMember \\(([\\w$]+)\\) on (a [\\w ]+?) failed");
  private static final Map<String, String> GONE =
      Map.ofEntries(
          Map.entry(
              "Date",
              "A script can't read the clock: the same script must always give the same net"),
          Map.entry("print", SAY),
          Map.entry("alert", SAY),
          Map.entry("eval", "Write the code out instead"),
          Map.entry("Function", "Write the function out instead"),
          Map.entry("require", ONE_FILE),
          Map.entry("load", ONE_FILE),
          Map.entry("fetch", "A script can't reach the network"),
          Map.entry("setTimeout", "A script runs from top to bottom, without waiting"),
          Map.entry("setInterval", "A script runs from top to bottom, without waiting"),
          Map.entry("BigInt", "Use plain numbers"));

  private Faults() {}

  /**
   * @param position where the script was
   * @param clock the run's; null before it began
   */
  static ScriptException of(Throwable thrown, Position position, Host<?> host, RunClock clock) {
    Site last = position.site();
    return switch (thrown) {
      case ScriptException e -> e;
      case PolyglotException e -> guest(e, position, host, clock);
      case CallException e -> new ScriptException(e.told(), e.site(), e.remedy(), e.mends());
      case NetException e -> new ScriptException(e.told(), e.site(), Message.EMPTY, e.mends());
      case OutOfMemoryError _ -> memory(last);
      case StackOverflowError _ -> recursion(last);
      default -> internal(thrown, last);
    };
  }

  static ScriptException memory(Site at) {
    return new ScriptException(
        ScriptException.Kind.MEMORY,
        "the script was stopped because it asked for too much memory",
        at,
        "Make fewer or shorter lists and texts here");
  }

  static ScriptException recursion(Site at) {
    return new ScriptException(
        ScriptException.Kind.RECURSION,
        "the script was stopped because its functions call each other without end",
        at,
        "Give the function that calls itself a case in which it does not");
  }

  /** Of a script that the engine has no room to read. */
  private static ScriptException nested(String source) {
    return new ScriptException(
        ScriptException.Kind.SYNTAX,
        "this is nested too deeply, or too long in one piece, to be read",
        Deepest.of(source),
        "Make it in parts, each with a name, or in a loop");
  }

  static ScriptException internal(Throwable cause, Site at) {
    ScriptException e =
        new ScriptException(ScriptException.Kind.INTERNAL, INTERNAL_MESSAGE, at, INTERNAL_REMEDY);
    e.initCause(cause);
    return e;
  }

  private static ScriptException guest(
      PolyglotException e, Position position, Host<?> host, RunClock clock) {
    Site last = position.site();
    Site site = site(e, position);
    String message = e.getMessage() == null ? "" : e.getMessage();
    if (e.isCancelled() || e.isInterrupted()) {
      return new ScriptException(ScriptException.Kind.STOPPED, "the script was stopped", site, "");
    }
    if (e.isSyntaxError()) {
      String text = SYNTAX_PLACE.matcher(message).replaceFirst("").lines().findFirst().orElse("");
      boolean inParts = text.contains("import") || text.contains("export");
      SyntaxText words = SyntaxText.of(text, sign(Spot.of(position.where().text(), site)));
      return new ScriptException(
          ScriptException.Kind.SYNTAX, words.fault(), site, inParts ? ONE_FILE : words.remedy());
    }
    if (e.isResourceExhausted()) {
      boolean unread = !last.isKnown();
      return !message.contains("tack")
          ? memory(site)
          : unread ? nested(position.where().text().main()) : recursion(site);
    }
    if (e.isHostException()) {
      return host(e.asHostException(), site);
    }
    if (e.isInternalError()) {
      return internal(e, site);
    }
    if (message.startsWith("RangeError: Maximum call stack size exceeded")) {
      return recursion(site);
    }
    Value error = e.getGuestObject();
    if (error != null && error.hasMember("fix")) {
      String said = text(error, "message");
      String fix = text(error, "fix");
      return Optional.ofNullable(clock)
          .flatMap(c -> c.refused(said, fix))
          .map(call -> new ScriptException(call.told(), site, call.remedy(), call.mends()))
          .orElseGet(
              () -> new ScriptException(Message.text(said), site, Message.text(fix), List.of()));
    }
    Spot spot = Spot.of(position.where().text(), site);
    Optional<String> thing = Members.thing(error, host);
    Optional<ScriptException> own =
        thing.isPresent() ? Optional.empty() : OwnThrow.of(message, error, site, spot);
    if (own.isPresent()) {
      return own.get();
    }
    Matcher unknown = NOT_DEFINED.matcher(message);
    Matcher uncallable = NOT_A_FUNCTION.matcher(message);
    boolean isUnknown = unknown.find();
    boolean isUncallable = !isUnknown && uncallable.find();
    String called = isUnknown ? unknown.group(1) : isUncallable ? uncallable.group(1) : "";
    if (host.isFunction(called)) {
      return taken(called, site);
    }
    if (isUnknown) {
      String name = unknown.group(1);
      return early(name, site, spot)
          .or(() -> OwnThrow.console(name, site, spot))
          .orElseGet(() -> unknown(name, name + " is not defined", site, host.meant(name, site)));
    }
    if (isUncallable) {
      return unknown(
          uncallable.group(1), uncallable.group(1) + " is not a function", site, host.names());
    }
    Matcher member = NO_MEMBER.matcher(message);
    if (member.find()) {
      return Members.lacking(member.group(2), member.group(1), site, host);
    }
    if (error == null || error.isNull() || thing.isPresent()) {
      return new ScriptException(
          ScriptException.Kind.THROWN,
          thing.orElse("nothing") + " was thrown, as if it were an error",
          site,
          "Throw words that say what is wrong: throw new Error(\"too tall\").");
    }
    return thrown(message, site, e.getSourceLocation());
  }

  /** The sign that stands at a place; empty where none does. */
  private static String sign(Spot spot) {
    int above = Math.max(0, spot.site().line() - 1);
    String line = spot.text().lines().skip(above).findFirst().orElse("");
    int at = spot.site().column() - 1;
    return at >= 0 && at < line.length() ? Character.toString(line.codePointAt(at)) : "";
  }

  private static ScriptException thrown(String message, Site site, SourceSection section) {
    CharSequence text = Where.isOurs(section) ? section.getCharacters() : "";
    ThrownText words = ThrownText.of(message, text);
    return new ScriptException(
        ScriptException.Kind.THROWN,
        JAVA_NAME.matcher(words.fault()).replaceAll("this value"),
        site,
        words.remedy());
  }

  /** A host function's error that no {@link HostClock} turned into the script's. */
  private static ScriptException host(Throwable thrown, Site site) {
    return switch (thrown) {
      case CallException e -> new ScriptException(e.told(), site, e.remedy(), e.mends());
      case NetException e -> new ScriptException(e.told(), site, Message.EMPTY, e.mends());
      default -> internal(thrown, site);
    };
  }

  /** A function of the language that the script hides behind a name of its own. */
  private static ScriptException taken(String name, Site site) {
    return new ScriptException(
        ScriptException.Kind.UNKNOWN_NAME,
        "the script calls something of its own " + name + ", so that the function is hidden",
        site,
        "Give what is made with const, let or function another name, such as the"
            + capital(name)
            + ".",
        List.of());
  }

  /**
   * Whether what a keyword makes is not there before its line (ECMA-262, sections 14.3 and 15.7).
   */
  private static boolean isLate(Reading reading, int maker) {
    return reading.is(maker, "const") || reading.is(maker, "let") || reading.is(maker, "class");
  }

  /** Of a name that is made, but further down. */
  private static Optional<ScriptException> early(String name, Site site, Spot spot) {
    Reading reading = Reading.of(spot.text());
    OptionalInt made =
        Names.of(reading).all().stream()
            .filter(n -> n.word().equals(name) && isLate(reading, n.maker()))
            .mapToInt(n -> reading.line(reading.token(n.token()).start()))
            .findFirst();
    if (made.isEmpty() || made.getAsInt() < spot.site().line()) {
      return Optional.empty();
    }
    int line = made.getAsInt();
    return Optional.of(
        new ScriptException(
            ScriptException.Kind.UNKNOWN_NAME,
            name + " is used before it is made",
            site,
            "It is made in "
                + (site.isInFile() ? site.in().at(line - spot.site().line()) : "line " + line)
                + ": put that above what uses it."));
  }

  private static String capital(String name) {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  private static ScriptException unknown(
      String name, String message, Site site, List<String> names) {
    String gone = GONE.get(name);
    Optional<String> near = gone != null ? Optional.empty() : NearName.nearest(name, names);
    String remedy =
        gone != null
            ? gone
            : near.map(n -> "Did you mean " + n + "?")
                .orElse(
                    "Make it with const or let above this line, or see what functions there are.");
    List<Mend> mends = near.<Mend>map(n -> new Mend.Word(name, n)).stream().toList();
    return new ScriptException(ScriptException.Kind.UNKNOWN_NAME, message, site, remedy, mends);
  }

  private static String text(Value error, String member) {
    Value value = error.getMember(member);
    return value != null && value.isString() ? value.asString() : "";
  }

  /** The innermost place in the script's own text, or in a file that it uses. */
  private static Site site(PolyglotException e, Position position) {
    SourceSection inner = Where.isOurs(e.getSourceLocation()) ? e.getSourceLocation() : null;
    Site script = position.script();
    for (StackFrame frame : e.getPolyglotStackTrace()) {
      SourceSection place = frame.isGuestFrame() ? frame.getSourceLocation() : null;
      inner = inner == null && Where.isOurs(place) ? place : inner;
      if (Where.isScript(place)) {
        script = position.where().ofCall(place, Site.NONE);
        break;
      }
    }
    return inner == null ? position.site() : position.where().ofCall(inner, script);
  }
}
