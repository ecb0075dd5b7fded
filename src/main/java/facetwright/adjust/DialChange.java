package facetwright.adjust;

import java.io.Serializable;

/**
 * A dial and where it goes, as a person reads it.
 *
 * @param name the dial's
 * @param now where it stands
 * @param becomes where it goes; "stays" where it is not turned
 * @param change by how much, with its sign; empty where it is not turned or that is not told
 */
public record DialChange(String name, String now, String becomes, String change)
    implements Serializable {
  /** What {@code becomes} says of a dial that is not turned. */
  public static final String STAYS = "stays";
}
