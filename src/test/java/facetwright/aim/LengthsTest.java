package facetwright.aim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Lengths told from angles and proportions by how a form's measures go with them. */
class LengthsTest {
  private static List<String> among(Sham sham, Knob... knobs) {
    List<Knob> all = List.of(knobs);
    return Lengths.among(Slopes.of(all, sham.now(all), sham::at)).stream().map(Knob::name).toList();
  }

  /**
   * A ridged roof over s × l with walls h, pitch p degrees and a slenderness q of the base: only
   * lengths carry a scale.
   */
  @Property(tries = 30, seed = "20261125")
  void anglesAndProportionsAreLeftOut(
      @ForAll @DoubleRange(min = 20, max = 60) double side,
      @ForAll @DoubleRange(min = 20, max = 60) double tall,
      @ForAll @DoubleRange(min = 20, max = 60) double pitch,
      @ForAll @DoubleRange(min = 0.6, max = 1.8) double slender) {
    Sham sham =
        new Sham()
            .with(Measure.WIDTH, v -> v.get(0) * v.get(3))
            .with(Measure.DEPTH, v -> v.get(0))
            .with(Measure.HEIGHT, v -> v.get(1) + v.get(0) / 2 * Math.tan(Math.toRadians(v.get(2))))
            .with(
                Measure.VOLUME,
                v ->
                    v.get(0)
                        * v.get(0)
                        * v.get(3)
                        * (v.get(1) + v.get(0) / 4 * Math.tan(Math.toRadians(v.get(2)))));
    assertThat(
            among(
                sham,
                Sham.knob("side", side, 15, 70),
                Sham.knob("tall", tall, 15, 70),
                Sham.knob("pitch", pitch, 15, 70),
                Sham.knob("slender", slender, 0.5, 2)))
        .containsExactly("side", "tall");
  }

  @Test
  void countsAreLeftOut() {
    Sham sham = new Sham().with(Measure.HEIGHT, v -> v.get(0)).with(Measure.WIDTH, v -> v.get(0));
    assertThat(among(sham, Sham.knob("tall", 40, 20, 60), Sham.stepped("sides", 8, 4, 12, 2)))
        .containsExactly("tall");
  }

  @Test
  void whereNoneAddUpAllAreTaken() {
    // 30 of the height is nobody's dial.
    Sham sham = new Sham().with(Measure.HEIGHT, v -> v.get(0) + 30);
    assertThat(among(sham, Sham.knob("tall", 40, 20, 60), Sham.knob("lean", 3, 1, 9)))
        .containsExactly("tall", "lean");
  }

  /** A tab's depth shows in no measure of the form, and is scaled with the rest. */
  @Test
  void lengthsThatTheFormDoesNotShowGoAlong() {
    Sham sham = new Sham().with(Measure.HEIGHT, v -> v.get(0));
    assertThat(among(sham, Sham.knob("tall", 40, 20, 60), Sham.knob("tab", 8, 5, 12)))
        .containsExactly("tall", "tab");
  }
}
