package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In these texts | is the caret, [ and ] or « and » the ends of the selection, ~ a line break. */
class TypingTest {
  private static String text(String marked) {
    return marked.replace('~', '\n').replaceAll("[|«»]", "");
  }

  private static Stretch selected(String marked) {
    String plain = marked.replace('~', '\n');
    int caret = plain.indexOf('|');
    return caret >= 0
        ? new Stretch(caret, caret)
        : new Stretch(plain.indexOf('«'), plain.indexOf('»') - 1);
  }

  private static String shown(String text, Edit edit) {
    StringBuilder out = new StringBuilder(edit.in(text));
    if (edit.anchor() == edit.caret()) {
      out.insert(edit.caret(), '|');
    } else {
      out.insert(edit.caret(), '»').insert(edit.anchor(), '«');
    }
    return out.toString().replace('\n', '~');
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      ignoreLeadingAndTrailingWhitespace = false,
      textBlock =
          """
          a|b;a~|b
            a|;  a~  |
          f(|;f(~  |
            f({|});  f({~    |~  })
          f(«x»);f(~  |~)
           | a; ~ | a
          """)
  void enterKeepsTheIndent(String before, String after) {
    assertThat(shown(text(before), Typing.enter(text(before), selected(before)))).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      ignoreLeadingAndTrailingWhitespace = false,
      textBlock =
          """
          {~    |;{~  }|
          {~ |;{~}|
          {a|};{a}|
          """)
  void aClosingBraceStepsOutwardOrIsTypedOver(String before, String after) {
    Edit edit = Typing.close(Reading.of(text(before)), selected(before).start(), '}').orElseThrow();
    assertThat(shown(text(before), edit)).isEqualTo(after);
  }

  @Test
  void aClosingBraceIsElseALetter() {
    assertThat(Typing.close(Reading.of("{ a "), 4, '}')).isEmpty();
    assertThat(Typing.close(Reading.of("{{a}"), 3, '}')).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      ignoreLeadingAndTrailingWhitespace = false,
      textBlock =
          """
          a|;a |
          «a~b»;«  a~  b»
          a~b«c~d~»e;a~«  bc~  d»~e
          """)
  void tabGoesInward(String before, String after) {
    assertThat(shown(text(before), Typing.inward(text(before), selected(before)))).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      ignoreLeadingAndTrailingWhitespace = false,
      textBlock =
          """
          a|;// a|
            // a|;  a|
          «  a~~    b»;«  // a~~  //   b»
          «//a~// b»;«a~b»
          «// a~b»;«// // a~// b»
          """)
  void commentsAndUncomments(String before, String after) {
    assertThat(shown(text(before), Typing.comment(text(before), selected(before))))
        .isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\u0000',
      textBlock =
          """
          a~b|~c; true; b|~a~c
          a~b|~c; false; a~c~b|
          a~«b~c»; true; «b~c»~a
          """)
  void movesLines(String before, boolean up, String after) {
    Edit edit = Typing.move(text(before), selected(before), up).orElseThrow();
    assertThat(shown(text(before), edit)).isEqualTo(after);
  }

  @Test
  void linesAtTheEndsStay() {
    assertThat(Typing.move("a\nb", new Stretch(0, 0), true)).isEmpty();
    assertThat(Typing.move("a\nb", new Stretch(3, 3), false)).isEmpty();
  }

  @Test
  void aLineTwice() {
    assertThat(shown("a\nbc\nd", Typing.twice("a\nbc\nd", new Stretch(3, 3))))
        .isEqualTo("a~bc~b|c~d");
  }

  @Property(seed = "20261125")
  void outwardTakesInwardBack(
      @ForAll @StringLength(min = 1, max = 30) @CharRange(from = 'a', to = 'c') String word,
      @ForAll @IntRange(max = 3) int lines) {
    String text = (word + "\n").repeat(lines + 1) + word;
    Edit in = Typing.inward(text, new Stretch(0, text.length()));
    String further = in.in(text);
    Edit out = Typing.outward(further, new Stretch(in.anchor(), in.caret()));
    assertThat(further).isNotEqualTo(text);
    assertThat(out.in(further)).isEqualTo(text);
  }

  @Property(seed = "20261125")
  void movingDownTakesMovingUpBack(
      @ForAll @StringLength(max = 30) @CharRange(from = '\t', to = '\r') String spaces) {
    String text = "first\n" + spaces.replace('\r', '\n') + "\nlast";
    Stretch caret = new Stretch(text.length() - 2, text.length() - 2);
    Edit up = Typing.move(text, caret, true).orElseThrow();
    String moved = up.in(text);
    Edit down = Typing.move(moved, new Stretch(up.caret(), up.caret()), false).orElseThrow();
    assertThat(down.in(moved)).isEqualTo(text);
    assertThat(down.caret()).isEqualTo(caret.start());
  }
}
