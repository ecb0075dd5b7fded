package facetwright.script.api;

import facetwright.measure.Length;
import facetwright.message.Message;
import facetwright.script.sandbox.CallException;
import facetwright.words.Count;
import facetwright.words.Site;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One call of a function, its arguments read and checked. */
public final class Call {
  private final Session session;
  private final Site site;
  private final String function;
  private final IdentityHashMap<Arg<?>, Object> values = new IdentityHashMap<>();

  private Call(Session session, Site site, String function) {
    this.session = session;
    this.site = site;
    this.function = function;
  }

  /**
   * Checks a call's arguments.
   *
   * @param site where in the script the call stands
   * @param given what was read of the arguments
   * @throws CallException when one is missing, unknown, of the wrong kind or out of its range
   */
  static Call read(Session session, Site site, String shown, Fn<?> fn, List<Given> given) {
    Call call = new Call(session, site, fn.name());
    int places = fn.places().size();
    int most = places + (fn.options().isEmpty() ? 0 : 1);
    boolean early = optionsComeEarly(fn, given);
    if (given.size() > most) {
      throw new CallException(
          shown
              + " takes "
              + (most == 0 ? "nothing" : "at most " + Count.of(most, "value"))
              + ", not "
              + given.size(),
          "Write it as " + fn.signature() + (isOptions(fn) ? ", each with its name." : "."));
    }
    for (int i = 0; i < places; i++) {
      Given value = i < given.size() - (early ? 1 : 0) ? given.get(i) : Given.Other.NOTHING;
      call.put(shown, fn.places().get(i), value, "", i);
    }
    if (!fn.options().isEmpty()) {
      boolean there = early || given.size() > places;
      Given options = there ? given.get(given.size() - 1) : Given.Other.NOTHING;
      call.readOptions(shown, fn, options, early ? given.size() - 1 : places);
    }
    return call;
  }

  private static boolean isOptions(Fn<?> fn) {
    return fn.places().isEmpty() && !fn.options().isEmpty();
  }

  /** Whether the options stand in the place of an argument that may be left out. */
  private static boolean optionsComeEarly(Fn<?> fn, List<Given> given) {
    return given.size() > 0
        && given.size() <= fn.places().size()
        && !fn.options().isEmpty()
        && !fn.places().get(given.size() - 1).needed()
        && given.get(given.size() - 1) instanceof Given.Braces;
  }

  private void readOptions(String shown, Fn<?> fn, Given given, int place) {
    Given.Braces options =
        switch (given) {
          case Given.Braces braces -> braces;
          case Given.Other.NOTHING -> new Given.Braces(Set.of(), Map.of());
          default ->
              throw new CallException(
                  shown + ": " + GivenText.quote(given) + " stands where its options belong",
                  "Put them in braces: " + fn.signature() + ".");
        };
    List<String> names = fn.optionNames();
    for (String key : options.keys()) {
      if (!names.contains(key)) {
        String meant =
            Cousins.meant(key, names).map(n -> "Did you mean \"" + n + "\"? ").orElse("");
        throw new CallException(
            shown + " has no option \"" + key + "\"",
            meant + "It takes " + String.join(", ", names) + ".",
            Cousins.mends(key, names));
      }
    }
    for (Arg<?> option : fn.options()) {
      String name = option.name();
      Given value = options.members().getOrDefault(name, Given.Other.NOTHING);
      put(shown, option, value, name, place);
    }
  }

  private <T> void put(String shown, Arg<T> arg, Given value, String option, int place) {
    if (value == Given.Other.NOTHING) {
      if (arg.needed()) {
        throw new CallException(
            Message.text(shown + " needs " + arg.name() + ": " + arg.does()),
            wanted(arg),
            List.of());
      }
      values.put(arg, arg.usual());
      return;
    }
    try {
      values.put(arg, arg.kind().read(value, session));
    } catch (Kind.Unfit e) {
      throw new CallException(
          Message.of("%s: %s: %s", shown, arg.name(), e.told()),
          Message.text(e.meant()).plus(wanted(arg)),
          e.mends(option, place));
    }
  }

  private static Message wanted(Arg<?> arg) {
    return Message.of("Give %s as %s.", arg.name(), arg.kind().wants());
  }

  /** The value of an argument; null when it was left out and has no usual value. */
  @SuppressWarnings("unchecked") // put() stores under each Arg<T> only values of T
  public <T> T get(Arg<T> arg) {
    if (!values.containsKey(arg)) {
      throw new IllegalStateException("this function does not take " + arg.name());
    }
    return (T) values.get(arg);
  }

  public boolean has(Arg<?> arg) {
    return get(arg) != null;
  }

  public Session session() {
    return session;
  }

  /** The function that is called. */
  public String function() {
    return function;
  }

  /** Where in the script the call stands. */
  public Site site() {
    return site;
  }

  /**
   * Refuses a call that is none of a file's that the script uses.
   *
   * @param instead what to do there
   */
  public void ofScript(String instead) {
    if (site.isInFile()) {
      throw new CallException(
          function + " belongs into the script: " + site.in().name() + " can't call it", instead);
    }
  }

  /**
   * Refuses a second call of what stands once in a script.
   *
   * @param instead what to do
   */
  public void once(String instead) {
    Site first = session.twice().before(function, site);
    if (first.isKnown()) {
      throw new CallException(function + "() was called twice, first in " + first.text(), instead);
    }
  }

  /** A handle by which the script holds a thing. */
  public <T> Handle<T> hold(Thing<T> thing, T receiver) {
    return thing.isInert()
        ? new Handle<>(session, thing, receiver, session.made(thing, function, site))
        : new Handle<>(session, thing, receiver);
  }

  /** A length in mm as the design's plain number. */
  public double plain(double mm) {
    return new Length(mm).in(session.unit());
  }
}
