package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Rows of alike walls that taper too much for their height. From one polygon of n sides to the
 * other, a and b wide, a wall leans in by the difference of their apothems, |a − b|/(2·tan π/n);
 * one that is less tall can't (elementary). So tall they lie flat.
 *
 * <p>It keeps silent where the form can be made, and on walls that are not all alike.
 */
final class SteepTaperRule implements CauseRule {
  private static final String NAME = "steep-taper";

  private static final LengthTolerance SAME = LengthTolerance.UNSEEN;

  /**
   * A row.
   *
   * @param first its first wall
   * @param walls how many
   * @param one how wide they are at the one end, in mm
   * @param other and at the other, in mm
   * @param height in mm
   */
  private record Row(int first, int walls, double one, double other, double height) {
    private double needed() {
      return Math.abs(one - other) / (2 * Math.tan(Math.PI / walls));
    }

    /** By how much the ends may differ, in mm. */
    private double mayDiffer() {
      return height * 2 * Math.tan(Math.PI / walls);
    }
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().canBeMade(subject.net())) {
      return List.of();
    }
    return rows(subject.net()).stream()
        .filter(r -> r.height < r.needed() - PinchedRow.NOTHING.mm())
        .map(r -> finding(subject, r))
        .toList();
  }

  private static Finding finding(Subject subject, Row row) {
    Message why =
        Message.of(
            "%s walls that taper from %s to %s have to be %s tall at least to lean in so far, and"
                + " are %s",
            row.walls,
            Value.length(Math.max(row.one, row.other)),
            Value.length(Math.min(row.one, row.other)),
            Value.atLeast(row.needed()),
            Value.length(row.height));
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            why.capital().plus("."),
            Message.of(
                "Make them %s tall or taller, or the narrow end %s wide or wider.",
                Value.atLeast(row.needed()),
                Value.atLeast(Math.max(row.one, row.other) - row.mayDiffer())),
            new Place.AtPanel(row.first),
            subject.siteBeside(row.first))
        .telling(why);
  }

  private static List<Row> rows(Net net) {
    Map<EdgeRef, EdgeRef> across = Map.of();
    Set<Integer> seen = new HashSet<>();
    List<Row> rows = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      OptionalInt end = end(net, p);
      if (end.isEmpty() || !seen.add(p)) {
        continue;
      }
      if (across.isEmpty()) {
        across = Meeting.across(net);
      }
      List<Integer> walls = round(net, across, new EdgeRef(p, end.getAsInt()));
      seen.addAll(walls);
      if (walls.size() >= 3) {
        Segment2 foot = net.segment(new EdgeRef(p, end.getAsInt()));
        Segment2 top = net.segment(new EdgeRef(p, (end.getAsInt() + 2) % 4));
        double height = Math.abs(foot.direction().cross(top.from().minus(foot.from())));
        rows.add(new Row(p, walls.size(), foot.length(), top.length(), height));
      }
    }
    return rows;
  }

  /** The walls from one round to it again, all alike; none where they do not lead round. */
  private static List<Integer> round(Net net, Map<EdgeRef, EdgeRef> across, EdgeRef first) {
    List<Integer> walls = new ArrayList<>();
    EdgeRef foot = first;
    do {
      walls.add(foot.panel());
      EdgeRef next = across.get(new EdgeRef(foot.panel(), (foot.edge() + 1) % 4));
      if (next == null || net.panels().get(next.panel()).outline().size() != 4) {
        return List.of();
      }
      foot = new EdgeRef(next.panel(), (next.edge() + 1) % 4);
      if (!isAlike(net, first, foot)) {
        return List.of();
      }
    } while (!foot.equals(first) && walls.size() <= net.panels().size());
    return foot.equals(first) ? walls : List.of();
  }

  private static boolean isAlike(Net net, EdgeRef one, EdgeRef other) {
    for (int e = 0; e < 4; e++) {
      double a = net.segment(new EdgeRef(one.panel(), (one.edge() + e) % 4)).length();
      double b = net.segment(new EdgeRef(other.panel(), (other.edge() + e) % 4)).length();
      if (!SAME.same(a, b)) {
        return false;
      }
    }
    return true;
  }

  /** The longer of a tapered wall's two parallel ends, its other sides alike; else empty. */
  private static OptionalInt end(Net net, int panel) {
    if (net.panels().get(panel).role() != PanelRole.FACET
        || net.panels().get(panel).outline().size() != 4) {
      return OptionalInt.empty();
    }
    for (int e = 0; e < 4; e++) {
      Segment2 foot = net.segment(new EdgeRef(panel, e));
      Segment2 right = net.segment(new EdgeRef(panel, (e + 1) % 4));
      Segment2 top = net.segment(new EdgeRef(panel, (e + 2) % 4));
      Segment2 left = net.segment(new EdgeRef(panel, (e + 3) % 4));
      boolean isTapered =
          SAME.same(right.length(), left.length())
              && foot.length() > top.length() + SAME.mm()
              && Math.abs(foot.direction().cross(top.direction())) * foot.length() < SAME.mm();
      if (isTapered) {
        return OptionalInt.of(e);
      }
    }
    return OptionalInt.empty();
  }
}
