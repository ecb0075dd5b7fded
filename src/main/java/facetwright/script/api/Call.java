package facetwright.script.api;

import facetwright.geom.Length;
import facetwright.net.NearName;
import facetwright.net.Site;
import facetwright.script.sandbox.CallException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.graalvm.polyglot.Value;

/** One call of a function, its arguments read and checked. */
public final class Call {
  private final Session session;
  private final Site site;
  private final IdentityHashMap<Arg<?>, Object> values = new IdentityHashMap<>();

  private Call(Session session, Site site) {
    this.session = session;
    this.site = site;
  }

  /**
   * Reads and checks a call's arguments.
   *
   * @throws CallException when one is missing, unknown, of the wrong kind or out of its range
   */
  static Call read(Session session, String shown, Fn<?> fn, Value[] given) {
    Call call = new Call(session, session.here());
    int places = fn.places().size();
    int most = places + (fn.options().isEmpty() ? 0 : 1);
    boolean early = optionsComeEarly(fn, given);
    if (given.length > most) {
      throw new CallException(
          shown
              + " takes "
              + (most == 0 ? "nothing" : "at most " + most + " values")
              + ", not "
              + given.length,
          "Write it as " + fn.signature() + ".");
    }
    for (int i = 0; i < places; i++) {
      Value value = i < given.length - (early ? 1 : 0) ? given[i] : null;
      call.put(shown, fn.places().get(i), value, "", i);
    }
    if (!fn.options().isEmpty()) {
      Value options = early || given.length > places ? given[given.length - 1] : null;
      int place = early ? given.length - 1 : places;
      call.readOptions(shown, fn, options == null || options.isNull() ? null : options, place);
    }
    return call;
  }

  /** Whether the options stand in the place of an argument that may be left out. */
  private static boolean optionsComeEarly(Fn<?> fn, Value[] given) {
    return given.length > 0
        && given.length <= fn.places().size()
        && !fn.options().isEmpty()
        && !fn.places().get(given.length - 1).needed()
        && isBraces(given[given.length - 1]);
  }

  private static boolean isBraces(Value value) {
    return value.hasMembers()
        && !value.hasArrayElements()
        && !value.isProxyObject()
        && !value.canExecute()
        && !value.isString();
  }

  private void readOptions(String shown, Fn<?> fn, Value options, int place) {
    if (options != null && !isBraces(options)) {
      throw new CallException(
          shown + ": " + Shown.quote(options) + " stands where its options belong",
          "Put them in braces: " + fn.signature() + ".");
    }
    List<String> names = new ArrayList<>();
    fn.options().forEach(o -> names.add(o.name()));
    if (options != null) {
      for (String key : options.getMemberKeys()) {
        if (!names.contains(key)) {
          String meant =
              NearName.nearest(key, names).map(n -> "Did you mean \"" + n + "\"? ").orElse("");
          throw new CallException(
              shown + " has no option \"" + key + "\"",
              meant + "It takes " + String.join(", ", names) + ".",
              NearName.mends(key, names));
        }
      }
    }
    for (Arg<?> option : fn.options()) {
      String name = option.name();
      put(shown, option, options == null ? null : options.getMember(name), name, place);
    }
  }

  private <T> void put(String shown, Arg<T> arg, Value value, String option, int place) {
    if (value == null || value.isNull()) {
      if (arg.needed()) {
        throw new CallException(
            shown + " needs " + arg.name() + ": " + arg.does(),
            "Give " + arg.name() + " as " + arg.kind().wanted() + ".");
      }
      values.put(arg, arg.usual());
      return;
    }
    try {
      values.put(arg, arg.kind().read(value, session));
    } catch (Kind.Unfit e) {
      throw new CallException(
          shown + ": " + arg.name() + ": " + e.getMessage(),
          "Give " + arg.name() + " as " + arg.kind().wanted() + ".",
          e.mends(option, place));
    }
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

  /** Where in the script the call stands. */
  public Site site() {
    return site;
  }

  /** A handle by which the script holds a thing. */
  public <T> Handle<T> hold(Thing<T> thing, T receiver) {
    return new Handle<>(session, thing, receiver);
  }

  /** A length in mm as the design's plain number. */
  public double plain(double mm) {
    return new Length(mm).in(session.unit());
  }
}
