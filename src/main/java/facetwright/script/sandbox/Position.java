package facetwright.script.sandbox;

import facetwright.words.Site;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.SourceSection;
import org.graalvm.polyglot.management.ExecutionEvent;

/** The statement that a run of a script is at. */
final class Position {
  private final Where where;
  private volatile ExecutionEvent last;
  private volatile ExecutionEvent inScript;

  Position(Where where) {
    this.where = where;
  }

  void note(ExecutionEvent event) {
    last = event;
    inScript = event;
  }

  void noteInFile(ExecutionEvent event) {
    last = event;
  }

  Where where() {
    return where;
  }

  /**
   * Where the last statement begun stands; {@link Site#NONE} before the first one, and when there
   * is no memory left to find out. May be asked from any thread.
   */
  Site site() {
    return of(last);
  }

  /** Where the last statement of the script itself stands, none of a file's. */
  Site script() {
    return of(inScript);
  }

  private Site of(ExecutionEvent event) {
    try {
      if (event == null) {
        return Site.NONE;
      }
      SourceSection section = event.getLocation();
      return where.of(section, Where.isScript(section) ? Site.NONE : script());
    } catch (PolyglotException | OutOfMemoryError e) {
      return Site.NONE;
    }
  }
}
