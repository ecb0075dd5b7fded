package facetwright.script.scope;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Quantity;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plain number is used as, told from the script's text. */
class DialUseTest {
  private static Map<String, Quantity> used(String... lines) {
    return DialUse.of(
        "const x = dial(\"x\", 30, { from: 10, to: 60 });\n" + String.join("\n", lines));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prism({ sides: 6, side: 20, height: 50 }).twist(x).unfold();",
        "prism({ sides: 6, side: 20, height: 50 }).twist(90 - 2 * x).unfold();",
        "const half = x / 2; panel('a', { width: 9, height: 9 }).attach('top', 'b', { fold: half"
            + " });",
        "const a = panel('a', { width: 9, height: 9 }); a.attach('top', 'b', { depth: 9, fold: x"
            + " });",
        "const t = Math.tan((x * Math.PI) / 180); box({ width: 9, depth: 9, height: 9 * t"
            + " }).unfold();",
        "const t = Math.tan(x * (Math.PI / 180)); box({ width: 9, depth: 9, height: t }).unfold();",
        "const t = Math.tan(Math.PI * x / 180); box({ width: 9, depth: 9, height: t }).unfold();",
        "const rad = Math.PI / 180; box({ width: 9, depth: 9, height: Math.sin(x * rad)"
            + " }).unfold();",
        "const rad = d => d * Math.PI / 180; const y = Math.cos(rad(x));",
        "function rad(d) { return d * Math.PI / 180; }\nconst r = x / 180 * Math.PI;",
        "const y = 9 * Math.sin((90 - x) * Math.PI / 180); prism({ sides: 4, side: y, height: y })"
            + ".twist(Math.min(x, 40)).unfold();",
      })
  void anAngleIsFoundOut(String use) {
    assertThat(used(use)).containsExactly(Map.entry("x", Quantity.ANGLE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prism({ sides: 6, side: x, height: 50 }).unfold();",
        "prism({ sides: 6, side: 2 * x + 3, height: (x + 4) / 2 }).unfold();",
        "const half = x / 2; prism({ sides: 6, side: half, height: half }).unfold();",
        "const points = [[0, 0], [x, 10], [0, 20]]; turned({ sides: 6, profile: [[0, 0], [x, 9]]"
            + " });",
        "wrap({ columns: 6, width: x, rows: [x, 2 * x, x] });",
        "blank({ width: 99, height: 99 }).score({ from: 'left', at: x - 4, fold: 90 });",
        "const side = x, tall = 20; prism({ sides: 6, side, height: tall }).unfold();",
      })
  void aLengthIsFoundOut(String use) {
    assertThat(used(use)).containsExactly(Map.entry("x", Quantity.LENGTH));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prism({ sides: x, side: 20, height: 50 }).unfold();",
        "const step = 360 / x; prism({ sides: x, side: 200 / x, height: 50 }).unfold();",
        "wrap({ columns: x, width: 240 / x, rows: [20] });",
      })
  void aCountIsFoundOut(String use) {
    assertThat(used(use)).containsExactly(Map.entry("x", Quantity.WHOLE));
  }

  /** What may be anything stays a number: it is not turned into what it may not be. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "const y = x;",
        "box({ width: 50, depth: 50, height: 50 * x }).unfold();",
        "const w = 50; box({ width: w * x, depth: w, height: w }).unfold();",
        "const w = 50; box({ width: w / x, depth: w, height: w }).unfold();",
        "box({ width: x * x, depth: 20, height: 20 }).unfold();",
        "box({ width: Math.sqrt(x), depth: 20, height: 20 }).unfold();",
        "const a = panel('a', { width: x, height: 9 }); a.attach('top', 'b', { depth: 9, fold: x"
            + " });",
        "box({ width: 20, depth: 20, height: 20 }).scale(x).unfold();",
        "for (let i = 0; i < x; i++) say(i);",
        "const f = (x) => panel('a', { width: x, height: x }); f(3);",
        "const g = (n) => n; panel('a', { width: g(x), height: 9 });",
        "panel('a', { width: [3, 4, 5][x], height: 9 });",
        "panel('a', { width: x > 20 ? 9 : 12, height: 9 });",
      })
  void whatMayBeAnythingStaysANumber(String use) {
    assertThat(used(use)).isEmpty();
  }

  /** Half-written scripts are read while one types. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "const x = dial('x', 3); panel(",
        "const x = dial('x', 3); panel('a', { width: x *",
        "const x = dial('x', 3); panel('a', { width: x + ",
        "const x = dial('x'; - x",
        "const x = dial(",
        "x + const x = dial('x', 3) - x * ) ] }",
        "const x = dial('x', 3), y = -x, z = (x",
      })
  void whatIsHalfWrittenIsReadToItsEnd(String script) {
    assertThat(DialUse.of(script)).isNotNull();
    for (int end = 0; end <= script.length(); end++) {
      assertThat(DialUse.of(script.substring(0, end))).isNotNull();
    }
  }

  @Test
  void eachDialIsToldByItself() {
    String script =
        """
        design("House");
        const wide = dial("wide", 46), pitch = dial("pitch", 42, { from: 30, to: 50 });
        const sides = dial("sides", 4, { from: 4, to: 6 });
        const rise = (wide / 2) * Math.tan((pitch * Math.PI) / 180);
        frustum({ sides, side: wide, top: wide / 2, height: rise }).unfold();
        """;
    assertThat(DialUse.of(script))
        .isEqualTo(
            Map.of("wide", Quantity.LENGTH, "pitch", Quantity.ANGLE, "sides", Quantity.WHOLE));
  }
}
