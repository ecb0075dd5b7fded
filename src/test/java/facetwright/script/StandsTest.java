package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Measures;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is made stands as its maker thinks of it: the base down, the front to the reader. */
class StandsTest {
  private static Design design(String script) throws ScriptException {
    return Facetwright.evaluate(
        "stands.js", "design('Stands', { units: 'mm' });\n" + script, Map.of(), Budget.USUAL);
  }

  private static Vec3 facing(Design design, String panel) {
    Net net = design.net();
    for (int p = 0; p < net.panels().size(); p++) {
      if (net.panels().get(p).name().equals(panel)) {
        Motion3 pose = design.folded().whole().get(p);
        return pose.ez();
      }
    }
    throw new AssertionError("no " + panel);
  }

  private static void stands(Design design, String front, String base) {
    assertThat(facing(design, front).distance(new Vec3(0, -1, 0))).isLessThan(1e-6);
    assertThat(facing(design, base).distance(new Vec3(0, 0, -1))).isLessThan(1e-6);
  }

  @Property(tries = 25, seed = "20261204")
  void aBoxStandsAsItIsSaid(
      @ForAll @DoubleRange(min = 15, max = 60) double width,
      @ForAll @DoubleRange(min = 15, max = 60) double depth,
      @ForAll @DoubleRange(min = 15, max = 60) double height)
      throws ScriptException {
    Design design =
        design(
            String.format(
                Locale.ROOT,
                "box({ width: %f, depth: %f, height: %f }).unfold();",
                width,
                depth,
                height));
    Measures made = design.folded().measures();
    assertThat(made.width()).isCloseTo(width, within(1e-3));
    assertThat(made.depth()).isCloseTo(depth, within(1e-3));
    assertThat(made.height()).isCloseTo(height, within(1e-3));
    stands(design, "side 1", "base");
  }

  /** A carton that is begun with its front, its floor hung on later. */
  @Property(tries = 15, seed = "20261205")
  void aCartonStandsOnItsFloor(
      @ForAll @DoubleRange(min = 20, max = 60) double wide,
      @ForAll @DoubleRange(min = 20, max = 60) double deep)
      throws ScriptException {
    for (String called : new String[] {"floor", "base", "bottom"}) {
      Design design =
          design(
              String.format(
                  Locale.ROOT,
                  """
                  const front = panel("front", { width: %1$f, height: 50 });
                  const right = front.attach("right", "right", { depth: %2$f, fold: 90 });
                  right.attach("top", "back", { depth: %1$f, fold: 90 });
                  front.attach("bottom", "%3$s", { depth: %2$f, fold: 90 });
                  """,
                  wide,
                  deep,
                  called));
      stands(design, "front", called);
      Measures made = design.folded().measures();
      assertThat(made.width()).isCloseTo(wide, within(1e-3));
      assertThat(made.depth()).isCloseTo(deep, within(1e-3));
      assertThat(made.height()).isCloseTo(50, within(1e-3));
    }
  }

  /** An outline is a plan: what is drawn across lies across, whichever way is longer. */
  @ParameterizedTest
  @ValueSource(doubles = {30, 70, 120})
  void anOutlineLiesAsItIsDrawn(double long1) throws ScriptException {
    Design design =
        design(
            String.format(
                Locale.ROOT,
                "prism({ outline: outline([[0, 0], [60, 0], [60, 10], [20, 10], [20, %1$.1f],"
                    + " [60, %1$.1f], [60, %2$.1f], [0, %2$.1f]]), height: 25 }).unfold();",
                long1,
                long1 + 10));
    Measures made = design.folded().measures();
    assertThat(made.width()).isCloseTo(60, within(1e-3));
    assertThat(made.depth()).isCloseTo(long1 + 10, within(1e-3));
    assertThat(facing(design, "base").z()).isCloseTo(-1, within(1e-6));
  }

  /** Each part stands by itself, however others lie in the net. */
  @Test
  void partsStandEachByItself() throws ScriptException {
    Design design =
        design(
            """
            box({ width: 30, depth: 50, height: 20 }).unfold({ part: "one" });
            box({ width: 40, depth: 25, height: 60 }).unfold({ part: "two" });
            """);
    stands(design, "one side 1", "one base");
    assertThat(facing(design, "two base").distance(new Vec3(0, 0, -1))).isLessThan(1e-6);
  }
}
