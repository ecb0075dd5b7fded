package facetwright.workbench.card;

import java.util.Collection;
import java.util.List;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.StyleSpan;
import org.fxmisc.richtext.model.StyleSpans;

/**
 * Gives a text its inks, touching only the lines whose inks have changed: a line that is inked anew
 * is made anew on the screen, which takes most of the time of a key press.
 */
final class Repaint {
  private Repaint() {}

  /**
   * @param wanted the inks of the whole text, as long as it is
   */
  static void of(CodeArea area, StyleSpans<Collection<String>> wanted) {
    int start = 0;
    int from = -1;
    for (int i = 0; i < area.getParagraphs().size(); i++) {
      int length = area.getParagraphLength(i);
      boolean differs = !same(area.getStyleSpans(i), wanted, start);
      if (differs && from < 0) {
        from = start;
      }
      boolean last = i + 1 == area.getParagraphs().size();
      if (from >= 0 && (last || !differs)) {
        int to = differs ? start + length : start - 1;
        area.setStyleSpans(from, wanted.subView(from, to));
        from = -1;
      }
      start += length + 1;
    }
  }

  /** Whether a line has the inks that the text should have from a place on. */
  private static boolean same(
      StyleSpans<Collection<String>> line, StyleSpans<Collection<String>> text, int at) {
    int here = 0;
    int i = 0;
    int j = 0;
    // Where the spans numbered i and j begin, in the text.
    int ownEnd = at;
    int otherEnd = 0;
    while (here < line.length()) {
      while (ownEnd <= at + here) {
        ownEnd += line.getStyleSpan(i++).getLength();
      }
      while (otherEnd <= at + here) {
        otherEnd += text.getStyleSpan(j++).getLength();
      }
      StyleSpan<Collection<String>> own = line.getStyleSpan(i - 1);
      StyleSpan<Collection<String>> other = text.getStyleSpan(j - 1);
      if (!List.copyOf(own.getStyle()).equals(List.copyOf(other.getStyle()))) {
        return false;
      }
      here = Math.min(ownEnd, otherEnd) - at;
    }
    return true;
  }
}
