package facetwright.net.fitting;

import java.io.Serializable;
import java.util.List;

/**
 * When something is done while a body is glued.
 *
 * @param panels what it comes before or after the gluing of; empty where it names none
 */
public record Moment(When when, List<Integer> panels) implements Serializable {
  /** Before what would close over it. */
  public static final Moment FOUND = new Moment(When.FOUND, List.of());

  public Moment {
    panels = List.copyOf(panels);
  }

  /** How a moment is told. */
  public enum When {
    /** Found: before what would close over it. */
    FOUND,
    FIRST,
    LAST,
    BEFORE,
    AFTER
  }
}
