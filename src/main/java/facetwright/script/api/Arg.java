package facetwright.script.api;

import facetwright.measure.Unit;
import facetwright.words.Decimals;

/**
 * One argument of a function: in its place, or as an option in braces.
 *
 * @param name as the script writes it
 * @param kind what it takes
 * @param does what it means
 * @param usual what is used when it is left out; null when it may be left out without a value
 * @param needed whether it must be given
 * @param <T> what it is read as
 */
public record Arg<T>(String name, Kind<T> kind, String does, T usual, boolean needed) {

  /** What holds when it is left out, in words. */
  public String leftOut() {
    return needed ? "must be given" : usual == null ? "none" : text(usual);
  }

  private static String text(Object value) {
    return switch (value) {
      case Double d -> Decimals.plain(d);
      case Unit unit -> unit.symbol();
      case Enum<?> e -> Kinds.wordOf(e);
      default -> value.toString();
    };
  }

  /** One that must be given. */
  public static <T> Arg<T> needed(String name, Kind<T> kind, String does) {
    return new Arg<>(name, kind, does, null, true);
  }

  /** One that may be left out; then this value is used. */
  public static <T> Arg<T> usual(String name, Kind<T> kind, T usual, String does) {
    return new Arg<>(name, kind, does, usual, false);
  }

  /** One that may be left out; then there is no value. */
  public static <T> Arg<T> optional(String name, Kind<T> kind, String does) {
    return new Arg<>(name, kind, does, null, false);
  }
}
