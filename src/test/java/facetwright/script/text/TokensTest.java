package facetwright.script.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.LibraryDesigns;
import facetwright.script.text.Token.Kind;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TokensTest {
  static String cut(String text) {
    return String.join(
        " ",
        Tokens.of(text).stream()
            .map(t -> t.kind().name().charAt(0) + "<" + text.substring(t.start(), t.end()) + ">")
            .toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          const a = 1.5; // one   | K<const> N<a> M<=> N<1.5> M<;> C<// one>
          a.in("b\\"c")           | N<a> M<.> N<in> M<(> T<"b\\"c"> M<)>
          a / b / c               | N<a> M</> N<b> M</> N<c>
          x = /[/"]+/g; y         | N<x> M<=> P</[/"]+/g> M<;> N<y>
          `a${b}c${{d: 1}.d}e`    | T<`a${> N<b> T<}c${> M<{> N<d> M<:> N<1> M<}> M<.> N<d> T<}e`>
          0x1F 1e-3 .5 1_000 48mm | N<0x1F> N<1e-3> N<.5> N<1_000> N<48> N<mm>
          1..at 1.5.at 3in 0b1n   | N<1.> M<.> N<at> N<1.5> M<.> N<at> N<3> K<in> N<0b1n>
          [...of] a?.in b?.5:c    | M<[> M<...> K<of> M<]> N<a> M<?.> N<in> N<b> M<?> N<.5> M<:> N<c>
          x => x >>>= 2 ** 1      | N<x> M<=>> N<x> M<>>>=> N<2> M<**> N<1>
          "open                   | T<"open>
          /* open                 | C</* open>
          a /* b */ 'c'           | N<a> C</* b */> T<'c'>
          """)
  void cutsInto(String text, String tokens) {
    assertThat(cut(text)).isEqualTo(tokens);
  }

  @Test
  void aTextEndsWithItsLine() {
    assertThat(cut("say(\"a\nb")).isEqualTo("N<say> M<(> T<\"a> N<b>");
  }

  @Property(seed = "20261125")
  void whateverIsWrittenIsCutInOrderAndOnlySpaceIsLeftOut(
      @ForAll @StringLength(max = 60) @CharRange(from = ' ', to = '~') String text) {
    List<Token> tokens = Tokens.of(text);
    int at = 0;
    for (Token token : tokens) {
      assertThat(text.substring(at, token.start())).isBlank();
      assertThat(token.end()).isGreaterThan(token.start());
      at = token.end();
    }
    assertThat(text.substring(at)).isBlank();
  }

  static Stream<Path> library() throws IOException {
    return LibraryDesigns.files().stream();
  }

  @ParameterizedTest
  @MethodSource("library")
  void everyBracketOfTheLibraryHasItsPartner(Path file) throws IOException {
    Reading reading = Reading.of(LibraryDesigns.text(file));
    assertThat(reading.isPaired()).isTrue();
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.is(i, '(')) {
        assertThat(reading.word(reading.partner(i))).isEqualTo(")");
        assertThat(reading.partner(reading.partner(i))).isEqualTo(i);
      }
      assertThat(reading.is(i, Kind.COMMENT) || reading.token(i).length() < 120).isTrue();
    }
  }

  @Test
  void linesAndPlacesAgree() {
    Reading reading = Reading.of("ab\n\ncd(e)");
    assertThat(reading.lineCount()).isEqualTo(3);
    assertThat(reading.line(2)).isEqualTo(1);
    assertThat(reading.line(3)).isEqualTo(2);
    assertThat(reading.line(9)).isEqualTo(3);
    assertThat(reading.offset(3, 4)).hasValue(7);
    assertThat(reading.offset(4, 1)).isEmpty();
    assertThat(reading.stretch(3, 1)).contains(new Stretch(4, 6));
  }
}
