package facetwright.check.closing;

import facetwright.fold.making.Bodies;
import facetwright.geom.LengthTolerance;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A row of a wrap, every second column of which is pinched to a point, all walls alike: what
 * geometry asks of it.
 *
 * <p>At the waist the walls, u wide, and the pinched columns, v wide, make an equiangular polygon
 * of 2m sides; at the rim the walls alone make a regular one of m sides. Let θ = π/m. A wall of
 * length h leans in by v/(2·sin θ), so none is shorter. The middle of a pinched column leads from
 * the waist to the point, which is v/2 from the corner of the rim; seen from the waist that corner
 * lies D = v/(2·tan θ) farther in and H = √(h² − v²/4 − D²) higher. As h² is the square of the way
 * to the corner and of v/2, the middle rises β − α from level where the point goes in, β + α where
 * it goes out, with tan β = H/D and sin α = v/(2h). (All elementary; the least length at which a
 * point that goes in comes no lower than the waist, β = α, is (D + √(D² + v²))/2.)
 *
 * @param first its first wall, an index in the net
 * @param pinched how many columns are pinched: m
 * @param wall how wide the others are: u, in mm
 * @param column how wide they are: v, in mm
 * @param length of the walls: h, in mm
 * @param isInward whether the points go in
 */
record PinchedRow(
    int first, int pinched, double wall, double column, double length, boolean isInward) {
  /** Shorter by less than this is not shorter: a length told in hundredths is no nearer. */
  static final LengthTolerance NOTHING = new LengthTolerance(5.01e-3);

  /** Lengths that differ by less are alike. */
  private static final LengthTolerance SAME = LengthTolerance.FINE;

  private static final int HALVINGS = 60;

  /** What is gathered of a row. */
  private static final class Draft {
    private final Set<Integer> walls = new LinkedHashSet<>();
    private final List<Double> heights = new ArrayList<>();
    private final List<Double> widths = new ArrayList<>();
    private final List<Double> columns = new ArrayList<>();
    private final Set<Sense> beside = new LinkedHashSet<>();

    private boolean isAlike() {
      return columns.size() >= 3
          && heights.size() == 2 * columns.size()
          && walls.size() == columns.size()
          && beside.size() == 1
          && alike(heights)
          && alike(widths)
          && alike(columns);
    }

    private static boolean alike(List<Double> lengths) {
      return lengths.stream().allMatch(l -> Math.abs(l - lengths.getFirst()) <= SAME.mm());
    }

    private PinchedRow row() {
      return new PinchedRow(
          walls.iterator().next(),
          columns.size(),
          widths.getFirst(),
          columns.getFirst(),
          heights.getFirst(),
          beside.contains(Sense.MOUNTAIN));
    }
  }

  /** Two rows that meet at one waist. */
  record Pair(PinchedRow one, PinchedRow two) {}

  /**
   * All rows whose columns are alike, and which of them meet at a waist.
   *
   * @param rows in the order of their panels
   * @param pairs of them
   */
  record Found(List<PinchedRow> rows, List<Pair> pairs) {
    Found {
      rows = List.copyOf(rows);
      pairs = List.copyOf(pairs);
    }
  }

  static Found all(Net net) {
    if (net.panels().stream().noneMatch(p -> p.role() == PanelRole.GUSSET)) {
      return new Found(List.of(), List.of());
    }
    List<Meeting> meetings = Meeting.all(net);
    int[] root = Meeting.rows(net, meetings);
    Map<Integer, Draft> drafts = new LinkedHashMap<>();
    for (Meeting m : meetings) {
      if (m.isOfGusset(net)) {
        gather(net, m, drafts.computeIfAbsent(Bodies.find(root, m.a().panel()), _ -> new Draft()));
      }
    }
    for (Score score : net.scores()) {
      Draft draft = drafts.get(Bodies.find(root, score.a().panel()));
      Meeting m = new Meeting(score.a(), score.b());
      if (draft != null && m.isOfGusset(net) && draft.walls.contains(m.beside(net).panel())) {
        draft.beside.add(score.sense());
      }
    }
    Map<Integer, PinchedRow> rows = new LinkedHashMap<>();
    drafts.forEach(
        (row, draft) -> {
          if (draft.isAlike()) {
            rows.put(row, draft.row());
          }
        });
    Set<Pair> pairs = new LinkedHashSet<>();
    for (Meeting m : meetings) {
      PinchedRow one = rows.get(Bodies.find(root, m.a().panel()));
      PinchedRow two = rows.get(Bodies.find(root, m.b().panel()));
      if (one != null && two != null && !one.equals(two)) {
        pairs.add(one.first < two.first ? new Pair(one, two) : new Pair(two, one));
      }
    }
    return new Found(List.copyOf(rows.values()), List.copyOf(pairs));
  }

  private static void gather(Net net, Meeting m, Draft draft) {
    if (m.isOfGussets(net)) {
      draft.columns.add(2 * net.segment(m.a()).length());
      return;
    }
    EdgeRef side = m.beside(net);
    Panel wall = net.panels().get(side.panel());
    if (wall.role() == PanelRole.FACET && wall.outline().size() == 4) {
      draft.heights.add(net.segment(side).length());
      if (draft.walls.add(side.panel())) {
        draft.widths.add(wall.outline().side(side.edge() + 1).length());
      }
    }
  }

  private double turn() {
    return Math.PI / pinched;
  }

  /** The least length of walls that reach the rim, in mm. */
  double reach() {
    return column / (2 * Math.sin(turn()));
  }

  /** Whether its walls are too short to reach the rim. */
  boolean isShort() {
    return length < reach() - NOTHING.mm();
  }

  /** How far the middles of its pinched columns rise from level at the waist, in radians. */
  double rise() {
    return rise(length);
  }

  private double rise(double h) {
    double in = column / (2 * Math.tan(turn()));
    double up = Math.sqrt(Math.max(0, h * h - reach() * reach()));
    double point = Math.asin(Math.min(1, column / (2 * h)));
    return Math.atan2(up, in) + (isInward ? -point : point);
  }

  /**
   * The least length at which its middles rise by as much, in mm; not a number where none does.
   *
   * @param rise in radians
   */
  double lengthFor(double rise) {
    double low = reach();
    double high = low;
    for (int i = 0; i < HALVINGS && rise(high) < rise; i++) {
      high *= 2;
    }
    if (rise(high) < rise) {
      return Double.NaN;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (rise(middle) < rise) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** How far its points stand from the axis, in mm; below 0 where they are past it. */
  double room(double h) {
    double in = column / (2 * Math.tan(turn()));
    double waist = wall / (2 * Math.sin(turn())) + in;
    return waist - h * Math.cos(rise(h));
  }
}
