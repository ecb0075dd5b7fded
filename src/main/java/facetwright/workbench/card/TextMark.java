package facetwright.workbench.card;

import facetwright.check.finding.Finding;
import facetwright.script.text.Stretch;
import java.util.Locale;

/**
 * Something wrong that is marked in the text.
 *
 * @param at where
 * @param number of the finding, from 1 as the list counts; 0 for the script's fault
 * @param style the severity's word in style sheets
 * @param message what is wrong
 * @param fix what to do about it, or empty
 */
record TextMark(Stretch at, int number, String style, String message, String fix) {
  static TextMark of(Stretch at, int number, Finding finding) {
    String style = finding.severity().name().toLowerCase(Locale.ROOT);
    return new TextMark(at, number, style, finding.message(), finding.fix());
  }

  boolean isFault() {
    return number == 0;
  }

  /** As it is read out and shown beside the pointer. */
  String text() {
    String sign = isFault() ? "✕ " : number + "  ";
    return sign + message + (fix.isEmpty() ? "" : "\n" + fix);
  }

  TextMark movedTo(Stretch place) {
    return new TextMark(place, number, style, message, fix);
  }
}
