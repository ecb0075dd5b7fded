package facetwright.script.sandbox;

import facetwright.words.Site;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** The script-side helpers of one context, out of reach of the script. */
final class Prelude implements SiteFinder {
  /** By the names among the globals, which hardly change. */
  private static final Map<List<String>, Source> DRESSES = new ConcurrentHashMap<>();

  private final Value stack;
  private final Value fail;
  private final Value apply;
  private final Value using;
  private Position position = new Position(Where.NOWHERE);

  Prelude(Context context) {
    Value helpers = context.eval(Guest.PRELUDE);
    stack = helpers.getMember("stack");
    fail = helpers.getMember("fail");
    apply = helpers.getMember("apply");
    using = helpers.getMember("using");
  }

  /** A script begins. */
  void begin(Position of) {
    position = of;
  }

  /**
   * The function by which the script uses files.
   *
   * @param checks the host's, which gives back the name it is given
   * @param begin gives what a file offers, or a function that does
   * @param end told the file's name, and what that function gave
   * @param lacks told the file's name, and what of it is asked for and not there
   */
  Value using(
      ProxyExecutable checks, ProxyExecutable begin, ProxyExecutable end, ProxyExecutable lacks) {
    return using.execute(checks, begin, end, lacks);
  }

  /**
   * Puts functions among the globals, each in a JavaScript one of the same name, so that what the
   * script can find out about it is the same in every run.
   */
  void dress(Context context, SequencedMap<String, ProxyExecutable> functions) {
    Source made =
        DRESSES.computeIfAbsent(
            List.copyOf(functions.sequencedKeySet()), names -> Guest.internal(dress(names)));
    context
        .eval(made)
        .executeVoid(
            Stream.concat(Stream.of(apply), functions.sequencedValues().stream()).toArray());
  }

  /** A function that says each name as it stands: so the engine need not be told it in each run. */
  private static String dress(List<String> names) {
    String works = names.stream().map(name -> ", $" + name).collect(Collectors.joining());
    return names.stream()
        .map(
            name ->
                "globalThis.%1$s = {%1$s: (...values) => apply($%1$s, undefined, values)}.%1$s;\n"
                    .formatted(name))
        .collect(Collectors.joining("", "(apply" + works + ") => {\n'use strict';\n", "}"));
  }

  @Override
  public Site here() {
    return position.where().of(stack.execute().asString(), position.script());
  }

  /** Throws a JavaScript error at the call now running; never returns. */
  RuntimeException fail(String message, String fix) {
    fail.executeVoid(message, fix);
    throw new AssertionError("the prelude did not throw");
  }
}
