package facetwright.form.unfold;

import facetwright.form.FormEdge;
import facetwright.form.Mirror;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Looks for nets without overlap: steepest-edge cuts from many directions, then growth; and for
 * such as lie on themselves turned over.
 */
final class Search {
  private static final Growth[] WAYS = {
    new Growth(1, 0, 0), new Growth(0.5, 2, 0), new Growth(1, 1, 0), new Growth(0, 1, 0)
  };
  private static final List<Growth> EVEN_WAYS = List.of(WAYS[0], WAYS[1]);
  private static final double GOLDEN = Math.PI * (3 - Math.sqrt(5));

  /** From how many kinds of mirrors at most layouts are grown. */
  private static final int MIRRORS = 4;

  private final FlatForm flat;
  private final int root;
  private final int most;
  private final SplittableRandom random;
  private final List<Mirror> mirrors;
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
    mirrors = Mirror.of(flat.form());
  }

  /**
   * Runs it; what was found is asked afterwards. Where the form lies on itself in a mirror, what is
   * seen from one side of it is seen from the other, so that half as many directions and starts do.
   */
  Search run() {
    int halves = mirrors.isEmpty() ? 1 : 2;
    int directions = Math.clamp(3000 / flat.count(), 8, 32) / halves;
    if (flat.form().isClosed()) {
      for (int i = 0; i < directions && tries < most; i++) {
        tries++;
        Steepest.layout(flat, root, direction(i, directions)).ifPresent(whole::add);
      }
    }
    int starts = Math.max(1, Math.clamp(1000 / flat.count(), 1, 6) / halves);
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

  /**
   * A layout in one piece that lies on itself turned over.
   *
   * @param mirror which facet falls on which
   */
  record Even(Layout layout, Mirror mirror) {}

  /**
   * Layouts in one piece that lie on themselves turned over, grown from the line on which they are:
   * from a facet that falls on itself, or from two that fall on each other.
   */
  List<Even> even() {
    List<Even> found = new ArrayList<>();
    Set<Layout.Tree> seen = new HashSet<>();
    for (Mirror mirror : unlike()) {
      for (Start start : starts(mirror)) {
        for (Growth way : EVEN_WAYS) {
          Layout layout = new Layout(flat);
          List<Integer> started = start.in(layout);
          if (!started.isEmpty()
              && way.evenly(layout, started, mirror, random)
              && seen.add(layout.way())) {
            found.add(new Even(layout, mirror));
          }
        }
      }
    }
    return found;
  }

  /** Of mirrors that keep as much of the form where it is one, so that few are tried. */
  private List<Mirror> unlike() {
    Map<List<Object>, Mirror> unlike = new LinkedHashMap<>();
    for (Mirror m : mirrors) {
      long edges =
          IntStream.range(0, flat.form().edges().size()).filter(e -> m.edge(e) == e).count();
      unlike.putIfAbsent(List.of(m.kept().size(), edges, m.facet(root) == root), m);
    }
    return unlike.values().stream().limit(MIRRORS).toList();
  }

  /** From the root and from the largest other facet that fall on themselves; else from an edge. */
  private List<Start> starts(Mirror mirror) {
    List<Integer> kept = mirror.kept();
    if (kept.isEmpty()) {
      return IntStream.range(0, flat.form().edges().size())
          .filter(e -> mirror.edge(e) == e && !flat.edge(e).isRim())
          .boxed()
          .max(Comparator.comparingLong(e -> Math.round(flat.length(e) * 1000)))
          .map(e -> new Start(flat.edge(e).left(), e))
          .stream()
          .toList();
    }
    List<Integer> from = new ArrayList<>();
    if (mirror.facet(root) == root) {
      from.add(root);
    }
    kept.stream()
        .filter(f -> f != root)
        .max(Comparator.comparingLong(f -> Math.round(flat.outline(f).area() * 1000)))
        .ifPresent(from::add);
    return from.stream().map(f -> new Start(f, FormEdge.NONE)).toList();
  }

  /** A facet on the line of the mirror, or one beside it and the edge along the line. */
  private record Start(int facet, int edge) {
    List<Integer> in(Layout layout) {
      layout.start(facet);
      if (edge == FormEdge.NONE) {
        return List.of(facet);
      }
      return layout.hang(edge, facet)
          ? List.of(facet, layout.flat().across(edge, facet))
          : List.of();
    }
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
