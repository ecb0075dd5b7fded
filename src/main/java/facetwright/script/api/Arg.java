package facetwright.script.api;

import static java.util.stream.Collectors.joining;

import facetwright.geom.Vec2;
import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import facetwright.words.Decimals;
import java.util.List;
import java.util.Optional;

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
    return needed ? "must be given" : usual == null ? "none" : written(usual);
  }

  /** A value as a script writes it; a length says its unit, but 0. */
  private String written(Object value) {
    return switch (value) {
      case Double d when d != 0 && kind.counts().equals(Optional.of(Quantity.LENGTH)) ->
          Fit.inQuotes(Decimals.plain(d) + " mm");
      case Double d -> Decimals.plain(d);
      case Integer n -> n.toString();
      case Boolean flag -> flag.toString();
      case String text -> Fit.inQuotes(text);
      case Unit unit -> Fit.inQuotes(unit.symbol());
      case Enum<?> e -> Fit.inQuotes(Kinds.wordOf(e));
      case Vec2(double x, double y) -> "[" + written(x) + ", " + written(y) + "]";
      case List<?> all -> all.stream().map(this::written).collect(joining(", ", "[", "]"));
      default -> throw new IllegalStateException(name + " has a usual value no script can write");
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
