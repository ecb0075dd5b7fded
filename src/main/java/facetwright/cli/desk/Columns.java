package facetwright.cli.desk;

import java.util.ArrayList;
import java.util.List;

/** Rows of a table as lines of text. */
public final class Columns {
  private Columns() {}

  /** Names to the left, numbers to the right. */
  public static List<String> aligned(List<List<String>> rows) {
    return aligned(rows, true);
  }

  /** All to the left. */
  public static List<String> left(List<List<String>> rows) {
    return aligned(rows, false);
  }

  private static List<String> aligned(List<List<String>> rows, boolean isByNumbers) {
    int columns = rows.getFirst().size();
    int[] wide = new int[columns];
    for (List<String> row : rows) {
      for (int c = 0; c < columns; c++) {
        wide[c] = Math.max(wide[c], row.get(c).length());
      }
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < columns; c++) {
        String pad = " ".repeat(wide[c] - row.get(c).length());
        line.append("  ").append(c == 0 || !isByNumbers ? row.get(c) + pad : pad + row.get(c));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }
}
