package facetwright.workbench.card.text;

import facetwright.script.api.Fn;
import facetwright.script.api.Language;
import facetwright.script.api.Thing;
import facetwright.workbench.card.text.Token.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the names of a script stand for, as far as its text tells without running it: a name made
 * with {@code const} or {@code let} stands for what the chain of calls behind its {@code =} gives.
 * Arguments of the script's own functions stand for nothing known.
 */
public final class Scope {
  private static final int DEEPEST = 40;

  private final Reading reading;
  private final List<Name> names = new ArrayList<>();

  /**
   * A name that the script makes.
   *
   * @param token where
   * @param value the token its value begins with; -1 where it has none
   */
  public record Name(String word, int token, int value) {}

  public Scope(Reading reading) {
    this.reading = reading;
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.is(i, Kind.KEYWORD)) {
        String word = reading.word(i);
        int name = reading.forth(i);
        if (reading.is(name, Kind.NAME)
            && List.of("const", "let", "var", "function").contains(word)) {
          int sign = reading.forth(name);
          boolean valued = reading.is(sign, '=');
          names.add(new Name(reading.word(name), name, valued ? reading.forth(sign) : -1));
        }
      }
    }
  }

  public Reading reading() {
    return reading;
  }

  /** The names made before an offset, the last first, each once. */
  public List<Name> before(int offset) {
    Map<String, Name> made = new LinkedHashMap<>();
    for (Name name : names.reversed()) {
      if (!made.containsKey(name.word()) && isBefore(name, offset)) {
        made.put(name.word(), name);
      }
    }
    return List.copyOf(made.values());
  }

  private boolean isBefore(Name name, int offset) {
    return reading.token(name.token()).end() < offset && isMade(name, offset);
  }

  /** Whether an offset lies behind the statement that makes a name, not inside it. */
  private boolean isMade(Name name, int offset) {
    int at = name.token();
    if (!reading.is(reading.forth(at), '=')
        || reading.line(offset) > reading.line(reading.token(at).end())) {
      return true;
    }
    for (int i = at; i < reading.tokens().size() && reading.token(i).start() < offset; i++) {
      if (reading.is(i, ';')) {
        return true;
      }
    }
    return false;
  }

  /** The name in force before an offset. */
  public Optional<Name> named(String word, int offset) {
    return names.reversed().stream()
        .filter(n -> n.word().equals(word) && isBefore(n, offset))
        .findFirst();
  }

  /** What a name stands for in words: a thing, a dial, or just a value. */
  public String meaning(Name name) {
    boolean dial =
        reading.word(name.value()).equals("dial") && reading.is(reading.forth(name.value()), '(');
    return dial ? "dial" : thing(name).map(Thing::name).orElse("value");
  }

  /** The thing a name stands for, if it is known. */
  public Optional<Thing<?>> thing(Name name) {
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
      } else if (reading.is(next, '.') && reading.is(reading.forth(next), Kind.NAME)) {
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
    boolean alone = reading.is(last, Kind.NAME) && !reading.is(reading.back(last), '.');
    return alone
        ? named(reading.word(last), reading.token(last).start()).flatMap(n -> thing(n, deep - 1))
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
    if (!reading.is(dot, '.')) {
      return Known.function(Language.TOP, word).stream().toList();
    }
    return thingEnding(reading.back(dot), deep - 1)
        .map(thing -> Known.function(thing, word).stream().<Fn<?>>map(f -> f).toList())
        .orElseGet(() -> Known.members(word));
  }
}
