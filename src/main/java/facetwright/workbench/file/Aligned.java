package facetwright.workbench.file;

import java.util.ArrayList;
import java.util.List;

/**
 * Two scripts laid beside each other line by line. The longest run of lines that both have in the
 * same order is found by the textbook recursion; where both differ over more than {@value #MOST}
 * pairs of lines, that stretch is set down as wholly different, one line beside the other.
 */
public final class Aligned {
  private static final long MOST = 4_000_000;

  private Aligned() {}

  /**
   * One row.
   *
   * @param mine a line of the first; null where it has none here
   * @param theirs a line of the second; null where it has none here
   */
  public record Row(String mine, String theirs) {
    /** Whether both have this line. */
    public boolean isAlike() {
      return mine != null && mine.equals(theirs);
    }
  }

  /** The rows, from the first line to the last. */
  public static List<Row> of(String mine, String theirs) {
    List<String> a = mine.lines().toList();
    List<String> b = theirs.lines().toList();
    int head = 0;
    while (head < Math.min(a.size(), b.size()) && a.get(head).equals(b.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < Math.min(a.size(), b.size()) - head
        && a.get(a.size() - 1 - tail).equals(b.get(b.size() - 1 - tail))) {
      tail++;
    }
    List<Row> rows = new ArrayList<>();
    a.subList(0, head).forEach(line -> rows.add(new Row(line, line)));
    between(a.subList(head, a.size() - tail), b.subList(head, b.size() - tail), rows);
    a.subList(a.size() - tail, a.size()).forEach(line -> rows.add(new Row(line, line)));
    return List.copyOf(rows);
  }

  private static void between(List<String> a, List<String> b, List<Row> rows) {
    int[][] common =
        (long) a.size() * b.size() > MOST ? new int[0][0] : new int[a.size() + 1][b.size() + 1];
    for (int i = a.size() - 1; common.length > 0 && i >= 0; i--) {
      for (int j = b.size() - 1; j >= 0; j--) {
        common[i][j] =
            a.get(i).equals(b.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    List<String> mine = new ArrayList<>();
    List<String> theirs = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < a.size() || j < b.size()) {
      boolean both = i < a.size() && j < b.size() && common.length > 0;
      if (both && a.get(i).equals(b.get(j))) {
        apart(mine, theirs, rows);
        rows.add(new Row(a.get(i++), b.get(j++)));
      } else if (i < a.size() && (!both || common[i + 1][j] >= common[i][j + 1])) {
        mine.add(a.get(i++));
      } else {
        theirs.add(b.get(j++));
      }
    }
    apart(mine, theirs, rows);
  }

  /** What lies between two lines alike: changed lines beside each other, then what one has more. */
  private static void apart(List<String> mine, List<String> theirs, List<Row> rows) {
    for (int i = 0; i < Math.max(mine.size(), theirs.size()); i++) {
      rows.add(
          new Row(i < mine.size() ? mine.get(i) : null, i < theirs.size() ? theirs.get(i) : null));
    }
    mine.clear();
    theirs.clear();
  }
}
