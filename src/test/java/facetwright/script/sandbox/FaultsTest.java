package facetwright.script.sandbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.sandbox.ScriptException.Kind;
import facetwright.words.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultsTest {
  static ScriptException fault(String source) {
    return catchThrowableOfType(ScriptException.class, () -> Probe.run(source));
  }

  @Test
  void runsAScriptAndKnowsWhereItsCallsStand() throws ScriptException {
    Probe probe = new Probe();
    var said = Sandbox.run("a.js", "say('one');\n  say(columns(3));", Budget.USUAL, probe);
    assertThat(said).containsExactly("one", "3");
    assertThat(probe.sites()).containsExactly(new Site(1, 1), new Site(2, 3));
  }

  /** Common slips of the pen; each is told without the engine's own names for signs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          say("one"                  | the script ends where a comma should follow | 1 | 10
          say("one                   | a text is begun and not ended | 1 | 9
          say(`one);                 | a text is begun and not ended | 1 | 11
          const q = “tall”;          | “ is a curly quote, which means nothing in a script | 1 | 11
          const b;                   | b is given no value | 1 | 8
          3 = 4;                     | what stands left of the = can't be given a value | 1 | 1
          say({ sides = 6 });        | an option is given its value with = | 1 | 13
          say({ sides 6 });          | "6" stands where a colon should | 1 | 13
          say({ sides: 6 side: 3 }); | a name stands where a comma should | 1 | 16
          say({ sides: 6 );          | ")" stands where a comma should | 1 | 16
          say(1).;                   | the end of a line stands where a name should | 1 | 8
          say(1 2);                  | "2" stands where a comma should | 1 | 7
          const 2b = 3;              | a number runs into a word | 1 | 8
          """)
  void slipsAreToldInPlainWords(String source, String words, int line, int column) {
    ScriptException e = fault(source);
    assertThat(e.kind()).isEqualTo(Kind.SYNTAX);
    assertThat(e.getMessage() + " at " + e.line() + ":" + e.column())
        .contains(words)
        .endsWith(" at " + line + ":" + column)
        .doesNotContain("ident", "eof", "operand", "Expected", "JavaScript");
    assertThat(e.remedy()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          let a = 1;\\nlet b = ;         | SYNTAX       | 2 | 9
          let a = 1;\\nlet c = {         | SYNTAX       | 2 | 10
          const x = 1;\\n  colums(3);    | UNKNOWN_NAME | 2 | 3
          say.rowz();                    | UNKNOWN_NAME | 1 | 5
          \\ncolumns(2)                  | BAD_VALUE    | 2 | 1
          const f = () => columns(2);\\n\\nf() | BAD_VALUE | 1 | 17
          throw new Error('my own')      | THROWN       | 1 | 7
          null.x                         | THROWN       | 1 | 1
          \\n\\nbroken()                 | INTERNAL     | 3 | 1
          \\nconst f = () => f();\\nf(); | RECURSION    | 2 | 11
          say(1);\\nfor (;;) {}          | TIME         | 2 | 1
          """)
  void namesThePlace(String source, Kind kind, int line, int column) {
    ScriptException e = fault(source.replace("\\n", "\n"));
    assertThat(e.kind()).as(e.getMessage()).isEqualTo(kind);
    assertThat(e.line()).isEqualTo(line);
    assertThat(e.column()).isEqualTo(column);
    assertThat(e.getMessage()).doesNotContain("java.", "facetwright.", "design.js");
  }
}
