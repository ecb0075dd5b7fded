package facetwright.fold.making;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

class RingTest {
  /**
   * As the plain distance of each side tells, to the last bit; within as another library has it.
   */
  @Property(tries = 200, seed = "20261201")
  void isAsFarAsItsNearestSide(@ForAll long seed) {
    RandomGenerator random = new SplittableRandom(seed);
    List<Vec2> corners = new ArrayList<>();
    for (int i = random.nextInt(1, 9); i > 0; i--) {
      corners.add(place(random));
    }
    corners.add(corners.getFirst());
    Ring ring = new Ring(corners);
    for (int i = 0; i < 20; i++) {
      Vec2 place = i == 0 ? corners.getLast() : place(random);
      double least = Double.POSITIVE_INFINITY;
      Vec2 from = corners.getLast();
      for (Vec2 to : corners) {
        least = Math.min(least, new Segment2(from, to).distance(place));
        from = to;
      }
      assertThat(ring.distance(place.x(), place.y(), Double.POSITIVE_INFINITY)).isEqualTo(least);
      assertThat(ring.distance(place.x(), place.y(), least / 2)).isEqualTo(least / 2);
      int located = located(corners, place);
      if (located != Location.BOUNDARY) {
        assertThat(ring.holds(place.x(), place.y())).isEqualTo(located == Location.INTERIOR);
      }
    }
  }

  private static int located(List<Vec2> corners, Vec2 place) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec2 c = corners.get(i % corners.size());
      ring[i] = new Coordinate(c.x(), c.y());
    }
    return RayCrossingCounter.locatePointInRing(new Coordinate(place.x(), place.y()), ring);
  }

  private static Vec2 place(RandomGenerator random) {
    return new Vec2(random.nextDouble(-50, 50), random.nextDouble(-50, 50));
  }
}
