package facetwright.script.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which names are in force at a place: the last made first (ECMA-262, 14.2, 14.3, 15.2, 15.3). */
class NamesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '%',
      quoteCharacter = '~',
      textBlock =
          """
          const a = 1@ |                                     % a
          const a = |                                        %
          const a = 1, b = [2, 3], c@ |                      % c b a
          const { a, b: c, d = 2, ...e } = f@ |              % e d c a
          const [a, [b, { c }]] = d@ |                       % c b a
          { const a = 1@ | }                                 % a
          { const a = 1@ }@ |                                %
          const a = 1@ { const a = 2@ | }                    % a
          for (const a of b) { | }                           % a
          for (const a of b) { }@ |                          %
          for (const [a, b] of c) f(| )                      % b a
          for (let a = 0, b; a < 1; a++) | ;                 % b a
          function f(a, { b }, [c] = 1, ...d) { | }          % d c b a f
          function f(a) { }@ |                               % f
          |@ function f(a) { }                               % f
          f(| ); function f() { }                            % f
          const f = (a, b = 2) => a + |                      % b a
          const f = (a) => { | }                             % a
          const f = (a) => { }@ |                            % f
          list.map((a) => a * 2)@ |                          %
          a => |                                             % a
          try { } catch (e) { | }                            % e
          class A { }@ |                                     % A
          const a = f(@ 1,@ 2)@ |                            % a
          const a = { b: 1,@ |                               % a
          say("const a = 1;"); // const b = 2@ |             %
          """)
  void areInForce(String marked, String names) {
    String script = marked.replace('@', '\n');
    Names made = Names.of(Reading.of(script.replace("|", "")));
    assertThat(String.join(" ", made.before(script.indexOf('|')).stream().map(Name::word).toList()))
        .isEqualTo(names == null ? "" : names);
  }

  @org.junit.jupiter.api.Test
  void theInnermostOfAName() {
    String script = "const a = 1;\n{ const a = 2;\n a; }\n a;";
    Reading reading = Reading.of(script);
    Names names = Names.of(reading);
    assertThat(reading.word(names.named("a", script.indexOf("a; }")).orElseThrow().value()))
        .isEqualTo("2");
    assertThat(reading.word(names.named("a", script.lastIndexOf("a;")).orElseThrow().value()))
        .isEqualTo("1");
  }
}
