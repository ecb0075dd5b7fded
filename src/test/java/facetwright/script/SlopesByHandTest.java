package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.aim.Knob;
import facetwright.aim.Measure;
import facetwright.aim.Slope;
import facetwright.aim.Slopes;
import facetwright.fold.pose.Measures;
import facetwright.script.sandbox.Budget;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a dial is said to do is what it does when it is turned and the design made anew. */
class SlopesByHandTest {
  private static final Budget PATIENT =
      new Budget(Duration.ofSeconds(8), Duration.ofSeconds(60), Budget.USUAL.bytes());

  @ParameterizedTest
  @ValueSource(
      strings = {"harbour-lantern", "sand-pot", "gull-bauble", "supper-tray", "twisted-tower"})
  void slopesAgreeWithTurningTheDials(String name) throws Exception {
    String script = LibraryDesigns.text(name).replaceAll("aim\\(.*", "");
    Slopes slopes = WhatIf.of(name, script, Map.of(), PATIENT).slopes();
    int compared = 0;
    for (Slopes.OfKnob of : slopes.all()) {
      Knob knob = of.knob();
      double h = knob.range() / 200;
      if (knob.isStepped() || knob.now() + h > knob.to() || knob.now() - h < knob.from()) {
        continue;
      }
      Measures above = made(name, script, knob, knob.now() + h);
      Measures below = made(name, script, knob, knob.now() - h);
      for (Measure m : List.of(Measure.HEIGHT, Measure.WIDTH, Measure.DEPTH)) {
        Slope slope = of.of(m).orElseThrow();
        double byHand = (of(m, above) - of(m, below)) / (2 * h);
        if (slope.isSteady()) {
          assertThat(slope.value())
              .as("%s of %s", m, knob.name())
              .isCloseTo(byHand, within(1e-3 * Math.max(1, Math.abs(slope.value()))));
        }
      }
      compared++;
    }
    assertThat(compared).isPositive();
  }

  /** By whole steps, and where the script aims: it turns its own dials after each by hand. */
  @ParameterizedTest
  @ValueSource(strings = {"harbour-lantern", "sand-pot", "cut-gem", "twisted-tower"})
  void aStepIsWhatOneStepUpDoes(String name) throws Exception {
    String script = LibraryDesigns.text(name);
    Slopes slopes = WhatIf.of(name, script, Map.of(), PATIENT).slopes();
    Measures now = made(name, script, Map.of());
    int compared = 0;
    for (Slopes.OfKnob of : slopes.all()) {
      Knob knob = of.knob();
      if (knob.isStepped() && knob.now() + knob.step() <= knob.to()) {
        Measures above = made(name, script, knob, knob.now() + knob.step());
        for (Measure m : List.of(Measure.HEIGHT, Measure.WIDTH, Measure.DEPTH)) {
          assertThat(of.of(m).orElseThrow().value())
              .as("%s of %s", m, knob.name())
              .isCloseTo(of(m, above) - of(m, now), within(1e-6));
        }
        compared++;
      }
    }
    assertThat(compared).isPositive();
  }

  private static double of(Measure measure, Measures made) {
    return switch (measure) {
      case HEIGHT -> made.height();
      case WIDTH -> made.width();
      default -> made.depth();
    };
  }

  private static Measures made(String name, String script, Knob knob, double value)
      throws Exception {
    return made(name, script, Map.of(knob.name(), Double.toString(value)));
  }

  private static Measures made(String name, String script, Map<String, String> set)
      throws Exception {
    return Facetwright.evaluate(name, script, set, PATIENT).folded().measures();
  }
}
