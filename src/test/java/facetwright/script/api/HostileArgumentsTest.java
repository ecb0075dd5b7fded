package facetwright.script.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.Host;
import facetwright.script.sandbox.HostClock;
import facetwright.script.sandbox.Sandbox;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.sandbox.SiteFinder;
import facetwright.script.vocabulary.Language;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a script writes into the values it passes, getters and the like, is run as the script's own
 * work and never while the host is at work; and each member is read once.
 */
class HostileArgumentsTest {
  /** How a thing of each kind comes about, to call its functions on. */
  private static final Map<Thing<?>, String> RECEIVERS =
      Map.of(
          Language.TOP, "globalThis",
          Things.FORM, "prism({ sides: 4, side: 20, height: 30 })",
          Things.OUTLINE, "regular({ sides: 5, side: 20 })",
          Things.WRAP, "wrap({ columns: 6, width: 20, rows: [10, 30, 10] })",
          Things.CELLS, "wrap({ columns: 6, width: 20, rows: [10, 30, 10] }).rows('wall')",
          Things.PART, "prism({ sides: 4, side: 20, height: 30 }).open('top').unfold()",
          Things.PANEL, "panel('front', { width: 40, height: 30 })",
          Things.BLANK, "blank({ width: 90, height: 60 })");

  static Stream<Arguments> functions() {
    return Language.things().stream()
        .flatMap(
            thing -> thing.functions().stream().map(fn -> Arguments.of(RECEIVERS.get(thing), fn)));
  }

  @ParameterizedTest
  @MethodSource("functions")
  void eachOptionIsReadOnceAndOnTheScriptsTime(String receiver, Fn<?> fn) {
    String braces =
        fn.optionNames().stream()
            .map(name -> "get %s() { seen('%s'); return 3; }".formatted(name, name))
            .collect(Collectors.joining(", ", "{ ", " }"));
    List<String> seen = call(receiver, fn, "", braces);
    assertThat(seen).containsExactlyInAnyOrderElementsOf(fn.optionNames());
  }

  @ParameterizedTest
  @MethodSource("functions")
  void whatObjectsInheritIsReadOnceAndOnTheScriptsTime(String receiver, Fn<?> fn) {
    String spoiled =
        fn.optionNames().stream()
            .map(
                name ->
                    "Object.defineProperty(Object.prototype, '%s', { get() { seen('%s'); return 3; } });"
                        .formatted(name, name))
            .collect(Collectors.joining("\n"));
    List<String> seen = call(receiver, fn, spoiled, "{}");
    assertThat(seen).containsExactlyInAnyOrderElementsOf(fn.optionNames());
  }

  @ParameterizedTest
  @MethodSource("functions")
  void itemsOfListsAreReadOnceAndOnTheScriptsTime(String receiver, Fn<?> fn) {
    String spoiled =
        """
        Object.defineProperty(Array.prototype, 1, { get() { seen('hole'); return 3; } });
        const inner = [1, , 3];
        const list = Object.defineProperty([inner, 0], 1, { get() { seen('item'); return inner; } });
        """;
    String braces =
        fn.optionNames().stream()
            .map(name -> name + ": list")
            .collect(Collectors.joining(", ", "{ ", " }"));
    List<String> seen = call(receiver, fn, spoiled, braces);
    long holes = seen.stream().filter("hole"::equals).count();
    long items = seen.stream().filter("item"::equals).count();
    assertThat(items).isEqualTo(fn.optionNames().size());
    assertThat(holes).isEqualTo(2 * items);
  }

  @ParameterizedTest
  @MethodSource("functions")
  void nothingIsTurnedIntoATextOrANumber(String receiver, Fn<?> fn) {
    String odd =
        """
        const odd = {
          toString() { seen('toString'); return '3'; },
          valueOf() { seen('valueOf'); return 3; },
          [Symbol.toPrimitive]() { seen('toPrimitive'); return 3; },
          get [Symbol.iterator]() { seen('iterator'); },
        };
        """;
    String braces =
        fn.optionNames().stream()
            .map(name -> name + ": odd")
            .collect(Collectors.joining(", ", "{ ", " }"));
    assertThat(call(receiver, fn, odd, braces)).isEmpty();
    assertThat(call(receiver, fn, odd, "odd")).isEmpty();
  }

  /** What the script was seen to do in the call, whatever became of the call. */
  private static List<String> call(String receiver, Fn<?> fn, String before, String last) {
    String source =
        """
        %s
        const receiver = %s;
        %s
        try { receiver.%s(%s%s); } catch (e) { e.message; }
        """
            .formatted(
                fn.name().equals("design") ? "" : "design('Trial');",
                receiver,
                before,
                fn.name(),
                "'x', ".repeat(fn.places().size()),
                last);
    Watched host = new Watched();
    try {
      return Sandbox.run("trial.js", source, Budget.USUAL, host);
    } catch (ScriptException e) {
      throw new AssertionError(source, e);
    }
  }

  private static final Budget SHORT =
      new Budget(Duration.ofMillis(400), Duration.ofMinutes(2), Long.MAX_VALUE);
  private static final Budget SMALL =
      new Budget(Duration.ofMinutes(1), Duration.ofMinutes(2), 64L << 20);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          prism({ sides: 4, side: 20, get height() { for (;;); } })          | TIME   | every loop
          prism({ sides: 4, side: 20, get height() { return this.height; } }) | RECURSION | itself
          for (;;) try { prism({ get sides() { throw 1; } }) } catch {}      | TIME   | every loop
          wrap({ rows: Object.defineProperty([], 0, { get() { for (;;); } }) }) | TIME | every loop
          for (const a = [];;) try { prism({ get sides() { a.push('x'.repeat(1e5).split('')); } }) } catch {} | MEMORY | fewer
          prism({ sides: 4, side: 20, height: 9 }).unfold({ get as() { for (;;); } }) | TIME | every loop
          Error.prototype.toString = () => { for (;;); }; prism(1)           | BAD_VALUE | in braces
          Object.prototype.get = 1; prism(1)                                 | BAD_VALUE | in braces
          Array.prototype[Symbol.iterator] = () => { for (;;); }; prism(1)   | BAD_VALUE | in braces
          try { prism(1) } catch (e) { Object.setPrototypeOf(e.constructor, () => { for (;;); }) } prism(1) | BAD_VALUE | in braces
          Error.prepareStackTrace = () => { for (;;); }; prism(1)            | THROWN | this line
          """)
  void aRunawayInAnArgumentIsTheScriptsOwn(
      String source, ScriptException.Kind kind, String advice) {
    Budget budget = kind == ScriptException.Kind.MEMORY ? SMALL : SHORT;
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () -> Sandbox.run("trial.js", "design('T');\n" + source, budget, new Watched()));
    assertThat(e.kind()).as(e.getMessage()).isEqualTo(kind);
    assertThat(e.remedy()).contains(advice);
    assertThat(e.line()).isEqualTo(2);
  }

  /** The whole language, with a function that notes when the script runs. */
  private static final class Watched implements Host<List<String>> {
    private final List<String> seen = new ArrayList<>();

    @Override
    public SequencedMap<String, ProxyExecutable> globals(SiteFinder sites, HostClock clock) {
      Counting counting = new Counting(clock);
      SequencedMap<String, ProxyExecutable> globals =
          Language.globals(new Session(Map.of(), false, Map.of()), sites, counting);
      ProxyExecutable see =
          arguments -> {
            seen.add(arguments[0].asString() + (counting.depth == 0 ? "" : " inside the host"));
            return null;
          };
      globals.put("seen", see);
      return globals;
    }

    @Override
    public List<String> finish() {
      return seen;
    }

    @Override
    public List<String> names() {
      return List.of();
    }
  }

  /** Knows whether the host is at work. */
  private static final class Counting implements HostClock {
    private final HostClock clock;
    private int depth;

    Counting(HostClock clock) {
      this.clock = clock;
    }

    @Override
    public <R> R run(Supplier<R> work) {
      depth++;
      try {
        return clock.run(work);
      } finally {
        depth--;
      }
    }
  }
}
