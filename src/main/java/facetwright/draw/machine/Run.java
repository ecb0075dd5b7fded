package facetwright.draw.machine;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import java.util.List;

/**
 * What a machine does with one tool setting, before the next.
 *
 * @param id a short name without blanks, for groups and layers of a file
 * @param label what it is, for people
 * @param kind of all its lines
 * @param lines strokes and circles, in the order in which they are run
 */
public record Run(String id, String label, LineKind kind, List<Mark> lines) {
  public Run {
    lines = List.copyOf(lines);
  }
}
