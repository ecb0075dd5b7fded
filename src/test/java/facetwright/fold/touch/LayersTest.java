package facetwright.fold.touch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Strips folded up flat, against every order of their layers. */
class LayersTest {
  private static final FoldAngle RIGHT_OVER = FoldAngle.degrees(180);

  /** A strip of panels, its scores folded right over, and perhaps one panel lapped on another. */
  @SuppressWarnings("ArrayRecordComponent") // Never compared.
  private record Strip(double[] lengths, boolean[] mountains, Optional<int[]> lap) {
    Net net() {
      Card card = new Card();
      List<PanelDraft> panels = new ArrayList<>();
      panels.add(card.rectangle("panel 0", 0, 0, lengths[0], 40));
      for (int i = 1; i < lengths.length; i++) {
        PanelDraft last = panels.getLast();
        Sense sense = mountains[i - 1] ? Sense.MOUNTAIN : Sense.VALLEY;
        panels.add(
            card.flap(last.edge(i == 1 ? 1 : 2), "panel " + i, lengths[i], sense, RIGHT_OVER));
      }
      lap.ifPresent(l -> card.draft.lap(panels.get(l[0]), panels.get(l[1]), Site.NONE));
      card.draft.standOn(panels.getFirst());
      return card.net();
    }

    double place(int i) {
      double at = 0;
      for (int k = 0; k < i; k++) {
        at += k % 2 == 0 ? lengths[k] : -lengths[k];
      }
      return at;
    }

    boolean isAcross(int panel, double at) {
      return Math.min(place(panel), place(panel + 1)) < at - 1e-9
          && Math.max(place(panel), place(panel + 1)) > at + 1e-9;
    }

    boolean canLie() {
      return canLie(new ArrayList<>(), new int[lengths.length]);
    }

    private boolean canLie(List<Integer> up, int[] height) {
      if (up.size() == lengths.length) {
        return lies(height);
      }
      for (int p = 0; p < lengths.length; p++) {
        if (!up.contains(p)) {
          height[p] = up.size();
          up.add(p);
          if (canLie(up, height)) {
            return true;
          }
          up.removeLast();
        }
      }
      return false;
    }

    /** Even panels have their outside up, odd ones down. */
    private boolean lies(int[] height) {
      int n = lengths.length;
      if (lap.isPresent()) {
        int under = lap.get()[0];
        int over = lap.get()[1];
        if (height[over] > height[under] != (over % 2 == 0)) {
          return false;
        }
      }
      for (int i = 0; i + 1 < n; i++) {
        int even = i % 2 == 0 ? i : i + 1;
        int odd = i % 2 == 0 ? i + 1 : i;
        if (height[even] > height[odd] != mountains[i]) {
          return false;
        }
        for (int j = 0; j < n; j++) {
          boolean between = isBetween(height, i, j);
          if (between && isAcross(j, place(i + 1))) {
            return false;
          }
          boolean together =
              Math.abs(place(j + 1) - place(i + 1)) < 1e-9 && (i - j) % 2 == 0 && j + 1 < n;
          if (j != i && together && between != isBetween(height, i, j + 1)) {
            return false;
          }
        }
      }
      return true;
    }

    private static boolean isBetween(int[] height, int i, int j) {
      return height[j] > Math.min(height[i], height[i + 1])
          && height[j] < Math.max(height[i], height[i + 1]);
    }

    boolean isFound() {
      Net net = net();
      return Collisions.of(net, Folding.fold(net).poses()).stream().anyMatch(Collision::isInTheWay);
    }

    @Override
    public String toString() {
      return Arrays.toString(lengths)
          + Arrays.toString(mountains)
          + lap.map(Arrays::toString).orElse("");
    }
  }

  private static Strip random(Random chance, int n) {
    double[] lengths = new double[n];
    boolean[] mountains = new boolean[n - 1];
    for (int i = 0; i < n; i++) {
      lengths[i] = 20 + 10 * chance.nextInt(5);
      if (i > 0) {
        mountains[i - 1] = chance.nextBoolean();
      }
    }
    Strip strip = new Strip(lengths, mountains, Optional.empty());
    int under = chance.nextInt(n);
    int over = chance.nextInt(n);
    double low =
        Math.max(
            Math.min(strip.place(under), strip.place(under + 1)),
            Math.min(strip.place(over), strip.place(over + 1)));
    double high =
        Math.min(
            Math.max(strip.place(under), strip.place(under + 1)),
            Math.max(strip.place(over), strip.place(over + 1)));
    return high - low > 5 && Math.abs(under - over) > 1
        ? new Strip(lengths, mountains, Optional.of(new int[] {under, over}))
        : strip;
  }

  /** What is told can't be, and all that can't be is told. */
  @Test
  void stripsAgainstEveryOrder() {
    Random chance = new Random(1997);
    int stuck = 0;
    for (int round = 0; round < 480; round++) {
      Strip strip = random(chance, 3 + round % 4);
      boolean can = strip.canLie();
      assertThat(strip.isFound()).as("%s", strip).isEqualTo(!can);
      stuck += can ? 0 : 1;
    }
    assertThat(stuck).isGreaterThan(100);
  }

  /** A flap lapped under runs through the spine from the space it has on. */
  @Property(tries = 60, seed = "20261130")
  void aFlapInABookEndsAtItsSpine(
      @ForAll @DoubleRange(min = 30, max = 90) double two,
      @ForAll @DoubleRange(min = 10, max = 120) double flap) {
    Strip strip =
        new Strip(
            new double[] {two + 5, two, flap},
            new boolean[] {true, true},
            Optional.of(new int[] {2, 0}));
    assertThat(strip.isFound()).isEqualTo(flap > two + Collision.HELD);
    Net net = strip.net();
    for (Collision c : Collisions.of(net, Folding.fold(net).poses())) {
      assertThat(c.held()).hasValue(2);
      assertThat(c.crease()).containsExactly(0, 1);
      assertThat(c.depth()).isCloseTo(flap - two, within(1e-6));
    }
  }
}
