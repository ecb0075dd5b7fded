package facetwright.papers.layers;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random outlines, about 60 mm across. */
final class Shapes {
  private Shapes() {}

  /** Corners on an ellipse, at uneven steps. */
  static Polygon2 convex(int corners, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double flat = random.nextDouble(0.4, 1);
    List<Vec2> all = new ArrayList<>();
    for (double turn : turns(corners, random)) {
      Vec2 p = Vec2.polar(30, turn);
      all.add(new Vec2(p.x() + 40, flat * p.y() + 35));
    }
    return new Polygon2(all);
  }

  /** Corners at uneven steps and uneven distances from the middle. */
  static Polygon2 star(int corners, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Vec2> all = new ArrayList<>();
    for (double turn : turns(corners, random)) {
      all.add(Vec2.polar(random.nextDouble(12, 30), turn));
    }
    return new Polygon2(all);
  }

  private static List<Double> turns(int corners, SplittableRandom random) {
    List<Double> turns = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      turns.add(2 * Math.PI * (i + random.nextDouble(0, 0.6)) / corners);
    }
    return turns;
  }
}
