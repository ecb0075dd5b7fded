package facetwright.fold;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which mountains and valleys let a corner fold flat, by trying every order in which its sectors
 * can lie on each other. Sector i reaches from place i to place i + 1 of the folded line; the score
 * between sectors i and i + 1 stands at place i + 1, at its left end or its right one by turns.
 *
 * <p>Two rules hold of card that can't pass through card (J. Justin 1997, after R. Lang, Origami
 * Design Secrets: from memory): no sector that reaches across a score lies between the two that the
 * score joins, and of two scores in one place that open to one side, the one's sectors lie both
 * between the other's or both outside.
 */
final class Layering {
  private final double[] place;
  private final int n;
  private final Set<Integer> found = new HashSet<>();

  private Layering(List<Double> sectors) {
    n = sectors.size();
    place = new double[n + 1];
    for (int i = 0; i < n; i++) {
      place[i + 1] = place[i] + (i % 2 == 0 ? sectors.get(i) : -sectors.get(i));
    }
  }

  /**
   * All assignments that fold flat: bit i stands where the score after sector i is a mountain.
   *
   * @param sectors of even number, alternately adding up to half of all
   */
  static Set<Integer> foldable(List<Double> sectors) {
    Layering all = new Layering(sectors);
    if (sectors.size() % 2 == 0 && Math.abs(all.place[all.n]) < 1e-9) {
      all.order(new ArrayList<>(), new int[all.n]);
    }
    return all.found;
  }

  private void order(List<Integer> up, int[] height) {
    if (up.size() == n) {
      if (passes(height)) {
        found.add(mountains(height));
      }
      return;
    }
    for (int s = 0; s < n; s++) {
      if (!up.contains(s)) {
        height[s] = up.size();
        up.add(s);
        order(up, height);
        up.removeLast();
      }
    }
  }

  private boolean passes(int[] height) {
    for (int i = 0; i < n; i++) {
      double at = place[i + 1];
      int low = Math.min(height[i], height[(i + 1) % n]);
      int high = Math.max(height[i], height[(i + 1) % n]);
      for (int j = 0; j < n; j++) {
        double from = Math.min(place[j], place[j + 1]);
        double to = Math.max(place[j], place[j + 1]);
        boolean across = from < at - 1e-9 && to > at + 1e-9;
        if (across && height[j] > low && height[j] < high) {
          return false;
        }
        boolean sameSide = j % 2 == i % 2 && Math.abs(place[j + 1] - at) < 1e-9;
        if (j != i && sameSide) {
          int a = height[j];
          int b = height[(j + 1) % n];
          if ((a > low && a < high) != (b > low && b < high)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /**
   * Even sectors lie face up, odd ones face down: a score whose even sector lies lower is a valley.
   */
  private int mountains(int[] height) {
    int mask = 0;
    for (int i = 0; i < n; i++) {
      int even = i % 2 == 0 ? i : (i + 1) % n;
      int odd = i % 2 == 0 ? (i + 1) % n : i;
      if (height[even] > height[odd]) {
        mask |= 1 << i;
      }
    }
    return mask;
  }
}
