package facetwright.script.api;

import facetwright.geom.Decimals;
import org.graalvm.polyglot.Value;

/** Numbers and values as messages show them. */
public final class Shown {
  private Shown() {}

  /** A number as a person writes it. */
  public static String plain(double n) {
    return n == Math.rint(n) && Math.abs(n) < 1e15
        ? Long.toString((long) n)
        : Decimals.digits(n, 7);
  }

  /** A script's value as a message quotes it, short. */
  static String quote(Value value) {
    if (value.isNull()) {
      return "nothing (undefined)";
    }
    if (value.isString()) {
      String text = value.asString();
      return '"' + (text.length() > 40 ? text.substring(0, 37) + "..." : text) + '"';
    }
    if (value.isBoolean()) {
      return Boolean.toString(value.asBoolean());
    }
    if (value.isNumber()) {
      return value.fitsInDouble() ? plain(value.asDouble()) : "a number out of range";
    }
    if (value.isProxyObject() && value.asProxyObject() instanceof Handle<?> handle) {
      return "a " + handle.thing().name();
    }
    if (value.hasArrayElements()) {
      return "a list";
    }
    return value.canExecute() ? "a function" : "an object";
  }
}
