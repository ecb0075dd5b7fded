package facetwright.script.sandbox;

import facetwright.script.text.Gathered;
import facetwright.script.text.Name;
import facetwright.script.text.Piece;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/**
 * The files that a script uses, in one run. Each is read when it is used first, on the script's own
 * time and by its rules, and what it offers is kept. Their texts stand below the script: nothing
 * here opens a file.
 */
final class Uses {
  /**
   * The function by which a script uses a file; a host that has it only checks what it is given.
   */
  static final String NAME = "use";

  private final Gathered text;
  private final Context context;
  private final Host<?> host;
  private final Map<String, Value> offered = new HashMap<>();
  private final List<String> reading = new ArrayList<>();

  private Uses(Where where, Context context, Host<?> host) {
    this.text = where.text();
    this.context = context;
    this.host = host;
  }

  /**
   * Has a function among the globals by which the script uses files.
   *
   * @param checks the host's, which only gives back the name it is given
   */
  static void install(
      ProxyExecutable checks,
      Where where,
      Context context,
      Prelude prelude,
      RunClock clock,
      Host<?> host) {
    Uses uses = new Uses(where, context, host);
    ProxyExecutable begin = given -> clock.run(() -> uses.begin(given[0].asString()));
    ProxyExecutable end = given -> uses.end(given[0].asString(), given[1]);
    ProxyExecutable lacks =
        given -> clock.run(() -> uses.lacks(given[0].asString(), given[1].asString()));
    context.getBindings("js").putMember(NAME, prelude.using(checks, begin, end, lacks));
  }

  /** What a file offers or, where it was not read yet, the function that reads it. */
  private Object begin(String name) {
    Value known = offered.get(name);
    if (known != null) {
      return known;
    }
    if (reading.contains(name)) {
      List<String> ring = new ArrayList<>(reading.subList(reading.indexOf(name), reading.size()));
      ring.add(name);
      throw new CallException(
          ring.size() == 2
              ? name + " uses itself"
              : "the files use each other in a ring: " + String.join(" uses ", ring),
          "Put what both need into a file of its own, and use that in both.");
    }
    Piece piece = piece(name);
    Value maker = parsed(piece);
    reading.add(name);
    host.reads(reading.getLast());
    return maker;
  }

  private Piece piece(String name) {
    Piece piece =
        text.piece(name)
            .orElseThrow(
                () ->
                    new CallException(
                        "there is no " + name + " here to use",
                        "Write its name in quotes where it is used, and put the file into the"
                            + " folder of the script."));
    if (piece.state() == Piece.State.LACKING) {
      throw new CallException(piece.text(), FIND);
    }
    return piece;
  }

  private static final String FIND =
      "A script uses files of its own folder and of the library; see the name and where it lies.";

  private Value parsed(Piece piece) {
    int number = text.pieces().indexOf(piece);
    try {
      // By itself first, for its faults, and so that no bracket of its own ends the function.
      context.parse(source(Where.standing(number), piece.text()));
      List<String> names = Gathered.offered(piece.text()).stream().map(Name::word).toList();
      StringBuilder all = new StringBuilder("(function () {\n");
      all.append(piece.text()).append("\nreturn {__proto__: null");
      names.forEach(n -> all.append(", ").append(n));
      all.append("};\n})");
      return context.eval(source(Where.running(number), all.toString()));
    } catch (PolyglotException e) {
      if (e.isResourceExhausted()) {
        throw deep(piece);
      }
      throw e;
    } catch (StackOverflowError e) {
      throw deep(piece);
    }
  }

  private static CallException deep(Piece piece) {
    return new CallException(
        piece.name() + " is nested too deeply, or too long in one piece, to be read",
        "Make it in parts, each with a name, or in a loop.");
  }

  private static Source source(String name, String text) {
    return Source.newBuilder("js", text, name).buildLiteral();
  }

  /** A file was read, well or badly. */
  private Object end(String name, Value offers) {
    reading.remove(name);
    host.reads(reading.isEmpty() ? "" : reading.getLast());
    if (!offers.isNull()) {
      offered.put(name, offers);
    }
    return null;
  }

  private Object lacks(String name, String asked) {
    List<String> names = Gathered.offered(piece(name).text()).stream().map(Name::word).toList();
    throw new CallException(
        name + " offers no " + asked,
        NearName.nearest(asked, names).map(n -> "Did you mean " + n + "? ").orElse("")
            + (names.isEmpty()
                ? "It offers nothing: a file offers the functions and constants at its top."
                : "It offers " + String.join(", ", names) + "."));
  }
}
