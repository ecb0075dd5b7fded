package facetwright.fold.touch;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.Card;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * The same question asked another way: every panel cut into triangles, every pair of triangles
 * tried, a pair passing where a side of the one pierces the other (T. Moller and B. Trumbore, Fast,
 * minimum storage ray-triangle intersection, J. Graphics Tools 2 (1997), from memory).
 */
class BruteForceTest {
  private static final LengthTolerance NEXT_TO_NOTHING = new LengthTolerance(1e-9);

  private record Triangle(Vec3 a, Vec3 b, Vec3 c) {
    boolean isPiercedBy(Vec3 from, Vec3 to) {
      Vec3 d = to.minus(from);
      Vec3 u = b.minus(a);
      Vec3 v = c.minus(a);
      Vec3 p = d.cross(v);
      double det = u.dot(p);
      if (det == 0) {
        return false;
      }
      Vec3 s = from.minus(a);
      double x = s.dot(p) / det;
      Vec3 q = s.cross(u);
      double y = d.dot(q) / det;
      double t = v.dot(q) / det;
      return x >= 0 && y >= 0 && x + y <= 1 && t >= 0 && t <= 1;
    }

    boolean passes(Triangle o) {
      return isPiercedBy(o.a, o.b)
          || isPiercedBy(o.b, o.c)
          || isPiercedBy(o.c, o.a)
          || o.isPiercedBy(a, b)
          || o.isPiercedBy(b, c)
          || o.isPiercedBy(c, a);
    }
  }

  private static List<Triangle> triangles(Panel panel, Motion3 pose) {
    Geometry parts = ConstrainedDelaunayTriangulator.triangulate(panel.region());
    List<Triangle> all = new ArrayList<>();
    for (int i = 0; i < parts.getNumGeometries(); i++) {
      Coordinate[] c = parts.getGeometryN(i).getCoordinates();
      all.add(new Triangle(at(c[0], pose), at(c[1], pose), at(c[2], pose)));
    }
    return all;
  }

  private static Vec3 at(Coordinate c, Motion3 pose) {
    return pose.apply(new Vec2(c.x, c.y));
  }

  private static List<String> everyPair(Net net, List<Motion3> poses) {
    List<List<Triangle>> all = new ArrayList<>();
    for (int p = 0; p < poses.size(); p++) {
      all.add(triangles(net.panels().get(p), poses.get(p)));
    }
    List<String> found = new ArrayList<>();
    for (int a = 0; a < all.size(); a++) {
      for (int b = a + 1; b < all.size(); b++) {
        List<Triangle> others = all.get(b);
        if (all.get(a).stream().anyMatch(t -> others.stream().anyMatch(t::passes))) {
          found.add(a + "-" + b);
        }
      }
    }
    return found;
  }

  private static Motion3 thrown(SplittableRandom random, double room) {
    Vec3 axis = new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble());
    Motion3 turn = Motion3.about(Vec3.ZERO, axis, random.nextDouble(-3, 3));
    Vec3 to = new Vec3(random.nextDouble(room), random.nextDouble(room), random.nextDouble(room));
    return new Motion3(turn.ex(), turn.ey(), turn.ez(), to);
  }

  /** A star of 3 to 8 corners about the origin, some with a window in the middle. */
  private static void star(Card card, int number, SplittableRandom random) {
    int corners = random.nextInt(3, 9);
    double[] xy = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + random.nextDouble(0.1, 0.4)) / corners;
      double far = random.nextDouble(10, 30);
      xy[2 * i] = far * Math.cos(angle);
      xy[2 * i + 1] = far * Math.sin(angle);
    }
    PanelDraft panel = card.panel("star " + number, xy);
    if (corners > 3 && random.nextBoolean()) {
      Polygon2 window = Polygon2.regular(Vec2.ZERO, 5, random.nextDouble(0.5, 2.5), 0);
      panel.open(new Opening.Window(window, Site.NONE));
    }
  }

  @Property(tries = 300, seed = "20261125")
  void starsWithWindowsPassWhereTheirTrianglesDo(
      @ForAll @IntRange(min = 2, max = 24) int count, @ForAll @LongRange(min = 0) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Card card = new Card();
    List<Motion3> poses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      star(card, i, random);
      poses.add(thrown(random, 80));
    }
    Net net = card.net();
    assertThat(Passed.in(net, poses, NEXT_TO_NOTHING))
        .extracting(c -> c.a() + "-" + c.b())
        .isEqualTo(everyPair(net, poses));
  }

  @Property(tries = 100, seed = "20261125")
  void theTreeFindsEveryPairOfBoxes(
      @ForAll @IntRange(min = 1, max = 120) int count, @ForAll @LongRange(min = 0) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<List<Vec3>> boxes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      // Whole numbers, so that boxes touch and coincide too.
      Vec3 low = new Vec3(random.nextInt(12), random.nextInt(12), random.nextInt(12));
      Vec3 size = new Vec3(random.nextInt(4), random.nextInt(4), random.nextInt(4));
      boxes.add(List.of(low, low.plus(size)));
    }
    List<BoxTree.Pair> wanted = new ArrayList<>();
    for (int a = 0; a < count; a++) {
      for (int b = a + 1; b < count; b++) {
        Vec3 la = boxes.get(a).getFirst();
        Vec3 ha = boxes.get(a).getLast();
        Vec3 lb = boxes.get(b).getFirst();
        Vec3 hb = boxes.get(b).getLast();
        if (Math.max(la.x(), lb.x()) <= Math.min(ha.x(), hb.x())
            && Math.max(la.y(), lb.y()) <= Math.min(ha.y(), hb.y())
            && Math.max(la.z(), lb.z()) <= Math.min(ha.z(), hb.z())) {
          wanted.add(new BoxTree.Pair(a, b));
        }
      }
    }
    assertThat(new BoxTree(boxes.stream().map(b -> BoxTree.Box.around(b, 0)).toList()).pairs())
        .isEqualTo(wanted);
  }
}
