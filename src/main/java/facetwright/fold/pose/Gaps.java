package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.List;

/** How far joins and loops of scores miss. */
public final class Gaps {
  private Gaps() {}

  /**
   * @param caliper the card's thickness, in mm
   */
  public static List<JoinGap> of(Net net, List<Motion3> poses, double caliper) {
    List<JoinGap> gaps = new ArrayList<>();
    for (int j = 0; j < net.joins().size(); j++) {
      double miss =
          switch (net.joins().get(j)) {
            case Join.Seam(EdgeRef a, EdgeRef b, _, _, _) -> seam(net, poses, a, b);
            case Join.Lap lap ->
                Math.max(
                    Laps.missAt(net, poses, lap, caliper),
                    Tongue.of(net, lap).map(t -> t.miss(poses, caliper)).orElse(0.0));
          };
      gaps.add(new JoinGap(j, miss));
    }
    return gaps;
  }

  public static List<ScoreGap> tears(
      Net net, List<Motion3> poses, List<Integer> loops, ScoreAngles angles) {
    List<ScoreGap> tears = new ArrayList<>();
    for (int s : loops) {
      Score score = net.scores().get(s);
      double miss =
          angles.isKnown(s)
              ? strays(net, poses, s, angles.foldBy(s))
              : seam(net, poses, score.a(), score.b());
      tears.add(new ScoreGap(s, miss));
    }
    return tears;
  }

  /** How far the panel across stands from where this score alone would take it. */
  private static double strays(Net net, List<Motion3> poses, int score, double angle) {
    int staying = net.scores().get(score).a().panel();
    int across = net.scores().get(score).b().panel();
    Motion3 wanted = FoldTree.turn(net, score, staying, angle).then(poses.get(staying));
    return net.panels().get(across).outline().corners().stream()
        .mapToDouble(c -> wanted.apply(c).distance(poses.get(across).apply(c)))
        .max()
        .orElse(0);
  }

  /** Start on end and end on start: the larger distance. */
  public static double seam(Net net, List<Motion3> poses, EdgeRef a, EdgeRef b) {
    Segment2 one = net.segment(a);
    Segment2 two = net.segment(b);
    Motion3 p = poses.get(a.panel());
    Motion3 q = poses.get(b.panel());
    return Math.max(
        p.apply(one.from()).distance(q.apply(two.to())),
        p.apply(one.to()).distance(q.apply(two.from())));
  }
}
