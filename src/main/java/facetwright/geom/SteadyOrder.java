package facetwright.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Sorting by a number that rounding has touched. Numbers no farther apart than a given amount count
 * as equal, and what has equal numbers keeps the order it came in: so the last digits of a
 * reckoning decide nothing.
 *
 * <p>Where numbers lie in a row, each within that amount of the next, a new rank begins at the
 * first that is farther than it from the least of the rank.
 */
public final class SteadyOrder {
  private SteadyOrder() {}

  private record Ranked<T>(T thing, double number, int place) {}

  /**
   * The least number first.
   *
   * @param same numbers that differ by no more count as equal; 0 or more
   */
  public static <T> List<T> by(List<T> things, double same, ToDoubleFunction<T> number) {
    List<Ranked<T>> sorted = new ArrayList<>();
    for (T thing : things) {
      sorted.add(new Ranked<>(thing, number.applyAsDouble(thing), sorted.size()));
    }
    sorted.sort(Comparator.comparingDouble(Ranked::number));
    List<T> steady = new ArrayList<>();
    for (int from = 0; from < sorted.size(); ) {
      int to = from + 1;
      while (to < sorted.size() && sorted.get(to).number - sorted.get(from).number <= same) {
        to++;
      }
      sorted.subList(from, to).stream()
          .sorted(Comparator.comparingInt(Ranked::place))
          .forEach(r -> steady.add(r.thing));
      from = to;
    }
    return steady;
  }
}
