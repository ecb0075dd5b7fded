package facetwright.adjust;

import facetwright.words.Site;
import java.io.Serializable;

/**
 * Something to know of what was found.
 *
 * @param words a sentence or two
 * @param site the place of the script it is about; {@link Site#NONE} for none
 */
public record Remark(String words, Site site) implements Serializable {
  /** One that is about no place of the script. */
  public static Remark of(String words) {
    return new Remark(words, Site.NONE);
  }
}
