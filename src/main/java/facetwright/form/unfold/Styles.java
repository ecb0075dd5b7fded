package facetwright.form.unfold;

import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The three ways of unfolding that a maker would draw by hand; each gives layouts to choose from.
 */
final class Styles {
  private static final int ENOUGH = 4;

  private Styles() {}

  static List<Layout> petals(FlatForm flat, int base) {
    Layout layout = new Layout(flat);
    layout.start(base);
    List<Integer> rest = new ArrayList<>(all(flat));
    rest.remove(Integer.valueOf(base));
    return Spread.outward(layout, rest, List.of(base)) ? List.of(layout) : List.of();
  }

  /** Columns that hang together at the waist: everything spreads up and down from a belt. */
  static List<Layout> gores(FlatForm flat, Vec3 axis) {
    List<Layout> found = new ArrayList<>();
    for (Belt belt : Belt.round(flat, axis)) {
      for (int start = 0; start < belt.facets().size() && found.size() < ENOUGH; start++) {
        Layout layout = new Layout(flat);
        List<Integer> rest = new ArrayList<>(all(flat));
        rest.removeAll(belt.facets());
        if (lay(layout, belt, start) && Spread.outward(layout, rest, belt.facets())) {
          found.add(layout);
        }
      }
      if (!found.isEmpty()) {
        return found;
      }
    }
    return found;
  }

  /** The belt as a strip; what lies above and below hangs on it by one edge each. */
  static List<Layout> strips(FlatForm flat, Vec3 axis) {
    List<Layout> found = new ArrayList<>();
    for (Belt belt : Belt.round(flat, axis)) {
      for (int start = 0; start < belt.facets().size() && found.size() < ENOUGH; start++) {
        Layout layout = new Layout(flat);
        if (lay(layout, belt, start) && caps(layout, belt, start)) {
          found.add(layout);
        }
      }
      if (!found.isEmpty()) {
        return found;
      }
    }
    return found;
  }

  private static boolean lay(Layout layout, Belt belt, int start) {
    int n = belt.facets().size();
    layout.start(belt.facets().get(start));
    for (int i = 0; i + 1 < n; i++) {
      int at = (start + i) % n;
      if (!layout.hang(belt.edges().get(at), belt.facets().get(at))) {
        return false;
      }
    }
    return true;
  }

  private static boolean caps(Layout layout, Belt belt, int start) {
    FlatForm flat = layout.flat();
    int n = belt.facets().size();
    List<Integer> left = new ArrayList<>(all(flat));
    left.removeAll(belt.facets());
    while (!left.isEmpty()) {
      boolean hung = false;
      // From the middle of the strip outward.
      for (int i = 0; i < n && !hung; i++) {
        int step = (i % 2 == 0 ? i : -i - 1) / 2;
        int onto = belt.facets().get(Math.floorMod(start + n / 2 + step, n));
        for (int e : flat.edgesOf(onto)) {
          int cap = flat.across(e, onto);
          if (left.contains(cap) && layout.hang(e, onto)) {
            List<Integer> rest = connected(flat, cap, left);
            left.removeAll(rest);
            rest.remove(Integer.valueOf(cap));
            if (!Spread.outward(layout, rest, List.of(cap))) {
              return false;
            }
            hung = true;
            break;
          }
        }
      }
      if (!hung) {
        return false;
      }
    }
    return true;
  }

  private static List<Integer> connected(FlatForm flat, int start, List<Integer> among) {
    List<Integer> found = new ArrayList<>(List.of(start));
    for (int i = 0; i < found.size(); i++) {
      for (int e : flat.edgesOf(found.get(i))) {
        int other = flat.across(e, found.get(i));
        if (among.contains(other) && !found.contains(other)) {
          found.add(other);
        }
      }
    }
    return found;
  }

  private static List<Integer> all(FlatForm flat) {
    List<Integer> all = new ArrayList<>();
    for (int f = 0; f < flat.count(); f++) {
      all.add(f);
    }
    return all;
  }
}
