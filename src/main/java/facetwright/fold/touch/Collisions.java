package facetwright.fold.touch;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Finds panels that pass through each other, or lie in one place though no layers allow it.
 *
 * <p>Touching is allowed everywhere and needs no list of who may touch whom: along scores and
 * joins, at welded corners, an edge on a face, a tab flat under its host, faces that a fold lays on
 * each other. Windows and holes are open: what reaches through one without meeting card is clear.
 *
 * <p>What it does not detect: what {@link Layers} does not; a form or part that lies wholly inside
 * another; the thickness of the card; strips narrower than about twice the tolerance.
 */
public final class Collisions {
  /** Reaching through by this much still counts as touching: 0.01 mm. */
  public static final LengthTolerance TOUCHING = new LengthTolerance(0.01);

  private Collisions() {}

  /**
   * What is wrong with a finished form: panels that pass through each other by more than {@link
   * #TOUCHING}, in the order of their panels; then those that lie in one place and can't.
   *
   * @param poses for each panel, the motion from its place in the flat net
   */
  public static List<Collision> of(Net net, List<Motion3> poses) {
    return made(net, poses, (_, _) -> true);
  }

  /** The same among some of the panels; where the others are does not count. */
  public static List<Collision> among(Net net, List<Motion3> poses, IntPredicate panels) {
    return made(net, poses, (a, b) -> panels.test(a) && panels.test(b));
  }

  private static List<Collision> made(
      Net net, List<Motion3> poses, BiPredicate<Integer, Integer> counts) {
    List<PosedPanel> placed = placed(net, poses);
    List<BoxTree.Pair> pairs = pairs(placed, Collision.HELD, counts);
    List<Collision> found = new ArrayList<>(passing(placed, pairs, TOUCHING));
    found.addAll(Layers.of(net, placed, pairs, Collision.HELD));
    return List.copyOf(found);
  }

  static List<PosedPanel> placed(Net net, List<Motion3> poses) {
    return IntStream.range(0, poses.size())
        .mapToObj(p -> PosedPanel.of(net.panels().get(p), poses.get(p)))
        .toList();
  }

  /** The pairs whose boxes, each grown by half of this, meet. */
  static List<BoxTree.Pair> pairs(
      List<PosedPanel> placed, double by, BiPredicate<Integer, Integer> counts) {
    List<BoxTree.Box> boxes =
        placed.stream().map(p -> BoxTree.Box.around(p.outline(), by / 2)).toList();
    return new BoxTree(boxes)
        .pairs().stream().filter(pair -> counts.test(pair.a(), pair.b())).toList();
  }

  /** Those that pass through each other by more than this, in the order of the pairs. */
  static List<Collision> passing(
      List<PosedPanel> placed, List<BoxTree.Pair> pairs, LengthTolerance touching) {
    List<Collision> found = new ArrayList<>();
    for (BoxTree.Pair pair : pairs) {
      Passing.between(pair.a(), placed.get(pair.a()), pair.b(), placed.get(pair.b()), touching)
          .ifPresent(found::add);
    }
    return List.copyOf(found);
  }
}
