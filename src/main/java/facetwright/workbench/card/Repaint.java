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
    Cursor cursor = new Cursor(wanted);
    for (int i = 0; i < area.getParagraphs().size(); i++) {
      int length = area.getParagraphLength(i);
      boolean differs = !same(area.getStyleSpans(i), cursor, start);
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

  /** Walks through the spans of a text, never back: a script has as many as it has words. */
  private static final class Cursor {
    private final StyleSpans<Collection<String>> spans;
    private int next;
    private int end;
    private Collection<String> style;

    Cursor(StyleSpans<Collection<String>> spans) {
      this.spans = spans;
    }

    /** The style at a place of the text; places are asked for in their order. */
    Collection<String> at(int place) {
      while (end <= place) {
        StyleSpan<Collection<String>> span = spans.getStyleSpan(next++);
        end += span.getLength();
        style = span.getStyle();
      }
      return style;
    }

    /** Where the style of the place asked for last ends. */
    int end() {
      return end;
    }
  }

  /** Whether a line has the inks that the text should have from a place on. */
  private static boolean same(StyleSpans<Collection<String>> line, Cursor text, int start) {
    int at = start;
    int ownEnd = start;
    for (StyleSpan<Collection<String>> own : line) {
      ownEnd += own.getLength();
      while (at < ownEnd) {
        if (!List.copyOf(own.getStyle()).equals(List.copyOf(text.at(at)))) {
          return false;
        }
        at = Math.min(ownEnd, text.end());
      }
    }
    return true;
  }
}
