package facetwright.script.api;

import facetwright.form.FormException;
import facetwright.script.sandbox.CallException;
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

  Handle(Session session, Thing<T> thing, T receiver) {
    this.session = session;
    this.thing = thing;
    this.receiver = receiver;
  }

  Thing<T> thing() {
    return thing;
  }

  T receiver() {
    return receiver;
  }

  @Override
  public String toString() {
    return "a " + thing.name();
  }

  @Override
  public Object getMember(String key) {
    return thing
        .function(key)
        .map(fn -> callable(session, "." + key, fn, receiver, this))
        .orElse(null);
  }

  /**
   * A function as the engine calls it. A body that returns its own receiver returns the same
   * handle.
   */
  static <T> ProxyExecutable callable(
      Session session, String shown, Fn<T> fn, T receiver, Handle<T> self) {
    return session
        .clock()
        .guard(
            given -> {
              try {
                Object result = fn.body().call(receiver, Call.read(session, shown, fn, given));
                return result != null && result == receiver && self != null ? self : result;
              } catch (FormException e) {
                throw new CallException(shown + ": " + e.getMessage(), "", e.mends());
              }
            });
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
    throw new CallException(
        "a " + thing.name() + " has no \"" + key + "\" to be set",
        "Use its functions: "
            + String.join(", ", thing.functions().stream().map(Fn::name).toList())
            + ".");
  }
}
