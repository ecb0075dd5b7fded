package facetwright.script.scope;

import facetwright.script.api.Fn;
import facetwright.script.api.Thing;
import facetwright.script.text.Name;
import facetwright.script.text.Names;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Token.Kind;
import facetwright.script.vocabulary.Language;
import java.util.List;
import java.util.Optional;

/**
 * What the names of a script stand for, as far as its text tells without running it: a name made
 * with {@code const} or {@code let} stands for what the chain of calls behind its {@code =} gives.
 * Arguments of the script's own functions stand for nothing known.
 */
public final class Scope {
  private static final int DEEPEST = 40;

  private final Reading reading;
  private final Names names;

  private Scope(Reading reading) {
    this.reading = reading;
    this.names = Names.of(reading);
  }

  public static Scope of(String script) {
    return new Scope(Reading.of(script));
  }

  public Reading reading() {
    return reading;
  }

  public Names names() {
    return names;
  }

  /**
   * Where a lone name stands that is made from a value written out, that value; the span itself
   * where it is no lone name; empty where the name is made otherwise.
   */
  public Optional<Span> value(Span span) {
    if (!span.is(reading, Kind.NAME)) {
      return Optional.of(span);
    }
    return names
        .named(reading.word(span.first()), reading.token(span.first()).start())
        .filter(n -> n.value() >= 0)
        .map(
            n -> {
              int first = n.value();
              int last = reading.is(first, '-') ? reading.forth(first) : first;
              return new Span(first, Math.max(last, reading.partner(last)));
            })
        .filter(s -> reading.is(reading.forth(s.last()), ',') || reading.endsBehind(s.last()));
  }

  /** What a name stands for in words: a thing, a dial, or just a value. */
  public String meaning(Name name) {
    boolean dial =
        reading.word(name.value()).equals("dial") && reading.is(reading.forth(name.value()), '(');
    return dial ? "dial" : thing(name).map(Thing::name).orElse("value");
  }

  /** The thing a name stands for, if it is known. */
  Optional<Thing<?>> thing(Name name) {
    return thing(name, DEEPEST);
  }

  private Optional<Thing<?>> thing(Name name, int deep) {
    int end = name.value() < 0 ? -1 : chainEnd(name.value());
    return end < 0 || deep == 0 ? Optional.empty() : thingEnding(end, deep - 1);
  }

  /** The last token of the chain of names and calls that begins at a token; -1 for none. */
  private int chainEnd(int start) {
    int i = start;
    if (!reading.is(i, Kind.NAME)) {
      return -1;
    }
    while (true) {
      int next = reading.forth(i);
      if (reading.is(next, '(') && reading.partner(next) >= 0) {
        i = reading.partner(next);
      } else if (reading.isDot(next) && reading.is(reading.forth(next), Kind.NAME)) {
        i = reading.forth(next);
      } else {
        return reading.is(next, '[') ? -1 : i;
      }
    }
  }

  /** The thing that the expression ending with a token comes to, if it is known. */
  public Optional<Thing<?>> thingEnding(int last) {
    return thingEnding(last, DEEPEST);
  }

  private Optional<Thing<?>> thingEnding(int last, int deep) {
    if (deep == 0) {
      return Optional.empty();
    }
    if (reading.is(last, ')')) {
      int open = reading.partner(last);
      return open < 0
          ? Optional.empty()
          : called(reading.back(open), deep - 1).stream().findFirst().flatMap(Fn::gives);
    }
    return reading.isOwnName(last)
        ? names
            .named(reading.word(last), reading.token(last).start())
            .flatMap(n -> thing(n, deep - 1))
        : Optional.empty();
  }

  /**
   * The functions a name before a bracket may call: one where it is known what it is called on,
   * several of one name where it is not.
   */
  public List<Fn<?>> called(int name) {
    return called(name, DEEPEST);
  }

  private List<Fn<?>> called(int name, int deep) {
    if (!reading.is(name, Kind.NAME)) {
      return List.of();
    }
    String word = reading.word(name);
    int dot = reading.back(name);
    if (!reading.isDot(dot)) {
      return Known.function(Language.TOP, word).stream().toList();
    }
    return thingEnding(reading.back(dot), deep - 1)
        .map(thing -> Known.function(thing, word).stream().<Fn<?>>map(f -> f).toList())
        .orElseGet(() -> Known.members(word));
  }
}
