package facetwright.net.wrap;

import facetwright.geom.CyclicPolygon;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import java.util.List;
import java.util.stream.IntStream;

/** Which fold angles of a wrap are known before it is closed. */
final class WrapAngles {
  /** The part of its width by which a tab's end may be cut back on either side. */
  private static final double WIDEST_BEVEL = 0.45;

  private final WrapDraft wrap;
  private final int n;
  private final double[] turns;
  private final boolean pinched;
  private final boolean alternate;

  WrapAngles(WrapDraft wrap) {
    this.wrap = wrap;
    n = wrap.widths.size();
    turns = CyclicPolygon.turns(wrap.widths);
    List<List<Integer>> patterns =
        IntStream.range(0, wrap.rows.size())
            .mapToObj(r -> IntStream.range(0, n).filter(c -> isPinched(r, c)).boxed().toList())
            .filter(columns -> !columns.isEmpty())
            .distinct()
            .toList();
    pinched = !patterns.isEmpty();
    alternate = patterns.size() == 1 && isAlternate(patterns.getFirst());
  }

  /** Every other column of an even wrap, and all of each kind equally wide. */
  private boolean isAlternate(List<Integer> columns) {
    int parity = columns.getFirst() % 2;
    return n % 2 == 0
        && columns.size() == n / 2
        && columns.stream().allMatch(c -> c % 2 == parity)
        && IntStream.range(2, n).allMatch(c -> wrap.widths.get(c).equals(wrap.widths.get(c % 2)));
  }

  private boolean isPinched(int row, int column) {
    WrapCell cell = wrap.cells[row][column];
    return cell.gusset != null && !cell.removed;
  }

  /** The score right of a cell; that of the last column is the seam's. */
  FoldAngle column(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, false));
    if (told != null) {
      return told.angle();
    }
    boolean beside = isPinched(row, column) || isPinched(row, (column + 1) % n);
    return beside || (pinched && !alternate)
        ? FoldAngle.TO_SOLVE
        : FoldAngle.degrees(Math.min(180, turns[column]));
  }

  Sense columnSense(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, false));
    if (told != null && told.sense() != null) {
      return told.sense();
    }
    boolean outward =
        wrap.cells[row][column].gusset == Pinch.OUT
            || wrap.cells[row][(column + 1) % n].gusset == Pinch.OUT;
    return outward ? Sense.VALLEY : Sense.MOUNTAIN;
  }

  /** The score above a cell. */
  FoldAngle row(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, true));
    if (told != null) {
      return told.angle();
    }
    if (standsOnRidge(row, column)) {
      return upright(row);
    }
    boolean tabBelow = wrap.cells[row][column].tab != null;
    boolean tabAbove = wrap.cells[row + 1][column].tab != null;
    if (!tabBelow && !tabAbove) {
      return pinched ? FoldAngle.TO_SOLVE : FoldAngle.degrees(0);
    }
    return pinched ? leaningRim(tabAbove ? row : row + 1, tabAbove) : FoldAngle.degrees(90);
  }

  /** The score between the lowest row and a floor: square where the walls stand upright. */
  FoldAngle floor() {
    return pinched && !alternate ? FoldAngle.TO_SOLVE : FoldAngle.degrees(90);
  }

  Sense rowSense(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, true));
    return told != null && told.sense() != null
        ? told.sense()
        : standsOnRidge(row, column) ? Sense.VALLEY : Sense.MOUNTAIN;
  }

  /**
   * Whether the cell above is half of a fin: of four columns the two beside it are pinched, so that
   * those between lean together to a ridge, and it lies on the one across from it.
   */
  private boolean standsOnRidge(int row, int column) {
    return n == 4
        && alternate
        && row + 1 < wrap.rows.size()
        && isPinched(row, (column + 1) % n)
        && pinchedAtTop(wrap, row, (column + 1) % n)
        && wrap.laps.stream()
            .anyMatch(
                l ->
                    (isAt(l.under(), row + 1, column) && isAt(l.over(), row + 1, (column + 2) % n))
                        || (isAt(l.over(), row + 1, column)
                            && isAt(l.under(), row + 1, (column + 2) % n)));
  }

  private static boolean isAt(WrapCell cell, int row, int column) {
    return cell.row == row && cell.column == column;
  }

  /** The fold that stands a fin upright: as far out as the panel under it leans in. */
  private FoldAngle upright(int row) {
    return leaningRim(row, true) instanceof FoldAngle.Known level
        ? FoldAngle.degrees(90 - level.degrees())
        : FoldAngle.TO_SOLVE;
  }

  /**
   * The fold that brings a rim tab level on a wall whose other columns are pinched to points. The
   * waist is the equiangular polygon of 2m sides w and v in turn, the rim the regular one of m
   * sides w. Their inner radii to a side w are (w·cos(π/m) + v)/(2·sin(π/m)) and w/(2·tan(π/m)), so
   * the wall of height h leans in by asin of their difference over h. A tab at the rim folds by
   * that much less than 90°, one at the waist by that much more.
   */
  private FoldAngle leaningRim(int wallRow, boolean tabAbove) {
    int first = isPinched(wallRow, 0) ? 0 : 1;
    if (!alternate) {
      return FoldAngle.TO_SOLVE;
    }
    if (!isPinched(wallRow, first)) {
      return FoldAngle.degrees(90);
    }
    double v = wrap.widths.get(first);
    double w = wrap.widths.get(1 - first);
    double turn = 2 * Math.PI / n;
    double waist = (w * Math.cos(turn) + v) / (2 * Math.sin(turn));
    double rim = w * Math.cos(turn) / (2 * Math.sin(turn));
    double lean = (waist - rim) / wrap.rows.get(wallRow).height();
    double sign = pinchedAtTop(wrap, wallRow, first) == tabAbove ? -1 : 1;
    return Math.abs(lean) < 1
        ? FoldAngle.degrees(90 + sign * Math.toDegrees(Math.asin(lean)))
        : FoldAngle.TO_SOLVE;
  }

  /**
   * Which edge of a pinched cell is pinched: the one where the next cell is missing; where both are
   * free, the one farther from the middle of the wrap, the top of the middle row.
   */
  static boolean pinchedAtTop(WrapDraft wrap, int row, int column) {
    boolean above = isKept(wrap, row + 1, column);
    boolean below = isKept(wrap, row - 1, column);
    return above == below ? 2 * row + 1 >= wrap.rows.size() : below;
  }

  static boolean isKept(WrapDraft wrap, int row, int column) {
    return row >= 0 && row < wrap.rows.size() && !wrap.cells[row][column].removed;
  }

  /**
   * How far each end of a rim tab is cut back, in mm, so that neighbours folded in lie over each
   * other as little as leaves them half as wide at the end as at the foot; and, where the opening
   * has corners sharper than a square's, at least so far that the tab stays within it.
   */
  double usualBevel(double width, double depth) {
    double sides = pinched ? n / 2.0 : n;
    double apart = depth * Math.tan(Math.toRadians(Math.min(60, 180 / sides)));
    double inside = depth * Math.tan(Math.toRadians(Math.clamp(360 / sides - 90, 0, 60)));
    return Math.min(Math.max(Math.min(apart, width / 4), inside), width * WIDEST_BEVEL);
  }
}
