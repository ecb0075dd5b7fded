package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole numbers reckoned with in a list beside numbers that are not whole, again and again: each
 * time comes out as the first, and as the same reckoned outside of a list.
 *
 * <p>It does not look at sums such as {@code 5 - W}, whose written number the engine still takes
 * for 0 in such lists from the second time on.
 */
class ListArithmeticTest {
  private static final List<String> SUMS =
      List.of(
          "W / 2",
          "W - 5",
          "W * 3",
          "W + 7",
          "W % 7",
          "-W",
          "W / -2",
          "W - w",
          "W / w",
          "W * w",
          "Math.max(W / 2, 3)",
          "Math.round(W / 7)",
          "o.a / 2",
          "o.a - o.b",
          "o['a'] * 2",
          "l[0] / 2",
          "l[0] - l[1]",
          "half(W)",
          "(W - 5) / 5",
          "W ? W - 5 : 2",
          "d / 2",
          "d - 5");

  private static final String NAMES =
      """
      const W = 160, w = 20;
      const o = { a: 160, b: 25 };
      const l = [160, 25];
      const d = dial("d", 40, { from: 10, to: 90, step: 1 });
      function half(x) { return x / 2; }
      """;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "for (let i = 0; i < 4; i++) { const list = [SUM, 1.5]; tell(list[0], SUM); }",
        "for (let i = 0; i < 4; i++) { const list = [0.5, SUM, 1.5]; tell(list[1], SUM); }",
        "const f = () => [SUM, 2.5]; for (const i of [1, 2, 3]) tell(f()[0], SUM);",
        "for (const [a] of [1, 2, 3].map((i) => [SUM, i + 0.5])) tell(a, SUM);",
        "for (let i = 0; i < 4; i++) { const all = [[SUM, 1.5], [2.5, SUM]]; tell(all[1][1], SUM);"
            + " }",
        "for (let i = 0; i < 4; i++) { const s = { at: [SUM, 0.25] }; tell(s.at[0], SUM); }",
        "for (let i = 0; i < 4; i++) tell(Math.max(...[SUM, -900.5]), SUM);",
      })
  void comesOutRight(String loop) throws Exception {
    StringBuilder script = new StringBuilder("design(\"Sums\");\n" + NAMES);
    script.append("const tell = (one, two) => say(one + \" \" + two);\n");
    for (String sum : SUMS) {
      script.append("{ ").append(loop.replace("SUM", sum)).append(" }\n");
    }
    script.append("panel(\"card\", { width: 30, height: 30 });\n");
    Design design = Facetwright.evaluate("sums.js", script.toString(), Map.of(), Budget.USUAL);
    assertThat(design.said()).hasSizeGreaterThanOrEqualTo(3 * SUMS.size());
    for (String line : design.said()) {
      List<String> two = Arrays.asList(line.split(" "));
      assertThat(two.getFirst()).as(loop + ": " + line).isEqualTo(two.getLast());
    }
  }
}
