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
import java.util.List;
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
    return evaluate("design('Stands', { units: 'mm' });\n" + script);
  }

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("stands.js", script, Map.of(), Budget.USUAL);
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

  /** A tray drawn on a blank lies as it is drawn; a wrap's first column faces the reader. */
  @Property(tries = 15, seed = "20261209")
  void blanksAndWrapsStandAsTheyAreDrawn(
      @ForAll @DoubleRange(min = 20, max = 60) double wide,
      @ForAll @DoubleRange(min = 20, max = 60) double deep,
      @ForAll @DoubleRange(min = 8, max = 15) double high)
      throws ScriptException {
    String given = String.format(Locale.ROOT, "const w = %f, d = %f, h = %f;%n", wide, deep, high);
    measures(
        design(
            given
                + """
                const tray = blank({ width: w + 2 * h, height: d + 2 * h });
                tray.score({ from: "left", at: h, fold: 90, sense: "valley" });
                tray.score({ from: "right", at: h, fold: 90, sense: "valley" });
                tray.score({ from: "bottom", at: h, fold: 90, sense: "valley" });
                tray.score({ from: "top", at: h, fold: 90, sense: "valley" });
                for (const at of [[1, 1], [w + 2 * h - 1, 1], [1, d + 2 * h - 1], [w + 2 * h - 1, d + 2 * h - 1]])
                  tray.waste(at);
                tray.standOn([h + 1, h + 1]);
                """),
        wide,
        deep,
        high);
    for (String floor : List.of("", ".floor({ tab: 4 })", ".floor({ tab: 4, column: 2 })")) {
      measures(
          design(given + "wrap({ widths: [w, d, w, d], rows: [h], seam: 5 })" + floor + ";"),
          wide,
          deep,
          high);
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

  private static void measures(Design design, double width, double depth, double height) {
    Measures made = design.folded().measures();
    assertThat(made.width()).isCloseTo(width, within(1e-3));
    assertThat(made.depth()).isCloseTo(depth, within(1e-3));
    assertThat(made.height()).isCloseTo(height, within(1e-3));
  }

  /**
   * A tray in its sleeve and a box under its lid are as wide, deep and high as they are said to be,
   * whichever way is longer, whichever is put to the other, whatever they stand on.
   */
  @Property(tries = 20, seed = "20261208")
  void whatIsPutTogetherStandsAsItIsSaid(
      @ForAll @DoubleRange(min = 60, max = 90) double long1,
      @ForAll @DoubleRange(min = 30, max = 50) double short1,
      @ForAll @DoubleRange(min = 12, max = 22) double high,
      @ForAll boolean isDeep,
      @ForAll boolean inches)
      throws ScriptException {
    double wide = isDeep ? short1 : long1;
    double deep = isDeep ? long1 : short1;
    double unit = inches ? 25.4 : 1;
    String box =
        String.format(
            Locale.ROOT,
            """
            const w = %f, d = %f, h = %f, more = %f;
            const tray = box({ width: w, depth: d, height: h }).open("top").unfold({ part: "tray" });
            const through = () =>
              wrap({ widths: [w + more, h + more, w + more, h + more], rows: [d], seam: 10 * more }).part("sleeve");
            const across = () =>
              wrap({ widths: [d + more, h + more, d + more, h + more], rows: [w], seam: 10 * more }).part("sleeve");
            const lid = () => box({ width: w + more, depth: d + more, height: h / 2 })
              .open("top").unfold({ part: "lid" });
            const foot = () => box({ width: 2 * w, depth: 2 * d, height: h }).unfold({ part: "foot" });
            """,
            wide / unit,
            deep / unit,
            high / unit,
            1 / unit);
    String head = "design('Stands', { units: '" + (inches ? "in" : "mm") + "' });\n";
    for (String through : List.of("tray.into(through());", "through().over(tray);")) {
      measures(evaluate(head + box + through), wide + 1, deep, high + 1);
    }
    for (String across : List.of("tray.into(across());", "across().over(tray);")) {
      measures(evaluate(head + box + across), wide, deep + 1, high + 1);
    }
    measures(evaluate(head + box + "lid().over(tray);"), wide + 1, deep + 1, high);
    measures(evaluate(head + box + "tray.into(lid());"), wide + 1, deep + 1, high);
    measures(evaluate(head + box + "tray.on(foot());"), 2 * wide, 2 * deep, 2 * high);
    measures(
        evaluate(head + box + "lid().over(tray); tray.on(foot());"), 2 * wide, 2 * deep, 2 * high);
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
