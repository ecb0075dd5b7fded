package facetwright.fold.touch;

import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.DoubleFunction;

/** Walks the way from flat to made in steps fitted to how fast the panels move. */
final class PathSearch {
  /** Even steps to begin with, so that a panel that comes back to its place is not overlooked. */
  private static final int BEGIN = 32;

  /** Halvings to find where it first happens. */
  private static final int HALVINGS = 20;

  private final Net net;
  private final DoubleFunction<List<Motion3>> path;
  private final PathSampling sampling;
  private final BiPredicate<Integer, Integer> counts;
  private int samples;
  private double step;
  private double stride;

  private record Sample(double t, List<Motion3> poses) {}

  private record Glued(int tab, int host) {}

  PathSearch(Net net, DoubleFunction<List<Motion3>> path, PathSampling sampling) {
    this.net = net;
    this.path = path;
    this.sampling = sampling;
    int[] piece = net.pieceOfPanel();
    Set<Glued> glued = glued(net);
    counts =
        (a, b) ->
            piece[a] == piece[b]
                && !glued.contains(new Glued(a, b))
                && !glued.contains(new Glued(b, a));
  }

  private static Set<Glued> glued(Net net) {
    Set<Glued> pairs = new HashSet<>();
    for (Join join : net.joins()) {
      switch (join) {
        case Join.Seam(_, EdgeRef b, int tab, _) -> pairs.add(new Glued(tab, b.panel()));
        case Join.Lap(int under, int over, _) -> pairs.add(new Glued(under, over));
      }
    }
    return pairs;
  }

  PathCollisions search() {
    Sample last = sample(0);
    for (int i = 1; i <= BEGIN; i++) {
      Sample next = sample((double) i / BEGIN);
      PathCollisions found = walk(last, next, BEGIN - i);
      if (found != null) {
        return found;
      }
      last = next;
    }
    return new PathCollisions(List.of(), 1, step, stride);
  }

  /**
   * Looks at what lies between two samples, and at the second.
   *
   * @param ahead samples to keep for the rest of the way
   */
  private PathCollisions walk(Sample from, Sample to, int ahead) {
    double moved = moved(from.poses, to.poses);
    if (moved > sampling.stride() && samples + ahead < sampling.most()) {
      Sample middle = sample((from.t + to.t) / 2);
      PathCollisions found = walk(from, middle, ahead + 1);
      return found != null ? found : walk(middle, to, ahead);
    }
    step = Math.max(step, to.t - from.t);
    stride = Math.max(stride, moved);
    List<Collision> met = at(to.poses);
    return met.isEmpty() ? null : first(from.t, to.t, met);
  }

  private PathCollisions first(double clear, double hit, List<Collision> met) {
    double before = clear;
    double after = hit;
    List<Collision> first = met;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (before + after) / 2;
      List<Collision> there = at(path.apply(middle));
      if (there.isEmpty()) {
        before = middle;
      } else {
        after = middle;
        first = there;
      }
    }
    return new PathCollisions(first, after, step, stride);
  }

  private List<Collision> at(List<Motion3> poses) {
    return Collisions.of(net, poses, sampling.touching(), counts);
  }

  private Sample sample(double t) {
    samples++;
    return new Sample(t, path.apply(t));
  }

  private double moved(List<Motion3> from, List<Motion3> to) {
    double most = 0;
    for (int p = 0; p < from.size(); p++) {
      for (Vec2 corner : net.panels().get(p).outline().corners()) {
        most = Math.max(most, from.get(p).apply(corner).distance(to.get(p).apply(corner)));
      }
    }
    return most;
  }
}
