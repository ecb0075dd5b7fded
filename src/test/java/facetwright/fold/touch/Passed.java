package facetwright.fold.touch;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.util.List;

/** Panels that pass through each other, without a look at what lies in one place. */
final class Passed {
  private Passed() {}

  static List<Collision> in(Net net, List<Motion3> poses, LengthTolerance touching) {
    List<PosedPanel> placed = Collisions.placed(net, poses);
    return Collisions.passing(placed, Collisions.pairs(placed, 0, (_, _) -> true), touching);
  }
}
