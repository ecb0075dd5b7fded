package facetwright.script.scope;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.text.Reading;
import facetwright.script.text.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The call whose brackets a place of the script stands in.
 *
 * @param fns the functions it may be; never empty, more than one where it is not known on what it
 *     is called
 * @param name the token of its name
 * @param place which argument, from 0
 * @param inBraces whether the place is inside the braces that hold the options
 * @param option the option whose value the place is in; empty where it is at an option's name, or
 *     not in braces
 */
public record CallSite(List<Fn<?>> fns, int name, int place, boolean inBraces, String option) {
  public CallSite {
    fns = List.copyOf(fns);
  }

  /** The innermost call around an offset; empty where none of the language's own is. */
  public static Optional<CallSite> at(Scope scope, int offset) {
    Reading reading = scope.reading();
    int commas = 0;
    boolean braces = false;
    String option = "";
    String key = "";
    int i = reading.before(offset);
    for (; i >= 0; i--) {
      if (reading.token(i).end() > offset && !reading.is(i, Kind.TEXT)) {
        continue;
      }
      if (reading.is(i, ')') || reading.is(i, ']') || reading.is(i, '}')) {
        if (reading.partner(i) >= 0) {
          i = reading.partner(i);
        }
      } else if (reading.is(i, ',')) {
        commas++;
      } else if (reading.is(i, ':') && commas == 0 && key.isEmpty()) {
        key = reading.word(reading.back(i));
      } else if (reading.is(i, '[')) {
        commas = 0;
      } else if (reading.is(i, ';')) {
        return Optional.empty();
      } else if (reading.is(i, '{')) {
        if (braces || reading.is(reading.back(i), ')') || reading.is(reading.back(i), "=>")) {
          return Optional.empty();
        }
        braces = true;
        option = key;
        commas = 0;
      } else if (reading.is(i, '(')) {
        int name = reading.back(i);
        List<Fn<?>> fns = scope.called(name);
        if (!fns.isEmpty()) {
          return Optional.of(new CallSite(fns, name, commas, braces, option));
        }
        if (reading.is(name, Kind.NAME) && braces) {
          return Optional.empty();
        }
        commas = 0;
      }
    }
    return Optional.empty();
  }

  /** The function it is taken to be. */
  public Fn<?> fn() {
    return fns.getFirst();
  }

  /** The argument the place is in; empty at an option's name. */
  public Optional<Arg<?>> arg() {
    if (inBraces) {
      return options().stream().filter(o -> o.name().equals(option)).findFirst();
    }
    return place < fn().places().size() ? Optional.of(fn().places().get(place)) : Optional.empty();
  }

  /** Whether the place is where an option's name stands. */
  public boolean atOption() {
    return inBraces && option.isEmpty();
  }

  /** Every option it may take, each name once. */
  public List<Arg<?>> options() {
    List<Arg<?>> all = new ArrayList<>();
    for (Fn<?> fn : fns) {
      for (Arg<?> option : fn.options()) {
        if (all.stream().noneMatch(o -> o.name().equals(option.name()))) {
          all.add(option);
        }
      }
    }
    return all;
  }

  /** The options already written in its braces. */
  public List<String> given(Reading reading) {
    List<String> names = new ArrayList<>();
    int open = reading.forth(name);
    int close = reading.partner(open) < 0 ? reading.tokens().size() : reading.partner(open);
    for (int i = open + 1; i < close; i++) {
      boolean first = reading.is(reading.back(i), '{') || reading.is(reading.back(i), ',');
      boolean ends =
          reading.is(reading.forth(i), ':')
              || reading.is(reading.forth(i), ',')
              || reading.is(reading.forth(i), '}');
      if (reading.is(i, Kind.NAME) && first && ends) {
        names.add(reading.word(i));
      } else if (reading.is(i, '[') && reading.partner(i) >= 0) {
        i = reading.partner(i);
      }
    }
    return names;
  }
}
