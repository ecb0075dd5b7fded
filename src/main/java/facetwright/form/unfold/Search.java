package facetwright.form.unfold;

import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Looks for nets without overlap: steepest-edge cuts from many directions, then growth. */
final class Search {
  private static final Growth[] WAYS = {
    new Growth(1, 0, 0), new Growth(0.5, 2, 0), new Growth(1, 1, 0), new Growth(0, 1, 0)
  };
  private static final double GOLDEN = Math.PI * (3 - Math.sqrt(5));

  private final FlatForm flat;
  private final int root;
  private final int most;
  private final SplittableRandom random;
  private final List<Layout> whole = new ArrayList<>();
  private Layout fewest;
  private int tries;

  /**
   * @param most how many trees to try at most
   */
  Search(FlatForm flat, int root, int most, long seed) {
    this.flat = flat;
    this.root = root;
    this.most = most;
    random = new SplittableRandom(seed);
  }

  /** Runs it; what was found is asked afterwards. */
  Search run() {
    int directions = Math.clamp(3000 / flat.count(), 8, 32);
    if (flat.form().isClosed()) {
      for (int i = 0; i < directions && tries < most; i++) {
        tries++;
        Steepest.layout(flat, root, direction(i, directions)).ifPresent(whole::add);
      }
    }
    int starts = Math.clamp(1000 / flat.count(), 1, 6);
    for (int i = 0; i < starts * WAYS.length && tries < most; i++) {
      int from = i < WAYS.length ? root : random.nextInt(flat.count());
      grown(WAYS[i % WAYS.length].layout(flat, from, random));
    }
    while (whole.isEmpty() && tries < most) {
      int from = tries % 2 == 0 ? root : random.nextInt(flat.count());
      Growth way = new Growth(random.nextDouble(), random.nextDouble(2), random.nextDouble(0.1, 1));
      grown(way.layout(flat, from, random));
    }
    return this;
  }

  private void grown(Layout layout) {
    tries++;
    if (layout.isOnePiece()) {
      whole.add(layout);
    }
    if (fewest == null || layout.pieces() < fewest.pieces()) {
      fewest = layout;
    }
  }

  /** Even over the sphere (a golden-angle spiral), set off so as to miss axes of symmetry. */
  private static Vec3 direction(int i, int of) {
    double z = 1 - 2 * (i + 0.37) / of;
    double flatRadius = Math.sqrt(1 - z * z);
    double turn = GOLDEN * i + 0.21;
    return new Vec3(flatRadius * Math.cos(turn), flatRadius * Math.sin(turn), z);
  }

  /** Layouts in one piece without overlap. */
  List<Layout> whole() {
    return List.copyOf(whole);
  }

  /** The layout with the fewest pieces. */
  Layout fewest() {
    return whole.isEmpty() ? fewest : whole.getFirst();
  }

  int tries() {
    return tries;
  }
}
