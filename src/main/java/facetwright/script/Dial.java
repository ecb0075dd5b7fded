package facetwright.script;

import facetwright.net.Site;
import java.io.Serializable;

/**
 * A parameter that a design's user may turn.
 *
 * @param name as the script and the command line call it
 * @param kind whether it is a length (mm) or a plain number
 * @param value its value now; a length in mm
 * @param usual the value the script gives it; a length in mm
 * @param from least value allowed
 * @param to greatest value allowed
 * @param step distance between allowed values counted from {@code from}; 0 for no steps
 * @param site where the script declares it
 */
public record Dial(
    String name,
    Kind kind,
    double value,
    double usual,
    double from,
    double to,
    double step,
    Site site)
    implements Serializable {

  /** What a dial counts. */
  public enum Kind {
    LENGTH,
    NUMBER
  }
}
