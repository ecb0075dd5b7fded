package facetwright.script.sandbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a script must not reach, and what must not last from one run to the next. */
class EscapeTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Java.type('java.lang.System')",
        "Packages.java.lang.System.exit(1)",
        "java.lang.System.exit(1)",
        "Polyglot.eval('js', '1')",
        "Graal.versionGraalVM",
        "load('/etc/passwd')",
        "load({ name: 'x', script: '1' })",
        "import('/etc/passwd')",
        "import('data:text/javascript,Java.type(1)')",
        "require('fs')",
        "process.exit()",
        "eval('1')",
        "(0, globalThis.eval)('1')",
        "Function('return this')()",
        "(() => {}).constructor('return this')()",
        "[].constructor.constructor('return this')()",
        "say.constructor('return this')()",
        "Reflect.construct(Function, ['return this'])()",
        "Object.getPrototypeOf(function* () {}).constructor('yield 1')",
        "Object.getPrototypeOf(async () => {}).constructor('1')",
        "say.getClass()",
        "say.class.forName('java.lang.Runtime')",
        "columns.apply.constructor('return this')()",
        "Reflect.get(say, 'getClass').call(say)",
        "new Worker('x')",
        "setTimeout(() => {}, 1)",
        "fetch('http://localhost')",
        "new Date()",
        "performance.now()",
        "new Intl.DateTimeFormat().format()",
        "new SharedArrayBuffer(8)",
        "Atomics.load",
        "new WeakRef({})",
        "new FinalizationRegistry(() => {})",
        "new Proxy([], {})",
        "BigInt(1)",
        "Math.random = () => 4",
      })
  void isOutOfReach(String source) {
    ScriptException e = FaultsTest.fault(source);
    assertThat(e).as(source).isNotNull();
    assertThat(e.kind()).isIn(ScriptException.Kind.UNKNOWN_NAME, ScriptException.Kind.THROWN);
  }

  @Test
  void theGlobalNamesAreThese() throws ScriptException {
    String names =
        Probe.run("say(Object.getOwnPropertyNames(globalThis).sort().join(' '))").getFirst();
    assertThat(List.of(names.split(" ")))
        .contains("Math", "Array", "JSON", "say")
        .doesNotContain(
            "Java",
            "Packages",
            "Polyglot",
            "Graal",
            "load",
            "print",
            "console",
            "Date",
            "Intl",
            "eval",
            "Atomics",
            "WeakRef",
            "Proxy",
            "java",
            "quit");
  }

  @Test
  void nothingLastsFromOneRunToTheNext() throws ScriptException {
    assertThat(
            Probe.run(
                """
                Object.prototype.kept = 1;
                Array.prototype.map = () => 'spoiled';
                globalThis.mine = 2;
                say('done');
                """))
        .containsExactly("done");
    assertThat(Probe.run("say({}.kept); say([1].map((x) => x + 1)[0]); say(typeof mine);"))
        .containsExactly("undefined", "2", "undefined");
  }

  @Test
  void chanceIsTheSameInEveryRun() throws ScriptException {
    String source = "for (let i = 0; i < 5; i++) say(Math.random());";
    List<String> first = Probe.run(source);
    assertThat(first).doesNotHaveDuplicates().hasSize(5).isEqualTo(Probe.run(source));
    assertThat(first).allSatisfy(x -> assertThat(Double.parseDouble(x)).isBetween(0.0, 1.0));
  }

  @Test
  void whatAScriptCanFindOutIsTheSameInEveryRun() throws ScriptException {
    String source =
        """
        say(String(say));
        say(say.name);
        try { columns(1); } catch (e) { say(String(e)); say(e.stack); say(e.fix); }
        try { broken.x.y; } catch (e) { say(e.message); }
        try { say.rowz(); } catch (e) { say(e.message); }
        say((1234.5).toLocaleString());
        """;
    List<String> first = Probe.run(source);
    assertThat(first).isEqualTo(Probe.run(source));
    assertThat(first.toString()).doesNotContain("facetwright", "java.", "Lambda");
  }

  @Test
  void aScriptThatCatchesACallsErrorMayGoOn() throws ScriptException {
    assertThat(
            Probe.run(
                """
                try {
                  columns(2);
                } catch (e) {
                  say(e instanceof Error);
                  say(e.message);
                }
                """))
        .containsExactly("true", "columns must be 3 or more");
  }

  @Test
  void theBoundedBuiltInsStillDoTheirWork() throws ScriptException {
    assertThat(
            Probe.run(
                """
                say([3, 1, 2].sort().map((x) => x * 2).join());
                say(Array.from({ length: 3 }, (_, i) => i).join());
                say(Array.from(new Set([1, 1, 2])).length);
                say([1, [2, [3]]].flat(Infinity).join());
                say([1].concat([2, 3], 4).join());
                say('A-b'.toLowerCase().replace('-', '+').toUpperCase());
                say('a-b-c'.replaceAll('-', '$&$&'));
                say('a1b2'.replace(/\\d/g, (d) => d * 2));
                say('a,b'.split(',').length);
                say(String.raw`a\\n${1}`);
                say(Math.max.apply(null, [1, 3, 2]));
                say([] instanceof Array && Array.isArray(new Array(3)) && [].constructor === Array);
                say((function () { return Array.prototype.slice.call(arguments, 1).join(); })(1, 2, 3));
                """))
        .containsExactly(
            "2,4,6", "0,1,2", "2", "1,2,3", "1,2,3,4", "A+B", "a--b--c", "a2b4", "2", "a\\n1", "3",
            "true", "2,3");
  }
}
