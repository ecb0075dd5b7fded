package facetwright.net;

import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;

/**
 * Card that a line of the script cut away.
 *
 * @param sides the sides of panels that it lay against
 * @param site where the script cut it away
 */
public record Cutaway(List<EdgeRef> sides, Site site) implements Serializable {
  public Cutaway {
    sides = List.copyOf(sides);
  }
}
