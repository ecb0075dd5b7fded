package facetwright.fold.close;

import facetwright.fold.pose.Laps;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Laps of panels whose corners are being sought. */
final class SoughtLaps {
  private SoughtLaps() {}

  /** Whether every lap between panels sought has its panel on the other, where the points are. */
  static boolean lieOn(Net net, Unknowns unknowns, WeldedVertices welded, double[] x) {
    return net.joins().stream()
        .filter(
            j -> j instanceof Join.Lap l && unknowns.seeks(l.under()) && unknowns.seeks(l.over()))
        .map(Join.Lap.class::cast)
        .allMatch(l -> Laps.aside(net, l, seen(net, welded, x, l)) == 0);
  }

  /** The corners of the panel under, which may have to bend, as the panel over sees them. */
  static List<Vec3> seen(Net net, WeldedVertices welded, double[] x, Join.Lap lap) {
    Motion3 back = Settled.pose(welded, x, net, lap.over()).inverse();
    List<Vec3> seen = new ArrayList<>();
    for (int c = 0; c < net.panels().get(lap.under()).outline().size(); c++) {
      seen.add(back.apply(welded.place(x, lap.under(), c)));
    }
    return seen;
  }

  /**
   * How far inside the panel over the one under is to lie: a caliper, but nothing where the two
   * have a corner in common, for there a score gives, and nothing where scores that are folded
   * right over lead from one to the other: those lay all between them in one plane.
   */
  static double inside(Net net, WeldedVertices welded, Join.Lap lap, double caliper) {
    Set<Integer> host = new HashSet<>();
    for (int c = 0; c < net.panels().get(lap.over()).outline().size(); c++) {
      host.add(welded.point(lap.over(), c));
    }
    for (int c = 0; c < net.panels().get(lap.under()).outline().size(); c++) {
      if (host.contains(welded.point(lap.under(), c))) {
        return 0;
      }
    }
    return isReachedRightOver(net, lap) ? 0 : net.parts().caliperAt(lap.over(), caliper);
  }

  private static boolean isReachedRightOver(Net net, Join.Lap lap) {
    Set<Integer> reached = new HashSet<>(Set.of(lap.over()));
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Score score : net.scores()) {
        if (score.angle().isRightOver()
            && reached.contains(score.a().panel()) != reached.contains(score.b().panel())) {
          reached.add(score.a().panel());
          reached.add(score.b().panel());
          grows = true;
        }
      }
    }
    return reached.contains(lap.under());
  }
}
