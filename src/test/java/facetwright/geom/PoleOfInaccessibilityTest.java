package facetwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Polygon;

class PoleOfInaccessibilityTest {
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

  /** Against the room told side by side, in a card full of holes. */
  @Property(tries = 20, seed = "5")
  void hasTheMostRoomAmongHundredsOfHoles(@ForAll @IntRange(min = 5, max = 20) int rows) {
    Random random = new Random(rows);
    double pitch = 100.0 / rows;
    List<Polygon2> holes = new ArrayList<>();
    for (int i = 0; i < rows * rows; i++) {
      double x = (i % rows + 0.5) * pitch;
      double y = Math.floorDiv(i, rows) * pitch + pitch / 2;
      double radius = pitch * (0.1 + 0.3 * random.nextDouble());
      if (random.nextInt(30) > 0) {
        holes.add(Polygon2.regular(new Vec2(x, y), 24, radius, random.nextDouble()));
      }
    }
    Polygon2 card = Polygon2.rectangle(0, 0, 100, 100);
    Polygon region = Planar.polygon(card, holes);
    double most = MaximumInscribedCircle.getRadiusLine(region, 0.02).getLength();
    Vec2 found = Planar.inmost(card, holes, 0.05);
    double room =
        region.getBoundary().distance(Planar.factory().createPoint(Planar.coordinate(found)));
    assertThat(region.contains(Planar.factory().createPoint(Planar.coordinate(found)))).isTrue();
    assertThat(room).isBetween(most - 0.05, most + 0.02 + 1e-9);
  }
}
