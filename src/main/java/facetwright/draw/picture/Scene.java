package facetwright.draw.picture;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Viewpoint;
import facetwright.fold.making.Action;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Faces;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import java.util.List;
import java.util.Optional;

/**
 * A piece between two actions, and what the next one does with it. Panels are told by their indices
 * in the whole net.
 *
 * @param sight of the panels that are shown
 * @param drawing of the panels that are shown
 * @param shown the panels of the drawing, in the order of its net
 * @param poses of all panels of the whole net
 * @param action what is done next; nothing where all is made
 * @param moves what is glued or closed, the first of which is marked
 * @param mouth where the piece is still open, seen from its middle; nothing where nothing goes in
 */
record Scene(
    Sight sight,
    FoldedDrawing drawing,
    List<Integer> shown,
    List<Motion3> poses,
    Optional<Action> action,
    List<Move> moves,
    Optional<Vec3> mouth) {
  Scene {
    shown = List.copyOf(shown);
    poses = List.copyOf(poses);
    moves = List.copyOf(moves);
  }

  /**
   * Something that is glued or closed.
   *
   * @param panel what moves
   * @param face of it that takes the glue
   * @param host the panel that it meets, if it is one
   * @param side of the host that it meets, if it is one
   * @param goal where its middle comes to lie on the host as that lies now
   * @param outward where its outside is turned when made
   */
  record Move(
      Bond bond,
      int panel,
      Faces.Face face,
      Optional<Integer> host,
      Optional<EdgeRef> side,
      Vec3 goal,
      Vec3 outward) {}

  /** The index of a panel in the drawing; less than 0 where it is not shown. */
  int local(int panel) {
    return shown.indexOf(panel);
  }

  /** The place of a panel of the drawing's net in space. */
  Vec3 at(int panel, Vec2 place) {
    return poses.get(panel).apply(place);
  }

  Vec3 middle(int panel) {
    return at(panel, drawing.net().panels().get(local(panel)).outline().centroid());
  }

  /** How much of a panel shows, see {@link Sight#share}. */
  double share(int panel, Viewpoint from) {
    return sight.share(local(panel), from);
  }

  /** The middle of all that is shown. */
  Vec3 middle() {
    Vec3 sum = Vec3.ZERO;
    for (int p : shown) {
      sum = sum.plus(middle(p));
    }
    return sum.times(1.0 / shown.size());
  }
}
