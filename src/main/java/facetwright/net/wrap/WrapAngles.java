package facetwright.net.wrap;

import facetwright.geom.RoundOff;
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
  private final WrapStand stand;
  private final boolean pinched;
  private final boolean alternate;

  WrapAngles(WrapDraft wrap) {
    this.wrap = wrap;
    n = wrap.columnCount();
    stand = new WrapStand(wrap.grid(), wrap.rows.size());
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
        && IntStream.rangeClosed(0, wrap.rows.size())
            .mapToObj(wrap.grid()::line)
            .allMatch(l -> IntStream.range(2, n).allMatch(c -> l.get(c).equals(l.get(c % 2))));
  }

  private boolean isPinched(int row, int column) {
    return Pinching.isPinched(wrap, row, column);
  }

  private boolean isHalved(int row, int column) {
    return Pinching.isHalved(wrap, row, column);
  }

  /** The score right of a cell; that of the last column is the seam's. */
  FoldAngle column(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, false));
    if (told != null) {
      return told.angle();
    }
    int next = (column + 1) % n;
    if (isHalved(row, column)
        || isHalved(row, next)
        || isUnderFin(row, column)
        || isUnderFin(row, next)) {
      return FoldAngle.degrees(180);
    }
    boolean beside = isPinched(row, column) || isPinched(row, next);
    return beside || (pinched && !alternate) || !stand.stands(row)
        ? FoldAngle.TO_SOLVE
        : FoldAngle.degrees(stand.fold(row, column));
  }

  Sense columnSense(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, false));
    if (told != null && told.sense() != null) {
      return told.sense();
    }
    boolean outward = isOut(row, column) || isOut(row, (column + 1) % n);
    return outward ? Sense.VALLEY : Sense.MOUNTAIN;
  }

  private boolean isOut(int row, int column) {
    Pinch way =
        isHalved(row, column) ? Pinching.way(wrap, row, column) : wrap.cells[row][column].gusset;
    return way == Pinch.OUT;
  }

  /** The score above a cell. */
  FoldAngle row(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, true));
    if (told != null) {
      return told.angle();
    }
    if (isHooked(row, column) || isHooked(row + 1, column)) {
      return FoldAngle.TO_SOLVE;
    }
    if (standsOnRidge(row, column)) {
      return isRidge(row, column, true) ? upright(row, true) : upright(row + 1, false);
    }
    if (isHalved(row, column) && isHalved(row + 1, column)) {
      return FoldAngle.degrees(0);
    }
    if (isRidge(row + 1, column, true) && isUnderFin(row + 1, (column + 1) % n)) {
      return shoulder(row, row + 1, column, true);
    }
    if (isRidge(row, column, false) && isUnderFin(row, (column + 1) % n)) {
      return shoulder(row + 1, row, column, false);
    }
    if (isUnderFin(row, column) && isHalved(row + 1, column)) {
      return upright(row, true);
    }
    if (isUnderFin(row + 1, column) && isHalved(row, column)) {
      return upright(row + 1, false);
    }
    boolean tabBelow = wrap.cells[row][column].tab != null;
    boolean tabAbove = wrap.cells[row + 1][column].tab != null;
    if (!tabBelow && !tabAbove) {
      return pinched || !stand.stands(row) || !stand.stands(row + 1)
          ? FoldAngle.TO_SOLVE
          : FoldAngle.degrees(Math.abs(bend(row, column)));
    }
    int wall = tabAbove ? row : row + 1;
    return pinched ? leaningRim(wall, tabAbove) : level(wall, column, tabAbove);
  }

  /** Whether a cell is hooked to another: how far it leans over is found from that. */
  private boolean isHooked(int row, int column) {
    return wrap.flaps.stream()
        .anyMatch(
            f ->
                f instanceof CellFlap.Hook h
                    && (isAt(h.cell(), row, column) || isAt(h.other(), row, column)));
  }

  /** How far a row leans in over the one below it, in degrees; below 0 out. */
  private double bend(int row, int column) {
    return stand.lean(row, column) - stand.lean(row + 1, column);
  }

  /** The fold that brings a tab level on a wall that leans: it turns by as much less or more. */
  private FoldAngle level(int wall, int column, boolean atTop) {
    return stand.stands(wall)
        ? FoldAngle.degrees(90 + (atTop ? 1 : -1) * stand.lean(wall, column))
        : FoldAngle.TO_SOLVE;
  }

  /** The score between the lowest row and a floor: square where the walls stand upright. */
  FoldAngle floor(int column) {
    return pinched && !alternate ? FoldAngle.TO_SOLVE : level(0, column, false);
  }

  Sense rowSense(int row, int column) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(row, column, true));
    if (told != null && told.sense() != null) {
      return told.sense();
    }
    boolean opens = !pinched && stand.stands(row) && stand.stands(row + 1) && bend(row, column) < 0;
    boolean tab = wrap.cells[row][column].tab != null || wrap.cells[row + 1][column].tab != null;
    return standsOnRidge(row, column) || (opens && !tab) ? Sense.VALLEY : Sense.MOUNTAIN;
  }

  /**
   * Whether the score above a cell is that between a panel and half of a fin: of four columns the
   * two beside it are pinched there, so that those between lean together to a ridge, and the halves
   * of the fin lie on each other.
   */
  private boolean standsOnRidge(int row, int column) {
    return isRidge(row, column, true) || isRidge(row + 1, column, false);
  }

  /**
   * Whether a cell is pinched under a fin that goes all round: its gussets lie flat against the
   * panels that lean together, and their sides along the ridge, for the sheet's corners at the
   * ridge's ends are whole.
   */
  private boolean isUnderFin(int row, int column) {
    boolean atTop = Pinching.isAtTop(wrap, row, column);
    int fin = atTop ? row + 1 : row - 1;
    return isPinched(row, column) && isRidge(row, (column + 1) % n, atTop) && isHalved(fin, column);
  }

  /**
   * @param panel the row of the panels that lean together
   */
  private boolean isRidge(int panel, int column, boolean atTop) {
    int fin = atTop ? panel + 1 : panel - 1;
    int next = (column + 1) % n;
    return n == 4
        && alternate
        && fin >= 0
        && fin < wrap.rows.size()
        && isPinched(panel, next)
        && Pinching.isAtTop(wrap, panel, next) == atTop
        && (isHalved(fin, next)
            || wrap.laps.stream()
                .anyMatch(
                    l ->
                        (isAt(l.under(), fin, column) && isAt(l.over(), fin, (column + 2) % n))
                            || (isAt(l.over(), fin, column)
                                && isAt(l.under(), fin, (column + 2) % n))));
  }

  private static boolean isAt(WrapCell cell, int row, int column) {
    return cell.row == row && cell.column == column;
  }

  /** The fold between a wall and the panel that leans in from it to a ridge. */
  private FoldAngle shoulder(int wall, int panel, int column, boolean atTop) {
    return stand.stands(wall) && upright(panel, atTop) instanceof FoldAngle.Known in
        ? FoldAngle.degrees(in.degrees() + (atTop ? 1 : -1) * stand.lean(wall, column))
        : FoldAngle.TO_SOLVE;
  }

  /** The fold that stands a fin upright: as far out as the panel under it leans in. */
  private FoldAngle upright(int row, boolean atTop) {
    return leaningRim(row, atTop) instanceof FoldAngle.Known level
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
      return level(wallRow, 1 - first, tabAbove);
    }
    boolean atTop = Pinching.isAtTop(wrap, wallRow, first);
    double waist = inner(atTop ? wallRow : wallRow + 1, 1 - first, false);
    double rim = inner(atTop ? wallRow + 1 : wallRow, 1 - first, true);
    double lean = (waist - rim) / wrap.grid().height(wallRow, 1 - first);
    double sign = atTop == tabAbove ? -1 : 1;
    // Walls that just reach lie level.
    return Math.abs(lean) <= 1 + RoundOff.PART
        ? FoldAngle.degrees(90 + sign * Math.toDegrees(Math.asin(Math.clamp(lean, -1, 1))))
        : FoldAngle.TO_SOLVE;
  }

  /**
   * The inner radius to a column's side of the polygon that a line of an alternately pinched wrap
   * makes, as above.
   *
   * @param pointed whether the other columns are pinched to points there
   */
  private double inner(int line, int column, boolean pointed) {
    List<Double> widths = wrap.grid().line(line);
    double turn = 2 * Math.PI / n;
    double other = pointed ? 0 : widths.get(1 - column % 2);
    return (widths.get(column) * Math.cos(turn) + other) / (2 * Math.sin(turn));
  }

  /**
   * How far a tab reaches from its fold to over the middle of the opening it is folded over, in mm.
   *
   * @param wall the row it hangs on
   * @param atTop whether on that row's upper edge
   * @return NaN where that is found only when the wrap is folded
   */
  double toMiddle(int wall, int column, boolean atTop) {
    int line = atTop ? wall + 1 : wall;
    if (!pinched) {
      return stand.stands(wall) ? stand.reach(line, column) : Double.NaN;
    }
    int first = isPinched(wall, 0) ? 0 : 1;
    boolean isEnd = isPinched(wall, first) && Pinching.isAtTop(wrap, wall, first) == atTop;
    return alternate ? inner(line, column, isEnd) : Double.NaN;
  }

  /**
   * How far each end of a rim tab is cut back, in mm, so that neighbours folded in lie over each
   * other as little as leaves them half as wide at the end as at the foot; and, where the opening
   * has corners sharper than a square's, at least so far that the tab stays within it.
   *
   * @param closing how far the side of the wall leans in there, in radians: neighbours lie by twice
   *     as much nearer each other in the sheet
   */
  double usualBevel(double width, double depth, double closing) {
    double sides = pinched ? n / 2.0 : n;
    double apart = depth * Math.tan(Math.toRadians(Math.min(60, 180 / sides)));
    double inside = depth * Math.tan(Math.toRadians(Math.clamp(360 / sides - 90, 0, 60)));
    double clear = depth * Math.tan(Math.max(0, closing));
    return Math.min(
        Math.max(Math.max(Math.min(apart, width / 4), inside), clear), width * WIDEST_BEVEL);
  }
}
