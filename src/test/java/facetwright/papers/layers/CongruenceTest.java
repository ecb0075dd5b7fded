package facetwright.papers.layers;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** What counts as one shape. */
class CongruenceTest {
  private static final Congruence USUAL = Congruence.USUAL;

  private static Inset inset(int corners, long seed) {
    return new Inset(
        Shapes.star(corners, seed),
        List.of(Polygon2.rectangle(1, 2, 3, 4), Polygon2.rectangle(-6, -5, 2, 2)));
  }

  private static Inset started(Inset inset, int corner) {
    List<Vec2> corners = new ArrayList<>(inset.outline().corners());
    Collections.rotate(corners, corner);
    return new Inset(new Polygon2(corners), inset.windows().reversed());
  }

  @Property(seed = "20261125", tries = 200)
  void turnsAndShiftsDoNotMatter(
      @ForAll @IntRange(min = 4, max = 12) int corners,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = 0.1, max = 6.2) double turn,
      @ForAll @DoubleRange(min = -500, max = 500) double shift) {
    Inset shape = inset(corners, seed);
    Motion2 motion = Motion2.turn(turn).then(Motion2.shift(new Vec2(shift, 2 * shift + 1)));
    Inset other = started(shape.moved(motion), (int) (seed % corners));
    assertThat(USUAL.turned(shape, other)).isTrue();
    assertThat(USUAL.turned(other, shape)).isTrue();
    assertThat(USUAL.shifted(shape, other)).isFalse();
    assertThat(USUAL.shifted(shape, shape.moved(Motion2.shift(new Vec2(shift, 1))))).isTrue();
  }

  @Property(seed = "20261125", tries = 200)
  void mirroredIsAnotherShape(
      @ForAll @IntRange(min = 4, max = 12) int corners,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Inset shape = inset(corners, seed);
    assertThat(USUAL.turned(shape, shape.mirrored())).isFalse();
    assertThat(USUAL.turned(shape, shape.mirrored().mirrored())).isTrue();
    Inset square = new Inset(Polygon2.rectangle(0, 0, 7, 5), List.of());
    assertThat(USUAL.turned(square, square.mirrored())).isTrue();
  }

  /** The same lengths of sides in the same order, other angles. */
  @Test
  void aRhombusIsNoSquare() {
    Polygon2 square = Polygon2.rectangle(0, 0, 10, 10);
    Polygon2 rhombus =
        new Polygon2(List.of(new Vec2(0, 0), new Vec2(10, 0), new Vec2(16, 8), new Vec2(6, 8)));
    assertThat(USUAL.turned(new Inset(square, List.of()), new Inset(rhombus, List.of()))).isFalse();
  }

  @Test
  void windowsCount() {
    Polygon2 card = Polygon2.rectangle(0, 0, 30, 30);
    Inset low = new Inset(card, List.of(Polygon2.rectangle(10, 5, 10, 5)));
    Inset turned = new Inset(card, List.of(Polygon2.rectangle(5, 10, 5, 10)));
    Inset middle = new Inset(card, List.of(Polygon2.rectangle(10, 12.5, 10, 5)));
    assertThat(USUAL.turned(low, turned)).isTrue();
    assertThat(USUAL.shifted(low, turned)).isFalse();
    assertThat(USUAL.turned(low, middle)).isFalse();
    assertThat(USUAL.turned(low, new Inset(card, List.of()))).isFalse();
  }
}
