package facetwright.fold.pose;

import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.Stance;
import java.util.ArrayList;
import java.util.List;

/**
 * Stands bodies on the table: the first as the net says, each further one beside it as it says of
 * that part, as its panels are called, or on its largest facet.
 */
public final class OnTable {
  /** Room between bodies that stand side by side, in mm. */
  public static final double BESIDE = 20;

  private final Net net;
  private final List<Motion3> poses;
  private final int upright;

  /**
   * @param poses where each panel is
   * @param upright the panel from which the piece that holds the stance was folded
   */
  public OnTable(Net net, List<Motion3> poses, int upright) {
    this.net = net;
    this.poses = poses;
    this.upright = upright;
  }

  /** Where each panel comes to, body by body. */
  public List<Motion3> stand(List<List<Integer>> bodies) {
    Motion3[] stood = new Motion3[net.panels().size()];
    double right = 0;
    for (int b = 0; b < bodies.size(); b++) {
      List<Integer> panels = bodies.get(b);
      List<Vec3> points = Body.corners(net, poses, panels);
      Stance stance = b == 0 ? net.stance() : stance(panels);
      Motion3 motion = onStance(net, poses, stance, points, b == 0 ? upright : panels.getFirst());
      if (b == 0 && PopOut.is(net)) {
        motion = PopOut.facing(net, poses, motion, points);
      }
      Box2 box = Standing.seenFromAbove(points.stream().map(motion::apply).toList());
      if (b > 0) {
        double aside = right + BESIDE - box.minX();
        motion = motion.then(Standing.shift(new Vec3(aside, 0, 0)));
        right = aside + box.maxX();
      } else {
        right = box.maxX();
      }
      for (int p : panels) {
        stood[p] = poses.get(p).then(motion);
      }
    }
    return List.of(stood);
  }

  /** How a body stands that the net's own stance does not speak of. */
  private Stance stance(List<Integer> body) {
    return net.parts().all().stream()
        .filter(p -> body.containsAll(p.panels()))
        .map(Parts.Part::stance)
        .findFirst()
        .orElseGet(() -> Stance.asCalled(net, body, RootPanels.largest(net, body)));
  }

  /**
   * The motion that stands a body as its maker says.
   *
   * @param poses where each panel is
   * @param points all corners of the body
   * @param upright a panel whose outside faces up where the stance says nothing
   */
  public static Motion3 onStance(
      Net net, List<Motion3> poses, Stance stance, List<Vec3> points, int upright) {
    List<Vec3> ring = new ArrayList<>();
    for (Stance.Corner c : stance.ring()) {
      ring.add(
          poses.get(c.panel()).apply(net.panels().get(c.panel()).outline().corner(c.corner())));
    }
    Vec3 up = Standing.normal(ring);
    Vec3 along = ring.get(1).minus(ring.getFirst());
    double size = along.length() + ring.get(2).minus(ring.getFirst()).length();
    if (up.length() <= RoundOff.PART * size * size) {
      // A ring on one line, as round the waist of a wrap still flat: it lies outside up.
      Motion3 root = poses.get(upright);
      return Standing.of(points, root.ez(), root.ex());
    }
    return Standing.of(points, up, along);
  }
}
