package facetwright.aim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** A trial that never makes the same design twice, and only so many in all. */
final class Counted {
  private final Trial trial;
  private int most;
  private final Map<List<Double>, Tried> known = new HashMap<>();
  private int count;
  private boolean spent;

  Counted(Trial trial, int most) {
    this.trial = trial;
    this.most = most;
  }

  /** Refused, too, once there have been as many trials as there may be. */
  Tried at(double[] values) {
    List<Double> key = key(values);
    Tried before = known.get(key);
    if (before != null) {
      return before;
    }
    if (count == most) {
      spent = true;
      return new Tried.Refused("no more trials are left");
    }
    count++;
    Tried tried = trial.at(List.copyOf(key));
    known.put(key, tried);
    return tried;
  }

  /** Why there is no design at the nearest of the places that count; empty if none was refused. */
  Optional<Refusal> nearest(Predicate<double[]> counts, ToDoubleFunction<double[]> away) {
    return known.entrySet().stream()
        .filter(e -> e.getValue() instanceof Tried.Refused)
        .map(e -> new Refusal(e.getKey(), ((Tried.Refused) e.getValue()).why()))
        .filter(r -> counts.test(r.place()))
        .min(
            Comparator.comparingDouble((Refusal r) -> away.applyAsDouble(r.place()))
                .thenComparing(r -> r.values().toString()));
  }

  /** A place without a design. */
  record Refusal(List<Double> values, String why) {
    double[] place() {
      return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }

  /** What is known already, without a trial. */
  void learn(double[] values, Tried tried) {
    List<Double> key = key(values);
    known.put(key, tried);
  }

  private static List<Double> key(double[] values) {
    List<Double> key = new ArrayList<>();
    for (double v : values) {
      key.add(v == 0 ? 0.0 : v);
    }
    return key;
  }

  /** Allows so many trials in all from now on. */
  void allow(int newMost) {
    most = newMost;
    spent = false;
  }

  int count() {
    return count;
  }

  /** Whether a trial had to be refused for their number. */
  boolean isSpent() {
    return spent;
  }
}
