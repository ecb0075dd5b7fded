package facetwright.fold.close;

import facetwright.fold.pose.BaseCorners;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.JoinGap;
import facetwright.fold.pose.Laps;
import facetwright.fold.pose.RigidFit;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;

/**
 * What points that came to rest say of the panels: where they stand, how far they bend, how far
 * joins miss.
 */
public record Settled(
    Net net, Unknowns sought, WeldedVertices welded, LevenbergMarquardt.Rest rest) {

  /**
   * The outcome.
   *
   * @param angles of the scores there
   * @param starts how many starts were tried
   * @param exact whether it may close without any bend
   */
  Solved solved(ScoreAngles angles, int starts, SolverSettings settings, boolean exact) {
    List<Motion3> poses = new ArrayList<>();
    List<Double> strain = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      boolean seeks = sought.seeks(p);
      Motion3 pose = seeks ? pose(welded, rest.x(), net, p) : Motion3.NONE;
      poses.add(pose);
      strain.add(seeks ? strain(p, pose) : 0);
    }
    List<JoinGap> gaps = gaps(settings.card().caliper());
    double gap = gaps.stream().mapToDouble(JoinGap::mm).max().orElse(0);
    double most = strain.stream().mapToDouble(s -> s).max().orElse(0);
    Box2 box = net.box();
    double close = Closure.CLOSE_ENOUGH * Math.max(box.width(), box.height());
    Closure verdict =
        gap > close || most > settings.card().forgivenStrain()
            ? Closure.OPEN
            : exact && rest.worst() <= close ? Closure.CLOSES : Closure.CLOSES_WITH_STRAIN;
    return new Solved(
        angles, rest.iterations(), starts, rest.worst(), gaps, strain, poses, verdict);
  }

  /** The rigid pose of a panel that is nearest to where its corners are. */
  public static Motion3 pose(WeldedVertices welded, double[] x, Net net, int panel) {
    Polygon2 outline = net.panels().get(panel).outline();
    RigidFit fit = new RigidFit();
    for (int c = 0; c < outline.size(); c++) {
      fit.pair(
          new Vec3(outline.corner(c).x(), outline.corner(c).y(), 0), welded.place(x, panel, c));
    }
    return fit.motion();
  }

  private double strain(int panel, Motion3 pose) {
    Polygon2 outline = net.panels().get(panel).outline();
    double off = 0;
    for (int c = 0; c < outline.size(); c++) {
      off = Math.max(off, pose.apply(outline.corner(c)).distance(welded.place(rest.x(), panel, c)));
    }
    return off / BaseCorners.size(outline);
  }

  private List<JoinGap> gaps(double caliper) {
    List<JoinGap> gaps = new ArrayList<>();
    for (int j = 0; j < net.joins().size(); j++) {
      switch (net.joins().get(j)) {
        case Join.Seam(EdgeRef a, EdgeRef b, _, _, _) when sought.has(a) && sought.has(b) ->
            gaps.add(
                new JoinGap(
                    j,
                    Math.max(
                        place(a, 0).distance(place(b, 1)), place(a, 1).distance(place(b, 0)))));
        case Join.Lap lap
            when lap.hold() != Join.Hold.TONGUE
                && sought.seeks(lap.under())
                && sought.seeks(lap.over()) ->
            gaps.add(
                new JoinGap(
                    j, Laps.miss(net, lap, SoughtLaps.seen(net, welded, rest.x(), lap), caliper)));
        default -> {}
      }
    }
    return gaps;
  }

  private Vec3 place(EdgeRef side, int end) {
    return welded.place(rest.x(), side.panel(), side.edge() + end);
  }
}
