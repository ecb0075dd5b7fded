package facetwright.fold.touch;

import facetwright.fold.FoldPath;
import facetwright.fold.FoldedForm;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * Finds panels that pass through each other.
 *
 * <p>Touching is allowed everywhere and needs no list of who may touch whom: along scores and
 * joins, at welded corners, an edge on a face, a tab flat under its host, faces that a fold lays on
 * each other. Windows and holes are open: what reaches through one without meeting card is clear.
 *
 * <p>What it does not detect: <em>layers</em> that lie in one plane but would have to change
 * places, as in a flat fold; a panel that goes through exactly along a score between two others,
 * each of which it then only touches; a form or part that lies wholly inside another; the thickness
 * of the card; strips narrower than about twice the tolerance.
 */
public final class Collisions {
  /** Reaching through by this much still counts as touching: 0.01 mm. */
  public static final LengthTolerance TOUCHING = new LengthTolerance(0.01);

  private Collisions() {}

  /** The pairs in a folded form, in the order of their panels, by {@link #TOUCHING}. */
  public static List<Collision> of(Net net, FoldedForm form) {
    return of(net, form.poses(), TOUCHING);
  }

  /**
   * The pairs where the panels are put by these motions, in the order of their panels.
   *
   * @param poses for each panel, the motion from its place in the flat net
   * @param touching how deep still counts as touching
   */
  public static List<Collision> of(Net net, List<Motion3> poses, LengthTolerance touching) {
    return of(net, poses, touching, (_, _) -> true);
  }

  /**
   * The first place on the way from flat to made where panels of one piece pass through each other.
   *
   * <p>Pairs of a glued tab and its host are left out, since a maker tucks tabs in by hand, and so
   * are pairs of different pieces, which are put together only when folded. What passes through and
   * comes free again between two samples is not seen; the answer says how far apart they were.
   */
  public static PathCollisions onPath(Net net, FoldPath path, PathSampling sampling) {
    return new PathSearch(net, path::at, sampling).search();
  }

  static List<Collision> of(
      Net net,
      List<Motion3> poses,
      LengthTolerance touching,
      BiPredicate<Integer, Integer> counts) {
    List<Placed> placed = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      placed.add(Placed.of(net.panels().get(p), poses.get(p)));
    }
    List<BoxTree.Box> boxes = placed.stream().map(p -> BoxTree.Box.around(p.outline())).toList();
    List<Collision> found = new ArrayList<>();
    for (BoxTree.Pair pair : new BoxTree(boxes).pairs()) {
      if (counts.test(pair.a(), pair.b())) {
        Passing.between(pair.a(), placed.get(pair.a()), pair.b(), placed.get(pair.b()), touching)
            .ifPresent(found::add);
      }
    }
    return List.copyOf(found);
  }
}
