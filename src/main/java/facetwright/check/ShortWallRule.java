package facetwright.check;

import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Walls of a pinched wrap that do not reach from the waist in to the rim.
 *
 * <p>Of a row of equal columns every second one is pinched to a point, m of them, v wide. The
 * others make a ring of m sides at the rim. Seen from above each lies v/(2·sin(π/m)) farther in
 * than at the waist (elementary: of two lines that turn by 2π/m from each other each is that far
 * from where they are cut by a third, v long between them, that turns by as much to both). No wall
 * is shorter than that.
 *
 * <p>It keeps silent where the form closes, and on rows whose columns are not alike.
 */
final class ShortWallRule implements Rule {
  /** Shorter by less than this is the arithmetic's, in mm. */
  private static final double SAME = 1e-6;

  /** A row of walls pinched in turn. */
  private static final class Row {
    private final List<Integer> walls = new ArrayList<>();
    private final List<Double> heights = new ArrayList<>();
    private final List<Double> widths = new ArrayList<>();
    private final List<Double> pinched = new ArrayList<>();

    private boolean isAlike() {
      return pinched.size() >= 3
          && heights.size() == 2 * pinched.size()
          && walls.size() == pinched.size()
          && alike(heights)
          && alike(widths)
          && alike(pinched);
    }

    private static boolean alike(List<Double> lengths) {
      return lengths.stream().allMatch(l -> Math.abs(l - lengths.getFirst()) <= SAME);
    }

    /** The least length of its walls, in mm. */
    private double least() {
      return pinched.getFirst() / (2 * Math.sin(Math.PI / pinched.size()));
    }

    /** The widest that its pinched columns may be, in mm. */
    private double widest() {
      return 2 * heights.getFirst() * Math.sin(Math.PI / pinched.size());
    }

    private boolean isShort() {
      return isAlike() && heights.getFirst() < least() - SAME;
    }
  }

  @Override
  public List<Finding> find(Subject subject) {
    return rows(subject).stream().filter(Row::isShort).map(row -> finding(subject, row)).toList();
  }

  /** The least length of walls that are too short, in words; empty where none are. */
  static Optional<String> words(Subject subject) {
    return rows(subject).stream()
        .filter(Row::isShort)
        .findFirst()
        .map(row -> "Walls have to be " + Mm.atLeast(row.least()) + " long at least");
  }

  private static Finding finding(Subject subject, Row row) {
    int wall = row.walls.getFirst();
    return new Finding(
        "short-wall",
        Finding.Severity.ERROR,
        String.format(
            "The walls beside %s are %s long, too short to lean in so far that %d pinched columns"
                + " of %s close: they have to be %s long at least.",
            subject.named(wall),
            Mm.text(row.heights.getFirst()),
            row.pinched.size(),
            Mm.text(row.pinched.getFirst()),
            Mm.atLeast(row.least())),
        "Make the walls "
            + Mm.atLeast(row.least())
            + " long or longer, or the pinched columns "
            + Mm.atMost(row.widest())
            + " wide or narrower.",
        new Place.AtPanel(wall),
        subject.panel(wall).site());
  }

  private static List<Row> rows(Subject subject) {
    if (subject.folded().closes()) {
      return List.of();
    }
    Net net = subject.net();
    if (net.panels().stream().noneMatch(p -> p.role() == PanelRole.GUSSET)) {
      return List.of();
    }
    List<Meeting> meetings = Meeting.all(net);
    int[] root = Meeting.rows(net, meetings);
    Map<Integer, Row> rows = new LinkedHashMap<>();
    for (Meeting m : meetings) {
      Row row = rows.computeIfAbsent(Bodies.find(root, m.a().panel()), _ -> new Row());
      if (m.isOfGussets(net)) {
        row.pinched.add(2 * net.segment(m.a()).length());
      } else if (m.isOfGusset(net)) {
        EdgeRef side = m.beside(net);
        Panel wall = net.panels().get(side.panel());
        if (wall.role() == PanelRole.FACET && wall.outline().size() == 4) {
          row.heights.add(net.segment(side).length());
          if (!row.walls.contains(side.panel())) {
            row.walls.add(side.panel());
            row.widths.add(wall.outline().side(side.edge() + 1).length());
          }
        }
      }
    }
    return List.copyOf(rows.values());
  }
}
