package facetwright.script.design;

import facetwright.words.Site;
import java.io.Serializable;

/**
 * A parameter that a design's user may turn.
 *
 * @param name as the script and the command line call it
 * @param kind whether it is a length or a plain number; lengths count in the design's unit
 * @param value its value now
 * @param usual the value the script gives it
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

  /** The same dial turned to another value. */
  public Dial turned(double newValue) {
    return new Dial(name, kind, newValue, usual, from, to, step, site);
  }
}
