package facetwright.workbench.file;

import java.util.ArrayList;
import java.util.List;

/** Two scripts beside each other, numbered, runs of lines alike left out but near what differs. */
public final class Abridged {
  /** So many lines alike stand around what differs. */
  public static final int AROUND = 3;

  private Abridged() {}

  /** What shows on one height. */
  public sealed interface Shown {}

  /**
   * A line of either or both.
   *
   * @param mine its number in the first script, from 1; that of the last line before it where it
   *     has none
   * @param theirs the same for the second
   */
  public record Line(int mine, int theirs, Aligned.Row row) implements Shown {}

  /** Lines alike that are left out. */
  public record Alike(int lines) implements Shown {}

  /**
   * The rows to show.
   *
   * @param around how many lines alike stay on either side of what differs; a run is left out where
   *     that saves more than a line
   */
  public static List<Shown> of(List<Aligned.Row> rows, int around) {
    List<Shown> all = new ArrayList<>();
    List<Line> run = new ArrayList<>();
    int mine = 0;
    int theirs = 0;
    for (Aligned.Row row : rows) {
      mine += row.mine() == null ? 0 : 1;
      theirs += row.theirs() == null ? 0 : 1;
      Line line = new Line(mine, theirs, row);
      if (row.isAlike()) {
        run.add(line);
      } else {
        put(run, all.isEmpty() ? 0 : around, around, all);
        all.add(line);
      }
    }
    put(run, all.isEmpty() ? 0 : around, 0, all);
    return List.copyOf(all);
  }

  /** Puts down a run, but for its middle. */
  private static void put(List<Line> run, int head, int tail, List<Shown> all) {
    int spared = run.size() - head - tail;
    if (spared > 1) {
      all.addAll(run.subList(0, head));
      all.add(new Alike(spared));
      all.addAll(run.subList(run.size() - tail, run.size()));
    } else {
      all.addAll(run);
    }
    run.clear();
  }
}
