package facetwright.papers.layers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Strips of triangles, points up and down in turn. */
class StripTest {

  /** Base 20, height 30, point over the middle: worked by hand. */
  @Test
  void ticksOfAStripOfFive() {
    Polygon2 triangle = new Polygon2(List.of(new Vec2(0, 0), new Vec2(20, 0), new Vec2(10, 30)));
    Strip strip = Strip.of(triangle, 0, 5).orElseThrow();
    assertThat(strip.below()).containsExactly(0.0, 20.0, 40.0, 60.0);
    assertThat(strip.above()).containsExactly(10.0, 30.0, 50.0);
    assertThat(strip.length()).isEqualTo(60);
    assertThat(strip.waste()).isCloseTo(60 * 30 - 5 * 300, within(1e-9));
    assertThat(strip.with(4).length()).isEqualTo(50);
    assertThat(strip.filling(65).triangles()).isEqualTo(5);
    assertThat(strip.filling(19).triangles()).isZero();
  }

  /** Two right triangles make a rectangle: nothing is wasted. */
  @Test
  void rightTrianglesWasteNothing() {
    Polygon2 triangle = new Polygon2(List.of(new Vec2(0, 0), new Vec2(20, 0), new Vec2(0, 30)));
    assertThat(Strip.of(triangle, 0, 6).orElseThrow().waste()).isCloseTo(0, within(1e-9));
  }

  @Property(seed = "20261125", tries = 200)
  void everyPieceIsTheTriangleUnmirrored(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 0, max = 2) int side,
      @ForAll @IntRange(min = 1, max = 15) int count) {
    Polygon2 triangle = Shapes.convex(3, seed);
    Optional<Strip> found = Strip.of(triangle, side, count);
    boolean overhangs =
        triangle.angle(side) > Math.PI / 2 || triangle.angle(side + 1) > Math.PI / 2;
    assertThat(found.isEmpty()).isEqualTo(overhangs);
    if (found.isEmpty()) {
      return;
    }
    Strip strip = found.get();
    Inset wanted = new Inset(triangle, List.of());
    Polygon2 card = Polygon2.rectangle(0, 0, strip.length(), strip.height());
    List<Polygon2> pieces = pieces(strip);
    assertThat(pieces).hasSize(count);
    double area = 0;
    for (int i = 0; i < count; i++) {
      assertThat(Congruence.USUAL.turned(wanted, new Inset(pieces.get(i), List.of()))).isTrue();
      assertThat(Planar.sharedArea(card, pieces.get(i))).isCloseTo(triangle.area(), within(1e-6));
      if (i > 0) {
        assertThat(Planar.sharedArea(pieces.get(i - 1), pieces.get(i))).isLessThan(1e-6);
      }
      area += pieces.get(i).area();
    }
    assertThat(strip.waste()).isCloseTo(card.area() - area, within(1e-6));
    assertThat(strip.below().size() + strip.above().size()).isEqualTo(count + 2);
  }

  /** The triangles between the ticks, in turn. */
  private static List<Polygon2> pieces(Strip strip) {
    List<Vec2> p = strip.points();
    return IntStream.range(0, strip.triangles())
        .mapToObj(i -> Polygon2.ofEitherSense(p.subList(i, i + 3)))
        .toList();
  }
}
