package facetwright.script.api;

import facetwright.form.FormException;
import facetwright.message.Message;
import facetwright.script.sandbox.CallException;
import facetwright.words.Site;
import java.util.List;
import java.util.Optional;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.graalvm.polyglot.proxy.ProxyObject;

/**
 * How a script holds a thing: an object with the thing's functions and nothing else.
 *
 * @param <T> what stands behind it
 */
public final class Handle<T> implements ProxyObject {
  private final Session session;
  private final Thing<T> thing;
  private final T receiver;
  private final Optional<Made> made;

  Handle(Session session, Thing<T> thing, T receiver) {
    this(session, thing, receiver, Optional.empty());
  }

  /** One that does nothing by itself. */
  Handle(Session session, Thing<T> thing, T receiver, Made made) {
    this(session, thing, receiver, Optional.of(made));
  }

  private Handle(Session session, Thing<T> thing, T receiver, Optional<Made> made) {
    this.session = session;
    this.thing = thing;
    this.receiver = receiver;
    this.made = made;
  }

  /** The script goes on with it. */
  void use() {
    made.ifPresent(Made::use);
  }

  Thing<T> thing() {
    return thing;
  }

  T receiver() {
    return receiver;
  }

  @Override
  public String toString() {
    return thing.one();
  }

  @Override
  public Object getMember(String key) {
    return thing.function(key).map(fn -> callable(session, key, fn, receiver, this)).orElse(null);
  }

  /**
   * A function as the engine calls it. A body that returns its own receiver returns the same
   * handle.
   */
  @SuppressWarnings("ReferenceEquality") // Itself, not one that is like it.
  public static <T> ProxyExecutable callable(
      Session session, String shown, Fn<T> fn, T receiver, Handle<T> self) {
    return arguments -> {
      // On the script's own time: to read what it gives may run what it wrote.
      Site site = session.here();
      List<Given> given = Given.read(arguments, fn.optionNames());
      return session
          .clock()
          .run(
              () -> {
                if (self != null) {
                  self.use();
                }
                try {
                  Call call = Call.read(session, site, shown, fn, given);
                  Object result = fn.body().call(receiver, call);
                  return result != null && result == receiver && self != null ? self : result;
                } catch (FormException e) {
                  throw new CallException(
                      Message.of("%s: %s", shown, e.told()), Message.EMPTY, e.mends());
                }
              });
    };
  }

  @Override
  public Object getMemberKeys() {
    return ProxyArray.fromList(thing.functions().stream().<Object>map(Fn::name).toList());
  }

  @Override
  public boolean hasMember(String key) {
    return thing.function(key).isPresent();
  }

  @Override
  public void putMember(String key, Value value) {
    session
        .clock()
        .run(
            () -> {
              throw new CallException(
                  thing.one() + " has no \"" + key + "\" to be set",
                  "Use its functions: "
                      + String.join(", ", thing.functions().stream().map(Fn::name).toList())
                      + ".");
            });
  }
}
