package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.aim.Knob;
import facetwright.aim.Measure;
import facetwright.aim.Slope;
import facetwright.aim.Slopes;
import facetwright.script.sandbox.Budget;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a dial is said to do is what it does when it is turned and the design made anew. */
class SlopesByHandTest {
  private static final Budget PATIENT =
      new Budget(Duration.ofSeconds(8), Duration.ofSeconds(60), Budget.USUAL.bytes());

  @ParameterizedTest
  @ValueSource(strings = {"harbour-lantern", "sand-pot", "gull-bauble", "supper-tray"})
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
      double above = height(name, script, knob, knob.now() + h);
      double below = height(name, script, knob, knob.now() - h);
      Slope slope = of.of(Measure.HEIGHT).orElseThrow();
      assertThat(slope.value())
          .as(knob.name())
          .isCloseTo(
              (above - below) / (2 * h), within(1e-3 * Math.max(1, Math.abs(slope.value()))));
      compared++;
    }
    assertThat(compared).isPositive();
  }

  private static double height(String name, String script, Knob knob, double value)
      throws Exception {
    Map<String, String> set = Map.of(knob.name(), Double.toString(value));
    return Facetwright.evaluate(name, script, set, PATIENT).folded().measures().height();
  }
}
