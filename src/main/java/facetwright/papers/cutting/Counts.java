package facetwright.papers.cutting;

import java.util.Arrays;

/** How many there are of each wanted rectangle. */
final class Counts {
  private final int[] of;

  private Counts(int[] of) {
    this.of = of;
  }

  /** One of one kind. */
  static Counts one(int kind, int kinds) {
    int[] of = new int[kinds];
    of[kind] = 1;
    return new Counts(of);
  }

  Counts plus(Counts other) {
    int[] sum = of.clone();
    for (int k = 0; k < sum.length; k++) {
      sum[k] += other.of[k];
    }
    return new Counts(sum);
  }

  /** Whether these and the others together are no more than this of any kind. */
  boolean allows(Counts other, int[] limit) {
    for (int k = 0; k < limit.length; k++) {
      if (of[k] > limit[k] - other.of[k]) {
        return false;
      }
    }
    return true;
  }

  /** Whether these are no more than this of any kind. */
  boolean within(int[] limit) {
    for (int k = 0; k < limit.length; k++) {
      if (of[k] > limit[k]) {
        return false;
      }
    }
    return true;
  }

  /** Whether something of these is among what is left. */
  boolean meets(int[] left) {
    for (int k = 0; k < left.length; k++) {
      if (of[k] > 0 && left[k] > 0) {
        return true;
      }
    }
    return false;
  }

  void takeFrom(int[] left) {
    for (int k = 0; k < left.length; k++) {
      left[k] -= of[k];
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Counts c && Arrays.equals(of, c.of);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(of);
  }
}
