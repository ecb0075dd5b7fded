package facetwright.words;

import java.io.Serializable;

/**
 * The place in the script that made something.
 *
 * @param line from 1; 0 when no script made it
 * @param column from 1; 0 when unknown
 * @param in where in a file that the script uses, called from that place; {@link InFile#NONE} when
 *     the script itself made it
 */
public record Site(int line, int column, InFile in) implements Serializable {
  public static final Site NONE = new Site(0, 0);

  /** One in the script itself. */
  public Site(int line, int column) {
    this(line, column, InFile.NONE);
  }

  public boolean isKnown() {
    return line > 0;
  }

  /** Whether a file that the script uses made it. */
  public boolean isInFile() {
    return in.isKnown();
  }

  /**
   * As one reads it: {@code line 6}, and where in a file that is called from there; empty when
   * unknown.
   */
  public String text() {
    return !isKnown() ? "" : "line " + line + (in.isKnown() ? " (" + in.text() + ")" : "");
  }

  /** The same at the beginning of what is told of it: {@code Line 6: }; empty when unknown. */
  public String lead() {
    return isKnown() ? Sentence.capital(text()) + ": " : "";
  }
}
