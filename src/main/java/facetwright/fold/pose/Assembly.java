package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Puts folded pieces together by their joins. The main piece stays; then, again and again, the
 * piece with the most seams to what is already placed is fitted to it. What no join reaches starts
 * a body of its own.
 */
public final class Assembly {
  private final Net net;
  private final double caliper;
  private final int[] piece;
  private final List<Motion3> local;
  private final int[] body;
  private final Motion3[] moved;

  private Assembly(Net net, double caliper, List<Motion3> local, int[] piece) {
    this.net = net;
    this.caliper = caliper;
    this.piece = piece;
    this.local = local;
    int pieces = Arrays.stream(piece).max().orElse(-1) + 1;
    this.body = new int[pieces];
    this.moved = new Motion3[pieces];
    Arrays.fill(body, -1);
  }

  /**
   * What hangs together.
   *
   * @param poses where each panel is
   * @param bodies for each body its panels, that of the main piece first
   */
  public record Bodies(List<Motion3> poses, List<List<Integer>> bodies) {}

  /**
   * @param caliper by which a lap lies inside its panel, in mm
   */
  public static Bodies of(Net net, double caliper, List<Motion3> local, int[] piece, int main) {
    return new Assembly(net, caliper, local, piece).place(main);
  }

  private Bodies place(int main) {
    int bodies = 0;
    for (int seed = main; seed >= 0; seed = firstUnplaced()) {
      body[seed] = bodies;
      moved[seed] = Motion3.NONE;
      for (int next = nearest(bodies); next >= 0; next = nearest(bodies)) {
        moved[next] = fit(next, bodies);
        body[next] = bodies;
      }
      bodies++;
    }
    List<Motion3> poses = new ArrayList<>();
    List<List<Integer>> panels = new ArrayList<>();
    for (int b = 0; b < bodies; b++) {
      panels.add(new ArrayList<>());
    }
    for (int p = 0; p < piece.length; p++) {
      poses.add(local.get(p).then(moved[piece[p]]));
      panels.get(body[piece[p]]).add(p);
    }
    return new Bodies(List.copyOf(poses), panels.stream().map(List::copyOf).toList());
  }

  private int firstUnplaced() {
    for (int p = 0; p < body.length; p++) {
      if (body[p] < 0) {
        return p;
      }
    }
    return -1;
  }

  /** The unplaced piece with the most joins to this body, a seam counting more than any lap. */
  private int nearest(int toBody) {
    int[] votes = new int[body.length];
    for (Join join : net.joins()) {
      int a =
          switch (join) {
            case Join.Seam s -> piece[s.a().panel()];
            case Join.Lap l -> piece[l.under()];
          };
      int b =
          switch (join) {
            case Join.Seam s -> piece[s.b().panel()];
            case Join.Lap l -> piece[l.over()];
          };
      int weight = join instanceof Join.Seam ? net.joins().size() + 1 : 1;
      if (body[a] == toBody && body[b] < 0) {
        votes[b] += weight;
      } else if (body[b] == toBody && body[a] < 0) {
        votes[a] += weight;
      }
    }
    int best = -1;
    for (int p = 0; p < votes.length; p++) {
      if (votes[p] > (best < 0 ? 0 : votes[best])) {
        best = p;
      }
    }
    return best;
  }

  private Motion3 fit(int next, int toBody) {
    RigidFit fit = new RigidFit();
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, _, _, _)) {
        if (links(a.panel(), b.panel(), next, toBody)) {
          meet(fit, a, b);
        } else if (links(b.panel(), a.panel(), next, toBody)) {
          meet(fit, b, a);
        }
      }
    }
    net.joins().forEach(join -> Tongue.of(net, join).ifPresent(t -> through(fit, t, next, toBody)));
    if (!fit.isEmpty() && !fit.isLoose()) {
      return fit.motion();
    }
    boolean seamed = !fit.isEmpty();
    for (Join join : net.joins()) {
      switch (join) {
        case Join.Seam(EdgeRef a, EdgeRef b, int tab, _, _) -> {
          int like = tab == Join.Seam.NO_TAB ? a.panel() : tab;
          if (links(like, b.panel(), next, toBody)) {
            turnLike(fit, like, net.segment(a), b.panel(), net.segment(b).reversed());
          } else if (links(b.panel(), like, next, toBody)) {
            turnLike(fit, b.panel(), net.segment(b).reversed(), like, net.segment(a));
          }
        }
        case Join.Lap(int under, int over, Hold hold, _) -> {
          double inward = hold == Hold.TONGUE ? -1 : 1;
          if (links(under, over, next, toBody)) {
            lay(fit, under, over, -caliper * inward, seamed);
          } else if (links(over, under, next, toBody)) {
            lay(fit, over, under, caliper * inward, seamed);
          }
        }
      }
    }
    return fit.motion();
  }

  private boolean links(int panel, int other, int next, int toBody) {
    return piece[panel] == next && body[piece[other]] == toBody;
  }

  private Motion3 placed(int panel) {
    return local.get(panel).then(moved[piece[panel]]);
  }

  private void meet(RigidFit fit, EdgeRef side, EdgeRef partner) {
    Motion3 from = local.get(side.panel());
    Motion3 onto = placed(partner.panel());
    fit.pair(from.apply(net.segment(side).from()), onto.apply(net.segment(partner).to()));
    fit.pair(from.apply(net.segment(side).to()), onto.apply(net.segment(partner).from()));
  }

  private void through(RigidFit fit, Tongue tongue, int next, int toBody) {
    boolean isHost = links(tongue.host(), tongue.bearer(), next, toBody);
    if (isHost || links(tongue.bearer(), tongue.host(), next, toBody)) {
      int mine = isHost ? tongue.host() : tongue.bearer();
      int its = isHost ? tongue.bearer() : tongue.host();
      Segment2 own = isHost ? tongue.slot() : tongue.foot();
      Segment2 other = isHost ? tongue.foot() : tongue.slot();
      fit.pair(local.get(mine).apply(own.from()), placed(its).apply(other.to()));
      fit.pair(local.get(mine).apply(own.to()), placed(its).apply(other.from()));
    }
  }

  /** Asks for the same outside direction at the middle of two sides that meet. */
  private void turnLike(RigidFit fit, int panel, Segment2 at, int like, Segment2 likeAt) {
    Motion3 from = local.get(panel);
    Motion3 onto = placed(like);
    double reach = at.length();
    fit.pair(
        from.apply(at.middle()).plus(from.ez().times(reach)),
        onto.apply(likeAt.middle()).plus(onto.ez().times(reach)));
  }

  /**
   * Lays a panel on another.
   *
   * @param outside how far it lies outside the other, in mm
   */
  private void lay(RigidFit fit, int panel, int on, double outside, boolean seamed) {
    Motion3 from = local.get(panel);
    Motion3 onto = placed(on);
    Segment2 side = net.panels().get(panel).outline().side(0);
    Segment2 like = net.panels().get(on).outline().side(0);
    Vec3 a = from.apply(net.panels().get(panel).outline().centroid());
    Vec3 b = onto.apply(net.panels().get(on).outline().centroid()).plus(onto.ez().times(outside));
    double reach = side.length();
    if (!seamed) {
      fit.pair(a, b);
      fit.pair(
          a.plus(direction(from, side).times(reach)), b.plus(direction(onto, like).times(reach)));
    }
    fit.pair(a.plus(from.ez().times(reach)), b.plus(onto.ez().times(reach)));
  }

  private static Vec3 direction(Motion3 pose, Segment2 side) {
    return pose.apply(side.to()).minus(pose.apply(side.from())).unit();
  }
}
