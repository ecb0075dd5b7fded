package facetwright.script.api;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A kind of thing that scripts hold, with its functions.
 *
 * @param <T> what stands behind it
 */
public final class Thing<T> {
  private final String name;
  private final Class<T> type;
  private final String does;
  private final boolean inert;
  private final List<Fn<T>> functions = new ArrayList<>();

  private Thing(String name, Class<T> type, String does, boolean inert) {
    this.name = name;
    this.type = type;
    this.does = does;
    this.inert = inert;
  }

  /** A new kind of thing; its functions are added while the language is set up. */
  public static <T> Thing<T> named(String name, Class<T> type, String does) {
    return new Thing<>(name, type, does, false);
  }

  /** One whose things are no part of the design until something is done with them. */
  static <T> Thing<T> inert(String name, Class<T> type, String does) {
    return new Thing<>(name, type, does, true);
  }

  public Thing<T> with(Fn<T> function) {
    if (function(function.name()).isPresent()) {
      throw new IllegalStateException(name + " has " + function.name() + " twice");
    }
    functions.add(function);
    return this;
  }

  public String name() {
    return name;
  }

  /** One of them, as a sentence has it: "a panel", "an outline". */
  public String one() {
    return ("aeiou".indexOf(name.charAt(0)) < 0 ? "a " : "an ") + name;
  }

  /** Whether such a thing is no part of the design until something is done with it. */
  boolean isInert() {
    return inert;
  }

  Class<T> type() {
    return type;
  }

  /** What it is, in a sentence or two. */
  public String does() {
    return does;
  }

  public List<Fn<T>> functions() {
    return Collections.unmodifiableList(functions);
  }

  public Optional<Fn<T>> function(String wanted) {
    return functions.stream().filter(f -> f.name().equals(wanted)).findFirst();
  }
}
