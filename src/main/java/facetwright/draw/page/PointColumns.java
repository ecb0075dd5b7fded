package facetwright.draw.page;

import facetwright.draw.Lettering;
import facetwright.draw.Mark.Weight;
import java.util.List;

/** Short words that hang under each other in columns, read column by column. */
final class PointColumns {
  private static final double BETWEEN = 5;

  private PointColumns() {}

  static void set(Flow flow, List<String> items) {
    double size = Flow.SMALL;
    double line = size * Flow.LINE;
    double widest =
        items.stream()
            .mapToDouble(i -> Lettering.width(i, Weight.REGULAR, size))
            .max()
            .orElse(flow.width());
    int columns = Math.max(1, (int) ((flow.width() + BETWEEN) / (widest + BETWEEN)));
    double across = (flow.width() + BETWEEN) / columns;
    int next = 0;
    while (next < items.size()) {
      flow.room(line);
      int fit = Math.max(1, (int) (flow.left() / line));
      int rows = Math.min(fit, (items.size() - next + columns - 1) / columns);
      List<String> here = items.subList(next, Math.min(items.size(), next + rows * columns));
      flow.row(
          rows * line,
          top -> {
            for (int i = 0; i < here.size(); i++) {
              double base = top - (i % rows + 1) * line + size * (Lettering.DESCENT + 0.1);
              flow.print(Math.floorDiv(i, rows) * across, base, Weight.REGULAR, size, here.get(i));
            }
          });
      next += rows * columns;
    }
    flow.gap(0.8);
  }
}
