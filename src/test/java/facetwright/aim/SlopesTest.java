package facetwright.aim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Slopes against derivatives from the tables of any calculus book. */
class SlopesTest {

  private static Slope slope(Knob knob, Sham sham, Measure measure) {
    List<Knob> knobs = List.of(knob);
    return Slopes.of(knobs, sham.now(knobs), sham::at).all().getFirst().of(measure).orElseThrow();
  }

  /** d/dx of x³, of sin x and of 1/x; the error told is no smaller than the true one. */
  @Property(tries = 60, seed = "20261125")
  void smoothMeasuresHaveTheirDerivatives(@ForAll @DoubleRange(min = 1, max = 9) double x) {
    Sham sham =
        new Sham()
            .with(Measure.VOLUME, v -> Math.pow(v.getFirst(), 3))
            .with(Measure.HEIGHT, v -> Math.sin(v.getFirst()))
            .with(Measure.WIDTH, v -> 1 / v.getFirst());
    Knob knob = Sham.knob("side", x, 1, 9);
    holds(slope(knob, sham, Measure.VOLUME), 3 * x * x);
    holds(slope(knob, sham, Measure.HEIGHT), Math.cos(x));
    holds(slope(knob, sham, Measure.WIDTH), -1 / (x * x));
  }

  private static void holds(Slope slope, double derivative) {
    assertThat(slope.value()).isCloseTo(derivative, within(2e-5 * Math.max(1, derivative)));
    assertThat(Math.abs(slope.value() - derivative)).isLessThanOrEqualTo(slope.error() + 1e-9);
    assertThat(slope.error()).isLessThan(2e-3 * Math.max(1, Math.abs(derivative)));
  }

  @Test
  void atTheEndsItLooksInward() {
    Sham sham =
        new Sham()
            .with(
                Measure.AREA,
                v -> {
                  assertThat(v.getFirst()).isBetween(2.0, 6.0);
                  return v.getFirst() * v.getFirst();
                });
    holds(slope(Sham.knob("side", 2, 2, 6), sham, Measure.AREA), 4);
    holds(slope(Sham.knob("side", 6, 2, 6), sham, Measure.AREA), 12);
  }

  @Test
  void aBendAndAJumpAreToldAsUnsteady() {
    Sham sham =
        new Sham()
            .with(Measure.GAP, v -> Math.abs(v.getFirst() - 4))
            .with(Measure.HEIGHT, v -> v.getFirst() < 4 ? 1 : 2)
            .with(Measure.WIDTH, List::getFirst);
    Knob here = Sham.knob("side", 4, 0, 8);
    Slope gap = slope(here, sham, Measure.GAP);
    assertThat(gap.isSteady()).isFalse();
    // On the one side it is -1, on the other +1: a slope of 0 is 1 off.
    assertThat(gap.error()).isCloseTo(1, within(1e-9));
    assertThat(slope(here, sham, Measure.HEIGHT).isSteady()).isFalse();
    assertThat(slope(here, sham, Measure.WIDTH).isSteady()).isTrue();
    assertThat(slope(Sham.knob("side", 5, 0, 8), sham, Measure.GAP).isSteady()).isTrue();
  }

  @Test
  void stepsAreWholeSteps() {
    Sham sham = new Sham().with(Measure.AREA, v -> v.getFirst() * v.getFirst());
    // From 4 to 6 it grows by 20, from 6 to 8 by 28.
    Slope middle = slope(Sham.stepped("sides", 6, 4, 10, 2), sham, Measure.AREA);
    assertThat(middle.value()).isEqualTo(28);
    assertThat(middle.error()).isEqualTo(8);
    assertThat(slope(Sham.stepped("sides", 4, 4, 10, 2), sham, Measure.AREA).value()).isEqualTo(20);
    assertThat(slope(Sham.stepped("sides", 10, 4, 10, 2), sham, Measure.AREA).value())
        .isEqualTo(36);
  }

  @Test
  void whereThereIsNoDesignOnOneSideItLooksToTheOther() {
    Sham sham = new Sham().with(Measure.HEIGHT, v -> 3 * v.getFirst());
    List<Knob> knobs = List.of(Sham.knob("side", 4, 0, 8));
    Trial trial = v -> v.getFirst() > 4 ? new Tried.Refused("too wide") : sham.at(v);
    Slopes slopes = Slopes.of(knobs, sham.now(knobs), trial);
    assertThat(slopes.all().getFirst().of(Measure.HEIGHT).orElseThrow().value())
        .isCloseTo(3, within(1e-9));
    Slopes none = Slopes.of(knobs, sham.now(knobs), _ -> new Tried.Refused("no"));
    assertThat(none.all().getFirst().slopes()).isEmpty();
  }
}
