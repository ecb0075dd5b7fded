package facetwright.draw;

import java.util.ArrayList;
import java.util.List;

/** Which kinds of line a drawing has. */
public final class LineKinds {
  private LineKinds() {}

  /** The kinds that are drawn, the heaviest first, as a legend lists them. */
  public static List<LineKind> used(List<Mark> marks) {
    List<LineKind> used = new ArrayList<>();
    for (LineKind kind : List.of(LineKind.values()).reversed()) {
      boolean drawn =
          marks.stream()
              .anyMatch(
                  m ->
                      switch (m) {
                        case Mark.Stroke s -> s.kind() == kind;
                        case Mark.Circle c -> c.kind() == kind;
                        case Mark.Fill _, Mark.Patch _, Mark.Text _ -> false;
                      });
      if (drawn) {
        used.add(kind);
      }
    }
    return used;
  }
}
