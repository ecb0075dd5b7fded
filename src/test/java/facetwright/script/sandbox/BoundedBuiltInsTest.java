package facetwright.script.sandbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.graalvm.polyglot.Context;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Built-in functions that are bounded are otherwise what the engine gives (ECMA-262, sections
 * 22.1.3 and 23.1.3): called so, taking as many, as little listed, and giving the same.
 */
class BoundedBuiltInsTest {
  @ParameterizedTest
  @ValueSource(strings = {"Array.prototype", "String.prototype", "Array", "String"})
  void areCalledAndTakeWhatTheEnginesDo(String owner) throws ScriptException {
    String each =
        "Object.getOwnPropertyNames(%1$s).filter((n) => typeof %1$s[n] === 'function' && n !=="
            + " 'constructor' && n !== 'fromAsync').map((n) => [n, %1$s[n].name, %1$s[n].length,"
            + " Object.getOwnPropertyDescriptor(%1$s, n).enumerable].join(' ')).sort().join('; ')";
    assertThat(bounded(each.formatted(owner))).isEqualTo(plain(each.formatted(owner)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[3, 1, 2].sort()",
        "[3, 1, 2].sort((a, b) => b - a)",
        "[3, 1, 2].toSorted()",
        "[1, 2, 3].reverse()",
        "[1, 2, 3].toReversed()",
        "[1, 2, 3].slice(-2)",
        "[1, 2].slice()",
        "[1, 2, 3].splice(1, 1, 7, 8)",
        "[1, 2, 3].toSpliced(0, 2)",
        "[1, 2, 3].with(1, 9)",
        "[1, 2, 3].fill(0, 1)",
        "[1, 2, 3].fill()",
        "[1, 2, 3].copyWithin(0, 1)",
        "[1, 2].map((x, i, all) => x + i + all.length)",
        "[1, [2]].flatMap((x) => x)",
        "[1, 2, 3].filter((x) => x > 1)",
        "[1, 2, 3].find((x) => x > 1)",
        "[1, 2].findLast(Number)",
        "[1, 2].findIndex((x) => x > 1)",
        "[1, 2].findLastIndex((x) => x > 5)",
        "[1, 2].every((x) => x > 1)",
        "[1, 2].some((x) => x > 1)",
        "[1, 2].reduce((a, b) => a + b)",
        "[1, 2].reduce((a, b) => a + b, 'x')",
        "[1, 2].reduceRight((a, b) => a + b, 'x')",
        "[1, 2, 1].indexOf(1, 1)",
        "[1, 2, 1].lastIndexOf(1)",
        "[1, 2, 1].lastIndexOf(1, -2)",
        "[undefined].includes()",
        "[NaN].includes(NaN)",
        "[1, 2].join()",
        "[1, 2].join('-')",
        "[1, 2].toString()",
        "[1, 2].shift()",
        "[].shift()",
        "[1].unshift(5, 6)",
        "'aBc'.toUpperCase()",
        "'aBc'.toLowerCase()",
        "'e\\u0301'.normalize()",
        "'e\\u0301'.normalize('NFD').length",
        "'abcabc'.indexOf('c', 3)",
        "'abc'.indexOf()",
        "'abcabc'.lastIndexOf('b')",
        "'abc'.includes('b', 2)",
        "'a,b,c'.split(',', 2)",
        "'abc'.split()",
        "'abc'.split('')",
        "'aba'.replace('a', '$&x')",
        "'aba'.replaceAll('a', 'x')",
        "'aba'.replace(/a/g, (m, at) => m + at)",
        "'a'.localeCompare('b') < 0"
      })
  void giveWhatTheEnginesDo(String expression) throws ScriptException {
    String told = "JSON.stringify(%s) ?? 'nothing'".formatted(expression);
    assertThat(bounded(told)).isEqualTo(plain(told));
  }

  @Test
  void functionsOfTheHostAreCalledByTheirNames() throws ScriptException {
    assertThat(bounded("[say.name, say.length, columns.name, typeof columns].join(' ')"))
        .isEqualTo("say 0 columns function");
  }

  private static String bounded(String expression) throws ScriptException {
    List<String> said = Probe.run("say(" + expression + ");");
    return said.getFirst();
  }

  private static String plain(String expression) {
    try (Context context =
        Context.newBuilder("js")
            .option("engine.WarnInterpreterOnly", "false")
            .allowExperimentalOptions(true)
            .option("js.intl-402", "false")
            .build()) {
      return context.eval("js", expression).asString();
    }
  }
}
