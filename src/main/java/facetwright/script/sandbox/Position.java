package facetwright.script.sandbox;

import facetwright.words.Site;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.SourceSection;
import org.graalvm.polyglot.management.ExecutionEvent;

/** The statement that a run of a script is at. */
final class Position {
  private volatile ExecutionEvent last;

  void note(ExecutionEvent event) {
    last = event;
  }

  /**
   * Where the last statement begun stands; {@link Site#NONE} before the first one, and when there
   * is no memory left to find out. May be asked from any thread.
   */
  Site site() {
    ExecutionEvent event = last;
    try {
      return event == null ? Site.NONE : of(event.getLocation());
    } catch (PolyglotException | OutOfMemoryError e) {
      return Site.NONE;
    }
  }

  static Site of(SourceSection section) {
    return section == null || !section.isAvailable()
        ? Site.NONE
        : new Site(section.getStartLine(), section.getStartColumn());
  }
}
