package facetwright.net.outline;

import facetwright.geom.Vec2;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random simple outlines, most of them with hollow corners; seen whole from one place or not. */
public final class RandomOutlines {
  private RandomOutlines() {}

  /** One of so many corners, about 100 mm across. */
  public static Outline of(int corners, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return random.nextBoolean() ? round(corners, random) : comb(corners, random);
  }

  /** Corners about a middle, near and far. */
  private static Outline round(int corners, SplittableRandom random) {
    List<Vec2> all = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + random.nextDouble(-0.3, 0.3)) / corners;
      all.add(Vec2.polar(random.nextDouble(18, 50), angle));
    }
    return Outline.through(all, Site.NONE);
  }

  /** A back of one side, and teeth of all heights: no place sees them all. */
  private static Outline comb(int corners, SplittableRandom random) {
    List<Vec2> all = new ArrayList<>(List.of(new Vec2(-50, -30), new Vec2(50, -30)));
    int teeth = corners - 2;
    for (int i = 0; i < teeth; i++) {
      double x = 50 - 100 * (i + random.nextDouble(0.2, 0.8)) / teeth;
      all.add(new Vec2(x, random.nextDouble(-18, 40)));
    }
    return Outline.through(all, Site.NONE);
  }
}
