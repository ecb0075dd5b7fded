package facetwright.check.closing;

import facetwright.geom.AngleTolerance;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The columns of a row in the order in which they go round, at least one of them pinched.
 *
 * @param columns one after the other, the first a pinched one
 * @param height of the row, in mm
 * @param isHeld whether all are square and stand on square panels of the next row, so that the
 *     waist is a plane polygon
 * @param hasFin whether a fin goes on beyond the pinched columns
 */
record PinchedRound(List<Column> columns, double height, boolean isHeld, boolean hasFin) {
  PinchedRound {
    columns = List.copyOf(inOrder(columns));
  }

  /** The way round in which panels were made; rows with their waist on top are met backwards. */
  private static List<Column> inOrder(List<Column> columns) {
    long up =
        IntStream.range(1, columns.size())
            .filter(i -> columns.get(i).panel > columns.get(i - 1).panel)
            .count();
    if (2 * up >= columns.size() - 1) {
      return columns;
    }
    List<Column> back = new ArrayList<>(columns.subList(1, columns.size()).reversed());
    back.addFirst(columns.getFirst());
    return back;
  }

  /**
   * A column.
   *
   * @param panel the wall, or the middle of a pinched one
   * @param width at the waist, in mm
   */
  record Column(int panel, double width, boolean isPinched) {}

  /**
   * Columns that are not pinched, one beside the other.
   *
   * @param walls in order
   * @param length how wide they are together, in mm
   */
  record Run(List<Integer> walls, double length) {
    Run {
      walls = List.copyOf(walls);
    }
  }

  /** All of a net's, each once. */
  static List<PinchedRound> all(Net net) {
    if (net.panels().stream().noneMatch(p -> p.role() == PanelRole.GUSSET)) {
      return List.of();
    }
    return new Walk(net).all();
  }

  /** What stands between the pinched columns, in order. */
  List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    List<Column> run = new ArrayList<>();
    for (Column c : columns) {
      if (!c.isPinched) {
        run.add(c);
      } else if (!run.isEmpty()) {
        runs.add(run(run));
        run.clear();
      }
    }
    if (!run.isEmpty()) {
      runs.add(run(run));
    }
    return runs;
  }

  private static Run run(List<Column> columns) {
    return new Run(
        columns.stream().map(Column::panel).toList(),
        columns.stream().mapToDouble(Column::width).sum());
  }

  /** The first two pinched columns with no wall between them, by their middles; else empty. */
  Optional<List<Integer>> pinchedSideBySide() {
    int n = columns.size();
    return IntStream.range(0, n)
        .filter(i -> columns.get(i).isPinched && columns.get((i + 1) % n).isPinched)
        .mapToObj(i -> List.of(columns.get(i).panel, columns.get((i + 1) % n).panel))
        .findFirst();
  }

  int pinched() {
    return (int) columns.stream().filter(Column::isPinched).count();
  }

  /** Goes round the rows of a net. */
  private static final class Walk {
    private final Net net;
    private final Map<EdgeRef, EdgeRef> across;

    private Walk(Net net) {
      this.net = net;
      this.across = Meeting.across(net);
    }

    private List<PinchedRound> all() {
      Set<Integer> seen = new HashSet<>();
      List<PinchedRound> rounds = new ArrayList<>();
      for (int p = 0; p < net.panels().size(); p++) {
        int base = base(p);
        if (base >= 0 && !seen.contains(p)) {
          round(new EdgeRef(p, base))
              .ifPresent(
                  round -> {
                    round.columns.forEach(c -> seen.add(c.panel));
                    rounds.add(round);
                  });
        }
      }
      return rounds;
    }

    /** The waist side of the middle of a pinched column; below 0 of what is none. */
    private int base(int panel) {
      if (sides(panel) != 3 || net.panels().get(panel).role() != PanelRole.FACET) {
        return -1;
      }
      for (int e = 0; e < 3; e++) {
        if (isGusset(across.get(side(panel, e + 1))) && isGusset(across.get(side(panel, e + 2)))) {
          return e;
        }
      }
      return -1;
    }

    private boolean isGusset(EdgeRef side) {
      return side != null && Meeting.isGusset(net, side);
    }

    /** Beginning at a middle, by its waist side. */
    private Optional<PinchedRound> round(EdgeRef first) {
      List<Column> columns = new ArrayList<>();
      boolean isHeld = true;
      boolean hasFin = false;
      EdgeRef waist = first;
      double height = net.segment(right(first)).length();
      do {
        boolean isPinched = sides(waist.panel()) == 3;
        columns.add(new Column(waist.panel(), net.segment(waist).length(), isPinched));
        isHeld &= isHeld(waist);
        hasFin |= isPinched && isUnderFin(waist);
        EdgeRef next = across.get(right(waist));
        waist = next == null ? null : beyond(next);
      } while (waist != null && !waist.equals(first) && columns.size() <= net.panels().size());
      return first.equals(waist)
          ? Optional.of(new PinchedRound(columns, height, isHeld, hasFin))
          : Optional.empty();
    }

    /** The upright side at the right end of a column's waist side. */
    private EdgeRef right(EdgeRef waist) {
      EdgeRef side = side(waist.panel(), waist.edge() + 1);
      if (sides(waist.panel()) == 4) {
        return side;
      }
      EdgeRef gusset = across.get(side);
      return side(gusset.panel(), gusset.edge() + 1);
    }

    /** Whether the half of a fin stands on the half edge of its gusset. */
    private boolean isUnderFin(EdgeRef waist) {
      EdgeRef gusset = across.get(side(waist.panel(), waist.edge() + 1));
      EdgeRef beyond = across.get(side(gusset.panel(), gusset.edge() + 2));
      return beyond != null && !isGusset(beyond);
    }

    /** The waist side of the column whose left upright side this is; null where it is of none. */
    private EdgeRef beyond(EdgeRef left) {
      if (!Meeting.isGusset(net, left)) {
        return sides(left.panel()) == 4 ? side(left.panel(), left.edge() + 1) : null;
      }
      EdgeRef middle = across.get(side(left.panel(), left.edge() + 1));
      if (middle == null) {
        return null;
      }
      int base = base(middle.panel());
      return base == (middle.edge() + 1) % 3 ? new EdgeRef(middle.panel(), base) : null;
    }

    private boolean isHeld(EdgeRef waist) {
      EdgeRef foot = across.get(waist);
      return foot != null
          && isSquare(foot.panel())
          && (sides(waist.panel()) == 3 || isSquare(waist.panel()));
    }

    private boolean isSquare(int panel) {
      return net.panels().get(panel).role() == PanelRole.FACET
          && sides(panel) == 4
          && IntStream.range(0, 4)
              .allMatch(
                  e ->
                      Math.abs(
                              net.segment(side(panel, e))
                                  .direction()
                                  .dot(net.segment(side(panel, e + 1)).direction()))
                          < AngleTolerance.UNSEEN.radians());
    }

    private int sides(int panel) {
      return net.panels().get(panel).outline().size();
    }

    private EdgeRef side(int panel, int edge) {
      return new EdgeRef(panel, Math.floorMod(edge, sides(panel)));
    }
  }
}
