package facetwright.script.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.LibraryDesigns;
import facetwright.script.text.Token.Kind;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tokens against the verdict of the engine's own parser. White space and comments may stand between
 * any two tokens and mean nothing there, but for the ends of lines (ECMA-262, sections 12.2 to
 * 12.4; from memory): a script that the engine reads is still read when a comment is put behind
 * every token, and no longer when one is put into a token, which is then two.
 */
class TokensAgainstEngineTest {
  private static final Context ENGINE =
      Context.newBuilder("js")
          .allowExperimentalOptions(true)
          .option("js.strict", "true")
          .option("engine.WarnInterpreterOnly", "false")
          .build();

  private static boolean isRead(String script) {
    try {
      ENGINE.parse(Source.newBuilder("js", script, "a.js").buildLiteral());
      return true;
    } catch (PolyglotException e) {
      assertThat(e.isInternalError()).as(script).isFalse();
      return false;
    }
  }

  /**
   * With a comment behind every token that none is inside of; but not before a colon, for the
   * engine does not read a label behind which a comment stands.
   */
  private static String spaced(String script) {
    StringBuilder spaced = new StringBuilder();
    boolean isApart = false;
    int at = 0;
    for (Token token : Tokens.of(script)) {
      boolean isColon = script.startsWith(":", token.start());
      spaced.append(isApart && !isColon ? " /**/" : "").append(script, at, token.end());
      boolean isLine = token.kind() == Kind.COMMENT && !script.startsWith("/*", token.start());
      isApart = !isLine;
      at = token.end();
    }
    return spaced.append(script.substring(at)).toString();
  }

  /** Numbers, names and signs of more than one character broken in two, each in its own script. */
  private static Stream<String> broken(String script) {
    return Tokens.of(script).stream()
        .filter(t -> t.length() > 1)
        // Two signs in a row mean something, too.
        .filter(t -> !script.startsWith("++", t.start()))
        .filter(t -> List.of(Kind.NUMBER, Kind.MARK, Kind.PATTERN, Kind.TEXT).contains(t.kind()))
        .map(
            t -> {
              // A text is broken by the end of a line, a template by none.
              int at = t.kind() == Kind.PATTERN ? t.start() + 1 : t.end() - 1;
              String by = t.kind() == Kind.PATTERN || t.kind() == Kind.TEXT ? "\n" : " /**/";
              boolean isTemplate = "`}".indexOf(script.charAt(t.start())) >= 0;
              return isTemplate ? "" : script.substring(0, at) + by + script.substring(at);
            })
        .filter(s -> !s.isEmpty());
  }

  private static void agrees(String script) {
    assertThat(isRead(spaced(script))).as("%s\nspaced: %s", script, spaced(script)).isTrue();
  }

  static List<String> hard() {
    return HardScripts.ALL;
  }

  @ParameterizedTest
  @MethodSource("hard")
  void whatTheEngineReadsIsCutWhereItCuts(String script) {
    assertThat(isRead(script)).as("the engine reads it").isTrue();
    agrees(script);
  }

  @ParameterizedTest
  @MethodSource("hard")
  void whatIsOneTokenIsNotTwo(String script) {
    assertThat(broken(script)).allSatisfy(b -> assertThat(isRead(b)).as(b).isFalse());
  }

  static Stream<String> library() throws Exception {
    return LibraryDesigns.files().stream().map(LibraryDesigns::text);
  }

  @ParameterizedTest
  @MethodSource("library")
  void theLibraryIsCutWhereTheEngineCuts(String script) {
    agrees(script);
  }

  @Provide
  Arbitrary<String> soup() {
    Arbitrary<String> piece = Arbitraries.of(HardScripts.PIECES);
    return piece.list().ofMaxSize(9).map(l -> String.join("", l));
  }

  /** Scripts of random pieces; those that the engine reads are a fifth of them. */
  @Property(tries = 4000, seed = "20261130")
  void whateverTheEngineReadsIsCutWhereItCuts(@ForAll("soup") String script) {
    if (isRead(script)) {
      agrees(script);
    }
  }

  @Property(tries = 500, seed = "20261130")
  void aProgramOfManyStatementsIsCutWhereTheEngineCuts(@ForAll("programs") String script) {
    agrees(script);
  }

  /** The hard ones, whole, inside functions and braces, and behind each other. */
  @Provide
  Arbitrary<String> programs() {
    List<String> plain =
        HardScripts.ALL.stream()
            .filter(s -> !s.startsWith("#!"))
            .filter(TokensAgainstEngineTest::isRead)
            .toList();
    Arbitrary<String> one =
        Arbitraries.of(plain)
            .flatMap(
                s ->
                    Arbitraries.of(
                        "{\n" + s + "\n}",
                        "a = function () {\n" + s + "\n} / 2 / b",
                        "a = () => {\n" + s + "\n}",
                        "{ class Q { r() {\n" + s + "\n} } /'/ }",
                        "`${(() => {\n" + s + "\n})()}'` / 2 / c",
                        "if (a) {\n" + s + "\n} /'/"))
            .filter(TokensAgainstEngineTest::isRead);
    return one.list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .map(l -> String.join("\n;", l))
        .filter(TokensAgainstEngineTest::isRead);
  }

  @Test
  void aTextSaysWhatTheEngineTakesItToSay() {
    for (String text :
        List.of(
            "'plain'",
            "'a\\'b\\\\c'",
            "\"1 1/2\\\"\"",
            "'\\n\\t\\r\\b\\f\\v\\0'",
            "'\\x41\\u00e9\\u{1F600}'",
            "'a\\\nb\\\r\nc\\\u2028d'",
            "`plain`",
            "'\\q\\ä'")) {
      assertThat(Reading.of(text).said(0)).as(text).contains(ENGINE.eval("js", text).asString());
    }
    assertThat(Reading.of("'open").said(0)).isEmpty();
    assertThat(Reading.of("`a${b}c`").said(0)).isEmpty();
    assertThat(Reading.of("`a${b}c`").said(2)).isEmpty();
    assertThat(Reading.of("a").said(0)).isEmpty();
  }

  /** What can't be read is cut all the same, without going over it again and again. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "(",
        ")",
        "[",
        "{",
        "}",
        "`${",
        "`",
        "/",
        "/[",
        "'",
        "\"",
        "/*",
        "/**/",
        "=>",
        "a=>",
        "?",
        "function ",
        "class ",
        "<!--",
        "(}",
        "`${(",
        "const a=1 ",
        "const[",
        "#",
        "\\",
        "\\u{",
        "1.",
        "\ud800",
        "for(",
        "${",
        "a,"
      })
  void longGarbageIsCutInTime(String piece) {
    String text = piece.repeat(200_000 / piece.length());
    Reading reading = Reading.of(text);
    Names.of(reading);
    StringBuilder all = new StringBuilder();
    reading.tokens().forEach(t -> all.append(text, t.start(), t.end()));
    assertThat(all.toString()).isEqualTo(text.replace(" ", ""));
  }
}
