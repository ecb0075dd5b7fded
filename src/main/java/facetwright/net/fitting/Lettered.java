package facetwright.net.fitting;

import facetwright.words.Site;
import java.io.Serializable;

/**
 * Words that a maker wants on a panel.
 *
 * @param text in one line; it is set in several where it reads larger so
 * @param size of the type in mm, or {@link #LARGEST}
 * @param cut whether it is a label of paper, cut and glued on, rather than printed on the card
 * @param site where the script asks for it
 */
public record Lettered(String text, double size, boolean cut, Site site) implements Serializable {
  /** As large as the panel takes it, where no size is named. */
  public static final double LARGEST = Double.NaN;

  /** Whether a size was named. */
  public boolean isSized() {
    return !Double.isNaN(size);
  }
}
