package facetwright.fold.touch;

import java.util.Arrays;

/** Stretches of a line, apart from each other and in order. */
final class Spans {
  /** Start and end of each, ascending. */
  private final double[] ends;

  private Spans(double[] ends) {
    this.ends = ends;
  }

  /** The stretches between the first and second, third and fourth, … of these places. */
  static Spans between(double[] places, int count) {
    double[] ends = Arrays.copyOf(places, count);
    Arrays.sort(ends);
    return new Spans(ends);
  }

  int size() {
    return ends.length / 2;
  }

  double start(int i) {
    return ends[2 * i];
  }

  double end(int i) {
    return ends[2 * i + 1];
  }

  double length() {
    double sum = 0;
    for (int i = 0; i < size(); i++) {
      sum += end(i) - start(i);
    }
    return sum;
  }

  /** What both have in common; stretches without a length are dropped. */
  Spans and(Spans other) {
    double[] both = new double[ends.length + other.ends.length];
    int count = 0;
    int i = 0;
    int j = 0;
    while (i < size() && j < other.size()) {
      double from = Math.max(start(i), other.start(j));
      double to = Math.min(end(i), other.end(j));
      if (from < to) {
        both[count++] = from;
        both[count++] = to;
      }
      if (end(i) < other.end(j)) {
        i++;
      } else {
        j++;
      }
    }
    return new Spans(Arrays.copyOf(both, count));
  }

  int longest() {
    int best = 0;
    for (int i = 1; i < size(); i++) {
      if (end(i) - start(i) > end(best) - start(best)) {
        best = i;
      }
    }
    return best;
  }
}
