package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.making.Bodies;
import facetwright.fold.pose.Closure;
import facetwright.message.Message;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.words.Mend;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Wraps of an odd number of columns pinched in turn: at one place two walls stand side by side with
 * no gusset between them. It keeps silent where the form closes all the same.
 */
public final class PinchedInTurnRule implements Rule {

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() == Closure.CLOSES) {
      return List.of();
    }
    Net net = subject.net();
    List<Meeting> meetings = Meeting.all(net);
    boolean[][] toGusset = new boolean[net.panels().size()][];
    for (int p = 0; p < toGusset.length; p++) {
      toGusset[p] = new boolean[net.panels().get(p).outline().size()];
    }
    int[] row = Meeting.rows(net, meetings);
    for (Meeting m : meetings) {
      toGusset[m.a().panel()][m.a().edge()] = Meeting.isGusset(net, m.b());
      toGusset[m.b().panel()][m.b().edge()] = Meeting.isGusset(net, m.a());
    }
    List<Meeting> beside =
        meetings.stream()
            .filter(m -> isBeside(toGusset, m.a()) && isBeside(toGusset, m.b()))
            .toList();
    beside.forEach(m -> Bodies.unite(row, m.a().panel(), m.b().panel()));
    Map<Integer, List<Meeting>> rows = new LinkedHashMap<>();
    beside.forEach(
        m -> rows.computeIfAbsent(Bodies.find(row, m.a().panel()), _ -> new ArrayList<>()).add(m));
    List<Finding> found = new ArrayList<>();
    for (Map.Entry<Integer, List<Meeting>> one : rows.entrySet()) {
      int pinched = pinched(net, meetings, row, one.getKey());
      int columns = columns(net, row, one.getKey());
      if (one.getValue().size() == 1 && pinched >= 2 && columns == 2 * pinched + 1) {
        found.add(finding(subject, one.getValue().getFirst(), columns));
      }
    }
    return found;
  }

  private static Finding finding(Subject subject, Meeting walls, int columns) {
    boolean sways = subject.folded().closure() == Closure.NOT_SOLVED;
    return new Finding(
        "pinched-in-turn",
        Finding.Severity.WARNING,
        Message.of(
            "%s and %s stand side by side with no gusset between them: every second column is"
                + " pinched, and %s columns are an odd number.%s",
            subject.named(walls.a().panel()),
            subject.named(walls.b().panel()),
            columns,
            sways ? " Nothing holds the form in one shape: it can be pushed askew." : ""),
        Message.of("Use an even number of columns: %s or %s.", columns - 1, columns + 1),
        new Place.AtPanel(walls.a().panel()),
        subject.panel(walls.a().panel()).site(),
        List.of(
            new Mend.Value("columns", 0, List.of(), Integer.toString(columns + 1)),
            new Mend.Value("columns", 0, List.of(), Integer.toString(columns - 1))));
  }

  /** Whether a side is the one across a wall from its gusset. */
  private static boolean isBeside(boolean[][] toGusset, EdgeRef side) {
    boolean[] sides = toGusset[side.panel()];
    int n = sides.length;
    int e = side.edge();
    if (n < 4 || sides[e] || sides[(e + 1) % n] || sides[Math.floorMod(e - 1, n)]) {
      return false;
    }
    return IntStream.range(0, n).anyMatch(i -> sides[i]);
  }

  private static int pinched(Net net, List<Meeting> meetings, int[] row, int root) {
    return (int)
        meetings.stream()
            .filter(m -> Bodies.find(row, m.a().panel()) == root)
            .filter(m -> m.isOfGussets(net))
            .count();
  }

  /** Walls and the middles of pinched columns: all facets of the row. */
  private static int columns(Net net, int[] row, int root) {
    return (int)
        IntStream.range(0, row.length)
            .filter(p -> Bodies.find(row, p) == root)
            .filter(p -> net.panels().get(p).role() == PanelRole.FACET)
            .count();
  }
}
