package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A facet's word goes where the caret is, and what stands there is minded. A bar is the caret. */
class WordingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "form.open(|); \"top\"; form.open(\"top\"|)",
        "form.open(\"si|de 1\"); \"top\"; form.open(\"top\"|)",
        "form.open([\"side 1\"|]); \"top\"; form.open([\"side 1\", \"top\"|])",
        "form.open([|\"side 1\"]); \"top\"; form.open([\"top\", |\"side 1\"])",
        "band|; columns(2).rows(\"wall\"); band.columns(2).rows(\"wall\")|",
        "band.|; columns(2).rows(\"wall\"); band.columns(2).rows(\"wall\")|",
        "tray.waste(|); [80, 60]; tray.waste([80, 60]|)",
        "left.join(\"top\", |, \"left\"); front; left.join(\"top\", front|, \"left\")",
        "|; \"top\"; \"top\"|",
      })
  void written(String before, String word, String after) {
    int caret = before.indexOf('|');
    String text = before.replace("|", "");
    Edit edit = Wording.edit(Reading.of(text), new Stretch(caret, caret), word);
    String whole = edit.in(text);
    assertThat(whole.substring(0, edit.caret()) + "|" + whole.substring(edit.caret()))
        .isEqualTo(after);
  }

  @Test
  void whatIsSelectedGivesWay() {
    String text = "form.open(here)";
    assertThat(Wording.edit(Reading.of(text), new Stretch(10, 14), "\"top\"").in(text))
        .isEqualTo("form.open(\"top\")");
  }
}
