package facetwright.fold.making;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Tabs of one seam: where a seam runs over several rows each row has its own tab. */
final class Runs {
  /** Sides that turn by more than 60° at their common corner are two seams. */
  private static final double ONWARD = -0.5;

  private Runs() {}

  /**
   * Joins that follow each other in the flat net on both sides.
   *
   * @param joins indices of joins
   * @return each join once, in the order given
   */
  static List<List<Integer>> of(Net net, List<Integer> joins) {
    int[] root = IntStream.range(0, joins.size()).toArray();
    for (int i = 0; i < root.length; i++) {
      for (int j = 0; j < i; j++) {
        if (follow(net, net.joins().get(joins.get(i)), net.joins().get(joins.get(j)))) {
          Bodies.unite(root, i, j);
        }
      }
    }
    Map<Integer, List<Integer>> runs = new LinkedHashMap<>();
    for (int i = 0; i < root.length; i++) {
      runs.computeIfAbsent(Bodies.find(root, i), _ -> new ArrayList<>()).add(joins.get(i));
    }
    return List.copyOf(runs.values());
  }

  private static boolean follow(Net net, Join one, Join other) {
    return one instanceof Join.Seam s
        && other instanceof Join.Seam t
        && ((follow(net, s.a(), t.a()) && follow(net, s.b(), t.b()))
            || (follow(net, s.a(), t.b()) && follow(net, s.b(), t.a())));
  }

  private static boolean follow(Net net, EdgeRef one, EdgeRef other) {
    if (one.panel() == other.panel()) {
      return false;
    }
    Segment2 s = net.segment(one);
    Segment2 t = net.segment(other);
    return follow(s.from(), s.to(), t.from(), t.to())
        || follow(s.from(), s.to(), t.to(), t.from())
        || follow(s.to(), s.from(), t.from(), t.to())
        || follow(s.to(), s.from(), t.to(), t.from());
  }

  private static boolean follow(Vec2 common, Vec2 one, Vec2 same, Vec2 other) {
    return common.distance(same) < LengthTolerance.UNSEEN.mm()
        && one.minus(common).dot(other.minus(common))
            < ONWARD * one.distance(common) * other.distance(common);
  }
}
