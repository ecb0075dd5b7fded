package facetwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Polygon;

class InmostTest {
  /** Beside the largest inscribed circle of JTS, in stars with a window: bays and borders alike. */
  @Property(tries = 300, seed = "20261125")
  void hasTheMostRoomInARegionWithAWindow(
      @ForAll @IntRange(min = 3, max = 9) int points,
      @ForAll @DoubleRange(min = 0.4, max = 1.3) double bay,
      @ForAll @DoubleRange(min = 0, max = 6) double turned,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double window) {
    Polygon2 star =
        new Polygon2(
            IntStream.range(0, 2 * points)
                .mapToObj(
                    i ->
                        Vec2.polar(i % 2 == 0 ? 40 : 40 * bay, turned + Math.PI * i / points)
                            .plus(new Vec2(300, -120)))
                .toList());
    List<Polygon2> openings = new ArrayList<>();
    double inner = 40 * Math.min(1, bay) * Math.cos(Math.PI / points) * window;
    if (inner > 1) {
      openings.add(Polygon2.regular(new Vec2(300, -120), 6, inner, 0));
    }
    Polygon region = Planar.polygon(star, openings);
    Vec2 found = Planar.inmost(star, openings, 0.05);
    double room =
        region.getBoundary().distance(Planar.factory().createPoint(Planar.coordinate(found)));
    double most = MaximumInscribedCircle.getRadiusLine(region, 0.02).getLength();
    assertThat(region.contains(Planar.factory().createPoint(Planar.coordinate(found)))).isTrue();
    assertThat(room).isBetween(most - 0.05, most + 0.02 + 1e-9);
  }

  /** A frame of even width has half its width at most, save at the corners, where it is wider. */
  @Test
  void findsTheCornerOfAFrame() {
    Polygon2 frame = Polygon2.rectangle(0, 0, 100, 80);
    Vec2 found = Planar.inmost(frame, List.of(Polygon2.rectangle(10, 10, 80, 60)), 0.001);
    // A circle in the corner touches two sides and the window's corner: r·(1 + 1/√2) = 10.
    double radius = 10 / (1 + Math.sqrt(0.5));
    assertThat(Math.min(found.x(), 100 - found.x())).isCloseTo(radius, within(0.002));
    assertThat(Math.min(found.y(), 80 - found.y())).isCloseTo(radius, within(0.002));
  }
}
