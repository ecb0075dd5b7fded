package facetwright.net;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A panel with its openings and how much card they should leave.
 *
 * @param outline the panel's
 * @param keep for each of its sides, how far openings keep from it, in mm
 */
public record Clearance(Polygon2 outline, List<Opening> openings, List<Double> keep) {
  /** Card to leave between an opening and the edge, in mm; common practice, no source. */
  public static final double FROM_EDGE = 3;

  /** Card to leave between a score and an opening, in mm; common practice, no source. */
  public static final double FROM_SCORE = 5;

  /** Card to leave between two openings when one is changed, in mm. */
  private static final double BETWEEN = FROM_EDGE;

  public Clearance {
    openings = List.copyOf(openings);
    keep = List.copyOf(keep);
  }

  /** All panels of a net. */
  public static List<Clearance> all(List<Panel> panels, List<Score> scores) {
    Set<EdgeRef> scored = new HashSet<>();
    scores.forEach(s -> scored.addAll(List.of(s.a(), s.b())));
    return IntStream.range(0, panels.size()).mapToObj(p -> of(panels.get(p), p, scored)).toList();
  }

  private static Clearance of(Panel panel, int index, Set<EdgeRef> scored) {
    return new Clearance(
        panel.outline(),
        panel.openings(),
        IntStream.range(0, panel.outline().size())
            .mapToObj(e -> scored.contains(new EdgeRef(index, e)) ? FROM_SCORE : FROM_EDGE)
            .toList());
  }

  /** A facet all of whose sides may come to be scored. */
  public static Clearance scoredRound(Polygon2 outline, List<Opening> openings) {
    return new Clearance(
        outline, openings, outline.corners().stream().map(_ -> FROM_SCORE).toList());
  }

  /** Whether the card left between an opening and a side is enough. */
  public static boolean isEnough(double room, double least) {
    return room >= least - LengthTolerance.FINE.mm();
  }

  /** Whether an opening in the place of another of the panel's leaves enough card all round. */
  boolean allows(int index, Opening instead) {
    for (int e = 0; e < keep.size(); e++) {
      if (!isEnough(instead.room(outline.side(e)), keep.get(e))) {
        return false;
      }
    }
    return outline.contains(instead.place())
        && IntStream.range(0, openings.size())
            .filter(o -> o != index)
            .allMatch(o -> isApart(openings.get(o), instead, openings.get(index)));
  }

  /**
   * How far, in mm, the edge of an opening must be moved at least to leave enough card to the
   * sides; 0 where it leaves enough.
   */
  double lack(Opening opening) {
    double most = 0;
    double nearest = Double.POSITIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (int e = 0; e < keep.size(); e++) {
      double room = opening.room(outline.side(e));
      most = Math.max(most, keep.get(e) - room);
      nearest = Math.min(nearest, room);
      least = Math.min(least, keep.get(e));
    }
    // From outside it has to come in first.
    double lack =
        nearest > 0 && !outline.contains(opening.place()) ? Math.max(most, nearest + least) : most;
    return Math.max(0, lack - LengthTolerance.FINE.mm());
  }

  /** Whether two openings lie well apart, or no nearer than they did. */
  private static boolean isApart(Opening other, Opening instead, Opening was) {
    if (isClearlyApart(other, instead, BETWEEN)) {
      return true;
    }
    double between = between(other, instead);
    double before = between(other, was);
    return isEnough(between, BETWEEN) || (before > 0 && isEnough(between, before));
  }

  /** Whether an opening in the place of another meets one that the other does not. */
  boolean isInTheWay(int index, Opening instead) {
    return IntStream.range(0, openings.size())
        .filter(o -> o != index)
        .mapToObj(openings::get)
        .anyMatch(
            o ->
                !isClearlyApart(o, instead, LengthTolerance.FINE.mm())
                    && between(o, instead) == 0
                    && between(o, openings.get(index)) > 0);
  }

  /**
   * Whether two openings lie so far apart that their boxes tell; two holes are reckoned at once.
   */
  private static boolean isClearlyApart(Opening a, Opening b, double by) {
    boolean holes = a instanceof Opening.Hole && b instanceof Opening.Hole;
    return !holes && !a.outline().box().grown(by).meets(b.outline().box());
  }

  private static double between(Opening a, Opening b) {
    if (a instanceof Opening.Hole one && b instanceof Opening.Hole two) {
      double apart = one.centre().distance(two.centre());
      return Math.max(0, apart - (one.diameter() + two.diameter()) / 2);
    }
    return Planar.polygon(a.outline()).distance(Planar.polygon(b.outline()));
  }
}
