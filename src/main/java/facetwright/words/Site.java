package facetwright.words;

import java.io.Serializable;

/**
 * The place in the script that made something.
 *
 * @param line from 1; 0 when no script made it
 * @param column from 1; 0 when unknown
 */
public record Site(int line, int column) implements Serializable {
  public static final Site NONE = new Site(0, 0);

  public boolean isKnown() {
    return line > 0;
  }
}
