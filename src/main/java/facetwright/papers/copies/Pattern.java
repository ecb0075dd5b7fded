package facetwright.papers.copies;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows stacked, each shifted against the one below: on and on to the right, or to and fro.
 *
 * @param rise from row to row, in mm
 * @param shift of a row against the one below, in mm
 * @param isToAndFro whether every second row lies right above the first
 */
record Pattern(Row row, double rise, double shift, boolean isToAndFro) {
  private static final int PLACES = 12;

  /** What leaves the sheet by no more lies on it. */
  private static final LengthTolerance SLACK = LengthTolerance.FINE;

  /** A blank of the row and where its lower left corner lies. */
  record Placed(Blank blank, Vec2 at) {}

  static List<Pattern> of(Row row) {
    // A shift by a whole period is none, so a few rises serve for rows any number apart; after as
    // many rows as there are places each shift comes back to none.
    double[] above = new double[PLACES];
    for (int i = 0; i < PLACES; i++) {
      above[i] = row.above(row.period() * i / PLACES);
    }
    List<Pattern> patterns = new ArrayList<>();
    for (int i = 0; i < PLACES; i++) {
      double shift = row.period() * i / PLACES;
      double on = above[i];
      for (int n = 2; n <= PLACES; n++) {
        on = Math.max(on, above[n * i % PLACES] / n);
      }
      patterns.add(new Pattern(row, on, shift, false));
      if (i > 0) {
        double back = Math.max(above[i], above[PLACES - i]);
        patterns.add(new Pattern(row, Math.max(back, above[0] / 2), shift, true));
      }
    }
    return patterns;
  }

  /**
   * The blanks that lie whole in a sheet, the pattern put so that the most do.
   *
   * @param most no more than these are counted and placed
   */
  List<Placed> within(double width, double height, int most) {
    int best = 0;
    Vec2 start = Vec2.ZERO;
    for (double y : new double[] {0, lift()}) {
      for (double x : starts()) {
        int count = best < most ? count(width, height, x, y, most) : 0;
        if (count > best) {
          best = count;
          start = new Vec2(x, y);
        }
      }
    }
    return best == 0 ? List.of() : placed(width, height, start, most);
  }

  /** By how much the higher blanks of a row lie over the lower ones: the other way to begin. */
  private double lift() {
    return -row.at().stream().mapToDouble(Vec2::y).max().orElse(0);
  }

  /** Where the first row may begin so that some blank of the lowest rows touches the left edge. */
  private List<Double> starts() {
    List<Double> starts = new ArrayList<>();
    for (int n = 0; n < (isToAndFro ? 2 : 4); n++) {
      for (Vec2 at : row.at()) {
        double x = -(at.x() + shiftOf(n));
        starts.add(x - row.period() * Math.floor(x / row.period()));
      }
    }
    return starts;
  }

  private double shiftOf(int row) {
    return isToAndFro ? Math.floorMod(row, 2) * shift : row * shift;
  }

  private int count(double width, double height, double x, double y, int most) {
    long count = 0;
    for (int n = first(); n * rise + y <= height + SLACK.mm() && count < most; n++) {
      for (int i = 0; i < row.blanks().size(); i++) {
        if (isBetween(n, i, height, y)) {
          long from = firstIn(n, i, x);
          long to = lastIn(n, i, x, width);
          count += Math.max(0, to - from + 1);
        }
      }
    }
    return (int) Math.min(count, most);
  }

  /** A row below the first may still hold blanks that lie high in it. */
  private int first() {
    return -2;
  }

  private boolean isBetween(int n, int i, double height, double y) {
    double foot = n * rise + y + row.at().get(i).y();
    return foot >= -SLACK.mm() && foot + row.blanks().get(i).height() <= height + SLACK.mm();
  }

  private long firstIn(int n, int i, double x) {
    double left = x + shiftOf(n) + row.at().get(i).x();
    return (long) Math.ceil((-SLACK.mm() - left) / row.period());
  }

  private long lastIn(int n, int i, double x, double width) {
    double left = x + shiftOf(n) + row.at().get(i).x();
    return (long)
        Math.floor((width + SLACK.mm() - row.blanks().get(i).width() - left) / row.period());
  }

  private List<Placed> placed(double width, double height, Vec2 start, int most) {
    List<Placed> all = new ArrayList<>();
    for (int n = first(); n * rise + start.y() <= height + SLACK.mm(); n++) {
      for (int i = 0; i < row.blanks().size(); i++) {
        if (isBetween(n, i, height, start.y())) {
          double left = start.x() + shiftOf(n) + row.at().get(i).x();
          double foot = n * rise + start.y() + row.at().get(i).y();
          for (long k = firstIn(n, i, start.x()); k <= lastIn(n, i, start.x(), width); k++) {
            all.add(new Placed(row.blanks().get(i), new Vec2(left + k * row.period(), foot)));
            if (all.size() == most) {
              return all;
            }
          }
        }
      }
    }
    return all;
  }
}
