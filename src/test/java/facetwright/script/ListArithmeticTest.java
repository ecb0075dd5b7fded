package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.IntToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Numbers reckoned in a list, the same list again and again: each time they come out as the same
 * reckoned outside of a list, and as Java reckons them.
 *
 * <p>Both languages reckon by IEEE 754 binary64: ECMA-262, 6.1.6.1, and the Java Language
 * Specification, 15.17 and 15.18, whose {@code %} is the same truncated remainder.
 */
class ListArithmeticTest {
  private static final int RUNS = 5;

  private static final String NAMES =
      """
      design("Sums");
      const W = 160, D = 2.5;
      let w = 30;
      const o = { a: 160, b: 25.5 };
      const l = [7, 25];
      const d = dial("d", 40, { from: 10, to: 90, step: 1 });
      function half(x) { return x / 2; }
      panel("card", { width: 30, height: 30 });
      """;

  /**
   * A sum as a script writes it, of the names in {@link #NAMES}, of the number i of the run, and of
   * v, which is whole in every second run only.
   *
   * @param value what it comes to in a run
   */
  record Sum(String text, IntToDoubleFunction value) {
    static Sum of(String text, double value) {
      return new Sum(text, _ -> value);
    }

    static Sum of(String format, Sum a, Sum b, DoubleBinaryOperator value) {
      return new Sum(
          format.formatted(a.text, b.text),
          i -> value.applyAsDouble(a.value.applyAsDouble(i), b.value.applyAsDouble(i)));
    }

    @Override
    public String toString() {
      return text;
    }
  }

  @Provide
  Arbitrary<List<Sum>> items() {
    return Arbitraries.recursive(ListArithmeticTest::terms, ListArithmeticTest::sums, 0, 3)
        .list()
        .ofMinSize(1)
        .ofMaxSize(12);
  }

  private static Arbitrary<Sum> terms() {
    return Arbitraries.of(
        Sum.of("W", 160),
        Sum.of("D", 2.5),
        Sum.of("w", 30),
        Sum.of("o.a", 160),
        Sum.of("o['b']", 25.5),
        Sum.of("l[0]", 7),
        Sum.of("l.length", 2),
        Sum.of("d", 40),
        Sum.of("5", 5),
        Sum.of("0", 0),
        Sum.of("2147483647", 2147483647),
        Sum.of("1.5", 1.5),
        new Sum("i", i -> i),
        new Sum("v", i -> i % 2 == 0 ? 12 : 4.75));
  }

  private static Arbitrary<Sum> sums(Arbitrary<Sum> parts) {
    return Combinators.combine(parts, parts, Arbitraries.integers().between(0, 12))
        .as(
            (a, b, which) ->
                switch (which) {
                  case 0 -> Sum.of("(%s + %s)", a, b, (x, y) -> x + y);
                  case 1, 2 -> Sum.of("(%s - %s)", a, b, (x, y) -> x - y);
                  case 3, 4 -> Sum.of("(%s * %s)", a, b, (x, y) -> x * y);
                  case 5, 6 -> Sum.of("(%s / %s)", a, b, (x, y) -> x / y);
                  case 7 -> Sum.of("(%s %% %s)", a, b, (x, y) -> x % y);
                  case 8 -> Sum.of("[-%s, %s][0]", a, b, (x, _) -> -x);
                  case 9 -> Sum.of("(%1$s < %2$s ? %1$s : %2$s)", a, b, (x, y) -> x < y ? x : y);
                  case 10 -> Sum.of("Math.max(...[%s, %s])", a, b, Math::max);
                  case 11 -> Sum.of("half(%s, %s)", a, b, (x, _) -> x / 2);
                  default -> Sum.of("{ a: [%s, %s] }.a[1]", a, b, (_, y) -> y);
                });
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void comesOutAsJavaReckons(@ForAll("items") List<Sum> items) throws Exception {
    String list = items.toString();
    List<String> said =
        said(
            """
            for (let i = 0; i < %d; i++) {
              const v = i %% 2 ? 4.75 : 12;
              say(%s.join(" "));
            }
            """
                .formatted(RUNS, list));
    assertThat(said).hasSize(RUNS);
    for (int i = 0; i < RUNS; i++) {
      int run = i;
      assertThat(Arrays.stream(said.get(i).split(" ")).mapToDouble(Double::parseDouble))
          .as(list + ", run " + i)
          .usingElementComparator((a, b) -> Double.compare(a + 0.0, b + 0.0))
          .containsExactlyElementsOf(
              items.stream().map(sum -> sum.value.applyAsDouble(run)).toList());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "for (const i of [1, 2, 3, 4]) { const list = [SUM, 1.5]; tell(list[0], SUM); }",
        "for (const i of [1, 2, 3, 4]) { const list = [0.5, SUM, 1.5,]; tell(list[1], SUM); }",
        "const f = () => [SUM, 2.5]; for (const i of [1, 2, 3]) tell(f()[0], SUM);",
        "const f = (a = [SUM, 2.5]) => a; for (const i of [1, 2, 3]) tell(f()[0], SUM);",
        "const f = ([a, b] = [SUM, 2.5]) => a; for (const i of [1, 2, 3]) tell(f(), SUM);",
        "const f = (...all) => all; for (const i of [1, 2, 3]) tell(f(...[1.5, SUM])[1], SUM);",
        "function* g() { while (true) yield [SUM, 2.5]; } let n = 0;"
            + " for (const [a] of g()) { tell(a, SUM); if (++n === 4) break; }",
        "class C { at = [SUM, 2.5]; get it() { return [SUM, 1.5]; } }"
            + " for (const i of [1, 2, 3]) { tell(new C().at[0], SUM); tell(new C().it[0], SUM); }",
        "for (const [a] of [1, 2, 3].map((i) => [SUM, i + 0.5])) tell(a, SUM);",
        "let a; for (const i of [1, 2, 3]) { [a = 1] = [SUM, 0.5]; tell(a, SUM); }",
        "for (const i of [1, 2, 3]) { const all = [[SUM, 1.5], [2.5, SUM]];"
            + " tell(all[1][1], SUM); }",
        "for (const i of [1, 2, 3]) { const s = { at: [SUM, 0.25], [[SUM, 1.5][0]]: 1 };"
            + " tell(s.at[0], SUM); tell(s[SUM], 1); }",
        "for (const i of [1, 2, 3]) tell(Math.max(...[SUM, -900.5]), SUM);",
        "for (const i of [1, 2, 3]) tell(`${[SUM, 0.5]}`, SUM + ',0.5');",
        "for (const i of [1, 2, 3]) tell(((t) => t[0])([SUM, 0.5]), SUM);",
        "for (const i of [1, 2, 3]) switch ([SUM, 0.5][0]) { case SUM: tell(1, 1); break;"
            + " default: tell(0, 1); }",
        "for (const i of [1, 2, 3]) try { throw [SUM, 0.5]; } catch ([a]) { tell(a, SUM); }",
        "const f = (n) => n ? [...f(n - 1), [SUM, 0.5][0]] : []; for (const a of f(4))"
            + " tell(a, SUM);",
        "const f = (n) => n ? [SUM, f(n - 1), 0.5] : []; tell(f(4).flat(5)[3], SUM);"
            + " tell(f(3)[0], SUM); tell(f(2)[1][0], SUM);",
      })
  void comesOutAsOutsideOfAList(String loop) throws Exception {
    List<String> sums =
        List.of(
            "W / 2",
            "W - 5",
            "W * 3",
            "W + 7",
            "W % 7",
            "-W",
            "5 - W",
            "5 / W",
            "-W + 5",
            "2 * w - W",
            "(W - 5) / 5",
            "Math.max(W / 2, 3)",
            "Math.round(W / 7)",
            "o.a / 2",
            "o['a'] - o.b",
            "l[0] - l[1]",
            "l.length - 1",
            "half(W)",
            "W ? W - 5 : 2",
            "(0, W - 5)",
            "d / 2",
            "d - 5");
    StringBuilder loops = new StringBuilder("const tell = (a, b) => say(a + ' ' + b);\n");
    for (String sum : sums) {
      loops.append("{ ").append(loop.replace("SUM", "(" + sum + ")")).append(" }\n");
    }
    List<String> said = said(loops.toString());
    assertThat(said).hasSizeGreaterThanOrEqualTo(3 * sums.size());
    for (String line : said) {
      List<String> two = List.of(line.split(" "));
      assertThat(two.getFirst()).as(loop + ": " + line).isEqualTo(two.getLast());
    }
  }

  private static List<String> said(String script) throws Exception {
    Design design = Facetwright.evaluate("sums.js", NAMES + script, Map.of(), Budget.USUAL);
    return design.said();
  }
}
