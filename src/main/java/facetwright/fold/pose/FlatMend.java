package facetwright.fold.pose;

import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A change of one score, and of as few senses as need be, by which the card round a corner comes to
 * fold flat. Its angles are whole hundredths of a degree, as they are told.
 */
public sealed interface FlatMend {
  /** Which scores have to be folded the other way: places in {@link FlatFolding#scores}. */
  List<Integer> others();

  /** Nothing but senses. */
  record Senses(List<Integer> others) implements FlatMend {}

  /**
   * A score is turned about the corner.
   *
   * @param place of it
   * @param degrees by which the sector before it gets wider and that after it narrower; negative
   *     for the other way
   */
  record Refold(int place, double degrees, List<Integer> others) implements FlatMend {}

  /**
   * A score is added within a sector.
   *
   * @param sector which
   * @param degrees from the sector's first side
   * @param sense of the new score
   */
  record Add(int sector, double degrees, Sense sense, List<Integer> others) implements FlatMend {}

  /** A corner as it would be. */
  record Tried(FlatMend mend, FlatFolding corner) {
    private double narrowest() {
      return corner.sectors().stream().mapToDouble(s -> s).min().orElse(0);
    }
  }

  /** The change that takes fewest other senses, of those the one that leaves most room. */
  static Optional<FlatMend> of(FlatFolding at) {
    if (at.isPossible()) {
      return Optional.empty();
    }
    List<Tried> tried = new ArrayList<>();
    if (at.areAnglesRight()) {
      tried.add(new Tried(new Senses(at.toTurn()), at));
    } else if (at.sectors().size() % 2 == 0) {
      turns(at, tried);
    } else {
      additions(at, tried);
    }
    return tried.stream()
        .filter(t -> !t.mend.others().isEmpty() || t.corner.isPossible())
        .min(
            Comparator.<Tried>comparingInt(t -> t.mend.others().size())
                .thenComparingDouble(t -> -t.narrowest()))
        .map(Tried::mend);
  }

  private static void turns(FlatFolding at, List<Tried> tried) {
    int n = at.sectors().size();
    for (int i = 0; i < n; i++) {
      // The sector before counts with one sign, the one after with the other.
      double by = hundredths((i % 2 == 0 ? -1 : 1) * at.alternating() / 2);
      List<Double> sectors = new ArrayList<>(at.sectors());
      sectors.set(i, sectors.get(i) + by);
      sectors.set((i + 1) % n, sectors.get((i + 1) % n) - by);
      FlatFolding turned = at.with(sectors, at.senses());
      if (turned.areAnglesRight() && sectors.stream().allMatch(s -> s > Crimping.SAME_DEGREES)) {
        tried.add(new Tried(new Refold(i, by, turned.toTurn()), turned));
      }
    }
  }

  private static void additions(FlatFolding at, List<Tried> tried) {
    int n = at.sectors().size();
    for (int k = 0; k < n; k++) {
      double others = 0;
      for (int j = 1; j < n; j++) {
        others += (j % 2 == 1 ? 1 : -1) * at.sectors().get((k + j) % n);
      }
      double wide = at.sectors().get(k);
      double from = hundredths((wide - others) / 2);
      if (from <= Crimping.SAME_DEGREES || wide - from <= Crimping.SAME_DEGREES) {
        continue;
      }
      for (Sense sense : Sense.values()) {
        List<Double> sectors = new ArrayList<>(at.sectors());
        List<Sense> senses = new ArrayList<>(at.senses());
        sectors.set(k, wide - from);
        sectors.add(k, from);
        senses.add(k, sense);
        FlatFolding added = at.with(sectors, senses);
        // The new score itself is of the sense it says: what is turned with it counts as another.
        List<Integer> turned = added.toTurn();
        if (added.areAnglesRight() && !turned.contains(k)) {
          int place = k;
          List<Integer> old = turned.stream().map(i -> i > place ? i - 1 : i).toList();
          tried.add(new Tried(new Add(k, from, sense, old), added));
        }
      }
    }
  }

  private static double hundredths(double degrees) {
    return Math.round(100 * degrees) / 100.0;
  }
}
