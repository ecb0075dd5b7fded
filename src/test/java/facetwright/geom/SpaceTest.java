package facetwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SpaceTest {
  private static final double NEAR = 1e-9;

  @Property(seed = "20261125")
  void motionsKeepDistancesAndHands(
      @ForAll @DoubleRange(min = -7, max = 7) double turn,
      @ForAll @DoubleRange(min = -90, max = 90) double x,
      @ForAll @DoubleRange(min = -90, max = 90) double y) {
    Vec3 from = new Vec3(x, y, 7);
    Vec3 to = new Vec3(y + 200, x, -3);
    Motion3 m = Motion3.about(from, to, turn);
    Vec3 p = new Vec3(3 * y, 5, x);
    assertThat(m.apply(from).distance(from)).isLessThan(NEAR);
    assertThat(m.apply(to).distance(to)).isLessThan(NEAR);
    assertThat(m.apply(p).distance(m.apply(Vec3.X))).isCloseTo(p.distance(Vec3.X), within(NEAR));
    assertThat(m.ex().cross(m.ey()).distance(m.ez())).isLessThan(NEAR);
    assertThat(m.then(m.inverse()).apply(p).distance(p)).isLessThan(NEAR);
    assertThat(m.inverse().then(m).apply(p).distance(p)).isLessThan(NEAR);
    Motion3 twice = Motion3.about(from, to, 2 * turn);
    assertThat(m.then(m).apply(p).distance(twice.apply(p))).isLessThan(1e-8);
  }

  @Test
  void turnsAreCounterClockwiseSeenAgainstTheAxis() {
    Motion3 quarter = Motion3.about(Vec3.ZERO, Vec3.Z, Math.PI / 2);
    assertThat(quarter.apply(Vec3.X).distance(Vec3.Y)).isLessThan(1e-15);
    assertThat(quarter.apply(new Vec2(0, 2)).distance(new Vec3(-2, 0, 0))).isLessThan(1e-15);
    assertThat(quarter.direction(Vec3.Z)).isEqualTo(Vec3.Z);
  }

  @Test
  void carryingLaysFramesOnFrames() {
    Vec3 onto = new Vec3(1, 2, 3);
    Motion3 m = Motion3.carrying(Vec3.X, Vec3.Y, Vec3.Z, onto, Vec3.Z, Vec3.X);
    assertThat(m.apply(Vec3.X).distance(onto)).isLessThan(1e-15);
    assertThat(m.direction(Vec3.Y).distance(Vec3.Z)).isLessThan(1e-15);
    assertThat(m.direction(Vec3.Z).distance(Vec3.X)).isLessThan(1e-15);
    assertThat(m.direction(Vec3.X).distance(Vec3.Y)).isLessThan(1e-15);
  }

  @Test
  void vectors() {
    Vec3 v = new Vec3(2, 3, 6);
    assertThat(v.length()).isEqualTo(7);
    assertThat(v.unit().length()).isCloseTo(1, within(1e-15));
    assertThat(v.cross(v)).isEqualTo(Vec3.ZERO);
    assertThat(Vec3.ZERO.toward(v, 0.5)).isEqualTo(new Vec3(1, 1.5, 3));
    assertThatThrownBy(Vec3.ZERO::unit).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(Vec2.ZERO::unit).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> new Vec3(0, 0, Double.POSITIVE_INFINITY))
        .hasMessageContaining("finite");
  }
}
