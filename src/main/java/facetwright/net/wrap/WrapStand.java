package facetwright.net.wrap;

import facetwright.geom.AngleTolerance;
import facetwright.geom.CyclicPolygon;
import java.util.ArrayList;
import java.util.List;

/**
 * How the rows of a wrap that is not pinched stand: each line of scores round it is a polygon with
 * its corners on a circle, level, all about one axis. The lines of one row have the same turns
 * where it can stand so; then the middle of each cell leans out by asin of the difference of its
 * edges' distances from the axis, over its height (elementary).
 */
final class WrapStand {
  private final WrapGrid grid;
  private final List<double[]> turns = new ArrayList<>();
  private final List<double[]> reaches = new ArrayList<>();

  WrapStand(WrapGrid grid, int rows) {
    this.grid = grid;
    for (int line = 0; line <= rows; line++) {
      int same = line > 0 && grid.line(line).equals(grid.line(line - 1)) ? line - 1 : -1;
      turns.add(same >= 0 ? turns.get(same) : CyclicPolygon.turns(grid.line(line)));
      reaches.add(same >= 0 ? reaches.get(same) : CyclicPolygon.reaches(grid.line(line)));
    }
  }

  /** The turn at the corner after a column, at a line, in degrees. */
  double turn(int line, int column) {
    return turns.get(line)[column];
  }

  /** Whether a row's panels are flat when it stands so, and high enough to reach. */
  boolean stands(int row) {
    for (int c = 0; c < turns.get(row).length; c++) {
      if (!AngleTolerance.UNSEEN.same(
              Math.toRadians(turn(row, c)), Math.toRadians(turn(row + 1, c)))
          || !(Math.abs(out(row, c)) < grid.height(row, c))) {
        return false;
      }
    }
    return true;
  }

  /** How far a column's side lies from the axis at a line, in mm; below 0 beyond it. */
  double reach(int line, int column) {
    return reaches.get(line)[column];
  }

  private double out(int row, int column) {
    return grid.foot(row, column) == grid.top(row, column)
            && grid.line(row).equals(grid.line(row + 1))
        ? 0
        : reaches.get(row + 1)[column] - reaches.get(row)[column];
  }

  /** How far a cell leans out, in degrees, below 0 inward. */
  double lean(int row, int column) {
    return Math.toDegrees(
        Math.asin(Math.clamp(out(row, column) / grid.height(row, column), -1, 1)));
  }

  /**
   * The fold between a cell and the next round, in degrees: the angle between their outward
   * directions, of cosine cos a·cos b·cos t + sin a·sin b for leans a, b and the turn t (spherical
   * law of cosines).
   */
  double fold(int row, int column) {
    int next = (column + 1) % turns.get(row).length;
    double a = Math.toRadians(lean(row, column));
    double b = Math.toRadians(lean(row, next));
    double t = Math.toRadians(turn(row, column));
    if (a == 0 && b == 0) {
      return Math.min(180, turn(row, column));
    }
    double cos = Math.cos(a) * Math.cos(b) * Math.cos(t) + Math.sin(a) * Math.sin(b);
    return Math.toDegrees(Math.acos(Math.clamp(cos, -1, 1)));
  }
}
