package facetwright.workbench.card.text;

import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.script.text.Token.Kind;

/** A word for a facet, written where one is in a script. */
public final class Wording {
  private Wording() {}

  /**
   * The edit that writes it: in place of what is selected, or of the text in quotes that the caret
   * is in; beside another one with a comma between.
   *
   * @param word as it stands in a script: text in quotes, a variable, a place, or calls that choose
   *     cells
   */
  public static Edit edit(Reading reading, Stretch selected, String word) {
    int caret = selected.start();
    int inside = reading.at(caret);
    boolean isInText = reading.is(inside, Kind.TEXT) && reading.token(inside).start() < caret;
    if (isInText && selected.end() <= reading.token(inside).end()) {
      return Edit.replace(reading.token(inside).stretch(), word);
    }
    if (selected.end() > selected.start()) {
      return Edit.replace(selected, word);
    }
    int before = reading.before(caret);
    boolean touches = before >= 0 && reading.token(before).end() == caret;
    if (word.endsWith(")")) {
      boolean isCalled = touches && (reading.is(before, Kind.NAME) || reading.is(before, ')'));
      return Edit.insert(caret, (isCalled ? "." : "") + word);
    }
    if (touches && reading.is(before, Kind.TEXT)) {
      return Edit.insert(caret, ", " + word);
    }
    return reading.is(inside, Kind.TEXT)
        ? Edit.insert(caret, word + ", ")
        : Edit.insert(caret, word);
  }
}
