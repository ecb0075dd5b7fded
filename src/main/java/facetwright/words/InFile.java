package facetwright.words;

import java.io.Serializable;

/**
 * A place in a file that a script uses.
 *
 * @param name of the file; empty for none
 * @param line from 1: of the file or, where that is gathered into the script, of the whole text
 * @param column from 1; 0 when unknown
 * @param isGathered whether the file stands in the script's own text
 */
public record InFile(String name, int line, int column, boolean isGathered)
    implements Serializable {
  public static final InFile NONE = new InFile("", 0, 0, false);

  public boolean isKnown() {
    return !name.isEmpty();
  }

  /** The line that stands so many below it, in words. */
  public String at(int below) {
    return new InFile(name, line + below, 0, isGathered).text();
  }

  /** In words: {@code line 3 of tubs.js}. */
  public String text() {
    return "line " + line + (isGathered ? ", in what is gathered in of " : " of ") + name;
  }
}
