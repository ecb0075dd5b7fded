package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.aim.Knob;
import facetwright.aim.KnobMend;
import facetwright.aim.Measure;
import facetwright.aim.Outcome;
import facetwright.aim.Slope;
import facetwright.aim.Slopes;
import facetwright.fold.pose.Closure;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Slopes, aims and mends of real scripts. */
class WhatIfTest {
  private static final String PRISM =
      """
      design("Drum");
      const side = dial("side", 30, { from: 15, to: 45 });
      const tall = dial("tall", 50, { from: 20, to: 90 });
      %s
      prism({ sides: 6, side, height: tall }).unfold();
      sheet("A2");
      """;

  private static final String LOOSE =
      """
      design("Card tent");
      const floor = dial("floor", 75, { from: 60, to: 90, step: 5 });
      const lean = dial("lean", 120, { from: 100, to: 140 });
      const front = panel("front", { width: 60, height: 80 });
      const back = front.attach("top", "back", { depth: 80, fold: lean });
      const under = back.attach("top", "floor", { depth: floor, fold: 120 });
      under.join("top", front, "bottom", { depth: 10 });
      sheet("A4");
      """;

  private static WhatIf whatIf(String script) throws ScriptException {
    return WhatIf.of("drum.js", script, Map.of(), Budget.USUAL);
  }

  private static Design evaluate(String script, Map<String, String> settings)
      throws ScriptException {
    return Facetwright.evaluate("drum.js", script, settings, Budget.USUAL);
  }

  private static Slope slope(Slopes slopes, String dial, Measure measure) {
    return slopes.all().stream()
        .filter(s -> s.knob().name().equals(dial))
        .findFirst()
        .orElseThrow()
        .of(measure)
        .orElseThrow();
  }

  /**
   * The lantern of n columns, width w, wall h stands H = 2·√(h² − (a − b)²) tall, with the apothems
   * a = w/(2·tan(π/n)) of the waist and b = w/(2·tan(2π/n)) of the rim. With d = a − b, which goes
   * in proportion to w: ∂H/∂h = 2h/√(h² − d²), ∂H/∂w = −2·(d²/w)/√(h² − d²). Derived here.
   */
  @Test
  void theLanternsHeightHasItsDerivatives() throws Exception {
    String script = LibraryDesigns.text("harbour-lantern");
    Slopes slopes = whatIf(script).slopes();
    double n = 8;
    double w = 28;
    double h = 60;
    double d = w / (2 * Math.tan(Math.PI / n)) - w / (2 * Math.tan(2 * Math.PI / n));
    double root = Math.sqrt(h * h - d * d);
    Slope byWall = slope(slopes, "wall", Measure.HEIGHT);
    assertThat(byWall.value()).isCloseTo(2 * h / root, within(1e-6));
    assertThat(byWall.error()).isLessThan(1e-3);
    assertThat(slope(slopes, "side", Measure.HEIGHT).value())
        .isCloseTo(-2 * d * d / w / root, within(1e-6));
    assertThat(slopes.now().get(Measure.HEIGHT)).isCloseTo(2 * root, within(1e-6));
    assertThat(slopes.trials()).isLessThanOrEqualTo(4 * 3);
  }

  /** V = n/4·cot(π/n)·s²·h for a prism, a third of it for a pyramid (Cundy and Rollett 1961). */
  @Test
  void volumesHaveTheirDerivatives() throws Exception {
    double base = 6 / 4.0 / Math.tan(Math.PI / 6);
    Slopes prism = whatIf(PRISM.formatted("")).slopes();
    assertThat(slope(prism, "side", Measure.VOLUME).value())
        .isCloseTo(2 * base * 30 * 50, within(1e-3));
    assertThat(slope(prism, "tall", Measure.VOLUME).value())
        .isCloseTo(base * 30 * 30, within(1e-3));
    Slopes pyramid = whatIf(PRISM.formatted("").replace("prism(", "pyramid(")).slopes();
    assertThat(slope(pyramid, "side", Measure.VOLUME).value())
        .isCloseTo(2 * base * 30 * 50 / 3, within(1e-3));
  }

  /** Any volume between those of the ends; the answer is made again and measured. */
  @Property(tries = 6, seed = "20261125")
  void answersHoldWhenMadeAgain(@ForAll @DoubleRange(min = 30_000, max = 350_000) double volume)
      throws Exception {
    String script = PRISM.formatted("");
    WhatIf what = whatIf(script);
    Goal.Reach goal = new Goal.Reach(Measure.VOLUME, volume);
    Outcome outcome = what.aim(List.of(goal), List.of(), Grid.usual(Unit.MM));
    assertThat(outcome.isMet()).isTrue();
    Design again = evaluate(script, what.settings(outcome));
    assertThat(again.folded().measures().volume() - volume)
        .isCloseTo(outcome.miss(goal), within(1e-6 * volume));
    for (Dial dial : again.dials()) {
      assertThat(2 * dial.value()).isEqualTo(Math.rint(2 * dial.value()));
    }
    // Half a millimetre in 15 or more, twice for the side: off by less than a tenth.
    assertThat(Math.abs(outcome.miss(goal))).isLessThan(0.1 * volume);
  }

  @Test
  void fitsTheSheetOfTheLayout() throws Exception {
    String script = PRISM.formatted("");
    WhatIf what = whatIf(script);
    Outcome outcome =
        what.aim(List.of(GoalReader.read("fits=A5", Unit.MM)), List.of(), Grid.usual(Unit.MM));
    assertThat(outcome.isMet()).isTrue();
    Map<String, String> settings = what.settings(outcome);
    String small = script.replace("A2", "A5");
    assertThat(liesWithRoom(evaluate(small, settings))).isTrue();
    Map<String, String> larger =
        Map.of(
            "side", Double.toString(Double.parseDouble(settings.get("side")) + 1),
            "tall", Double.toString(Double.parseDouble(settings.get("tall")) + 1.5));
    assertThat(liesWithRoom(evaluate(small, larger))).isFalse();
  }

  /** What is asked to fit a sheet keeps the usual room there. */
  private static boolean liesWithRoom(Design design) {
    return design.laid().fits() && design.laid().kept().equals(design.laid().wanted());
  }

  /** A pitch and a twist are angles: not scaled, whether or not anybody says so. */
  @Test
  void onlyLengthsAreScaled() throws Exception {
    for (String[] design :
        new String[][] {
          {"boathouse", "long wide wall"},
          {"twisted-tower", "radius tall"},
          {"harbour-lantern", "side wall"},
          {"hex-favour-box", "side tall lip slip"}
        }) {
      WhatIf what = whatIf(LibraryDesigns.text(design[0]));
      WhatIf.Choice choice =
          what.choose(List.of(GoalReader.read("fits=A4", Unit.MM)), List.of(), Set.of());
      assertThat(choice.knobs().stream().map(Knob::name))
          .as(design[0])
          .containsExactly(design[1].split(" "));
    }
  }

  @Test
  void unknownDialsAreNamed() throws Exception {
    WhatIf what = whatIf(PRISM.formatted(""));
    List<Goal> goals = List.of(GoalReader.read("height=60", Unit.MM));
    assertThatThrownBy(() -> what.aim(goals, List.of("tal"), Grid.none()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Did you mean \"tall\"?");
    WhatIf fixed = whatIf("design('Cube'); prism({ sides: 4, side: 30, height: 30 }).unfold();");
    assertThatThrownBy(() -> fixed.aim(goals, List.of(), Grid.none()))
        .hasMessageContaining("no dials");
  }

  /**
   * Two sides of 80 and outer angles of 120 make a triangle of equal sides, so that the floor must
   * be 80 too; of the steps beside 75 the upper one is.
   */
  @Test
  void theTurnThatClosesIsNamed() throws Exception {
    WhatIf what = whatIf(LOOSE);
    assertThat(what.design().folded().closure()).isEqualTo(Closure.OPEN);
    KnobMend mend = what.mend().orElseThrow();
    assertThat(mend.text(Unit.MM))
        .isEqualTo("Turn floor from 75 to 80: the gap goes from 5 mm to 0 mm.");
    Design closed = evaluate(LOOSE, Map.of(mend.knob().name(), mend.typed()));
    assertThat(closed.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(whatIf(LOOSE.replace("75,", "80,")).mend()).isEmpty();
  }

  /** The floor at 80, only the lean is off: its slope leads there. */
  @Test
  void aSmoothDialIsTurnedAlongItsSlope() throws Exception {
    KnobMend mend =
        whatIf(LOOSE.replace("75,", "80,").replace("120, { from", "124.25, { from"))
            .mend()
            .orElseThrow();
    assertThat(mend.knob().name()).isEqualTo("lean");
    assertThat(mend.value()).isEqualTo(120);
    assertThat(mend.then().get(Measure.GAP)).isLessThan(1e-6);
  }

  @Test
  void anEvenNumberOfColumnsIsFound() throws Exception {
    String wrap =
        """
        design("Wrap of seven");
        const columns = dial("columns", 7, { from: 5, to: 12 });
        const body = wrap({ columns, width: 28, rows: [28, 60, 60, 28], seam: 12 });
        body.columns("even").rows("rim").remove();
        body.columns("even").rows("wall").gusset();
        body.columns("odd").rows("rim").tabs();
        sheet("A2");
        """;
    KnobMend mend = whatIf(wrap).mend().orElseThrow();
    assertThat(mend.knob().name()).isEqualTo("columns");
    assertThat(mend.value()).isIn(6.0, 8.0);
    assertThat(evaluate(wrap, Map.of("columns", mend.typed())).folded().closure())
        .isEqualTo(Closure.CLOSES);
  }
}
