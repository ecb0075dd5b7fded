package facetwright.aim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
