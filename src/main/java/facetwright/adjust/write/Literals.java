package facetwright.adjust.write;

import facetwright.measure.Unit;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.scope.Scope;
import facetwright.script.text.Call;
import facetwright.script.text.Name;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Finds the lengths that a script writes out. */
public final class Literals {
  /** What stands in these calls is a dial's, or no measure of the net. */
  private static final Set<String> ASIDE = Set.of("dial", "design", "sheet", "aim");

  /** Kinds of values that are written as numbers, as they say what they want. */
  private static final List<String> NUMERIC = List.of("length", "number", "angle");

  private final Scope scope;
  private final Reading reading;
  private final Set<String> dials;
  private final Map<Integer, Literal> found = new TreeMap<>();

  private Literals(Scope scope, Set<String> dials) {
    this.scope = scope;
    this.reading = scope.reading();
    this.dials = dials;
  }

  /**
   * Those without a unit where a function takes a length: each alone there, or as the value of a
   * name that stands alone there. Not found: numbers that the script reckons with.
   *
   * @param dials the dials that are lengths, by name
   */
  static List<Literal> lengths(Scope scope, Set<String> dials) {
    Literals all = new Literals(scope, dials);
    for (int i = 0; i < all.reading.tokens().size(); i++) {
      Optional<Call> call = Call.at(all.reading, i);
      if (call.isPresent()) {
        all.read(call.get(), scope.called(i));
      }
    }
    return List.copyOf(all.found.values());
  }

  /**
   * Numbers over 0 and lengths with their unit outside its dials, its sheet and its aim, in their
   * order.
   */
  public static List<Literal> besideDials(String script) {
    Scope scope = Scope.of(script);
    Reading reading = scope.reading();
    Set<Integer> arguments = new java.util.HashSet<>();
    lengths(scope, Set.of()).stream()
        .filter(Literal::isArgument)
        .forEach(l -> arguments.add(l.start()));
    List<Literal> all = new ArrayList<>();
    for (int i = 0; i < reading.tokens().size(); i++) {
      Optional<Call> call = Call.at(reading, i);
      if (call.isPresent() && ASIDE.contains(reading.word(i))) {
        i = call.get().close();
      } else if (reading.is(i, Kind.NUMBER) || reading.is(i, Kind.TEXT)) {
        boolean isArgument = arguments.contains(reading.token(i).start());
        Literal.of(reading, Span.of(i), isArgument)
            .filter(l -> l.length(Unit.MM).mm() > 0 && l.isText() == l.hasUnit())
            .ifPresent(all::add);
      }
    }
    return all;
  }

  private void read(Call call, List<Fn<?>> functions) {
    List<Span> arguments = call.arguments(reading);
    boolean isDial = functions.stream().anyMatch(f -> f.name().equals("dial"));
    if (isDial) {
      boolean isLength =
          !arguments.isEmpty()
              && reading.said(arguments.getFirst().first()).filter(dials::contains).isPresent();
      for (Span each : isLength ? arguments.subList(1, arguments.size()) : List.<Span>of()) {
        options(each).map(o -> o.value(reading)).forEach(o -> add(o, true));
        add(each, true);
      }
      return;
    }
    for (int k = 0; k < arguments.size(); k++) {
      int place = k;
      look(
          arguments.get(k),
          functions.stream()
              .filter(f -> place < f.places().size())
              .<Arg<?>>map(f -> f.places().get(place))
              .toList());
      options(arguments.get(k))
          .forEach(
              option ->
                  look(
                      option.value(reading),
                      functions.stream()
                          .flatMap(f -> f.options().stream())
                          .filter(a -> a.name().equals(option.key(reading)))
                          .<Arg<?>>map(a -> a)
                          .toList()));
    }
  }

  /** The options in braces; those of braces in a list, too. */
  private Stream<Span> options(Span span) {
    return span.isBetween(reading, '{')
        ? Span.parts(reading, span.first()).stream()
        : items(span).flatMap(this::options);
  }

  private Stream<Span> items(Span span) {
    return span.isBetween(reading, '[')
        ? Span.parts(reading, span.first()).stream()
        : Stream.empty();
  }

  /**
   * A value, or a list of such.
   *
   * @param taking what takes it
   */
  private void look(Span span, List<Arg<?>> taking) {
    items(span).forEach(i -> look(i, taking));
    boolean isText = span.is(reading, Kind.TEXT);
    if (!takesLength(taking, isText)) {
      return;
    }
    add(span, true);
    if (span.is(reading, Kind.NAME)) {
      named(span);
    }
  }

  /** Of functions of one name on several things, those that take words there take no numbers. */
  private static boolean takesLength(List<Arg<?>> taking, boolean isText) {
    List<String> wanted =
        taking.stream()
            .map(a -> a.kind().wanted())
            .filter(w -> isText || NUMERIC.stream().anyMatch(w::contains))
            .toList();
    return !wanted.isEmpty() && wanted.stream().allMatch(w -> w.contains("length"));
  }

  /**
   * What a name stands for that is used as a length: a number, a list of them, one after another.
   */
  private void named(Span name) {
    Optional<Span> value = scope.value(name);
    value.ifPresent(v -> add(v, false));
    value.stream().flatMap(this::items).forEach(i -> add(i, false));
    int at = reading.token(name.first()).start();
    Optional<Name> made = scope.names().named(reading.word(name.first()), at);
    made.map(n -> reading.forth(n.token()))
        .filter(of -> reading.is(of, "of"))
        .map(of -> Span.of(reading.forth(of)))
        .map(s -> new Span(s.first(), Math.max(s.first(), reading.partner(s.first()))))
        .ifPresent(list -> items(list).forEach(i -> add(i, false)));
  }

  private void add(Span span, boolean isArgument) {
    Literal.of(reading, span, isArgument)
        .filter(l -> !l.hasUnit())
        .ifPresent(l -> found.putIfAbsent(l.start(), l));
  }
}
