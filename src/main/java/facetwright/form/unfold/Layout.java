package facetwright.form.unfold;

import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Facets laid out in the plane, each beside the one it hangs on. Pieces lie each in a plane of its
 * own. Facets are placed one by one; one that would overlap another of its piece is refused.
 */
final class Layout {
  static final int NOT = -1;

  private final FlatForm flat;
  private final Motion2[] motions;
  private final Polygon2[] outlines;
  private final Box2[] boxes;
  private final int[] piece;
  private final boolean[] scored;
  private final List<Integer> order = new ArrayList<>();
  private int pieces;

  Layout(FlatForm flat) {
    this.flat = flat;
    int n = flat.count();
    motions = new Motion2[n];
    outlines = new Polygon2[n];
    boxes = new Box2[n];
    piece = new int[n];
    Arrays.fill(piece, NOT);
    scored = new boolean[flat.form().edges().size()];
  }

  /**
   * What a layout hangs on: where it begins and which edges are scored. Layouts in one piece that
   * have these in common are alike.
   */
  record Tree(int start, BitSet scored) {}

  Tree way() {
    BitSet set = new BitSet();
    for (int e = 0; e < scored.length; e++) {
      set.set(e, scored[e]);
    }
    return new Tree(order.getFirst(), set);
  }

  FlatForm flat() {
    return flat;
  }

  /** Starts a new piece with a facet. */
  void start(int facet) {
    set(facet, Motion2.NONE, flat.outline(facet), pieces++);
  }

  /**
   * Hangs the facet across an edge on a facet already placed, unless it would overlap or the edge
   * has to be cut.
   */
  boolean hang(int edge, int onto) {
    if (flat.isCut(edge)) {
      return false;
    }
    int facet = flat.across(edge, onto);
    Motion2 motion = flat.beside(edge, facet).then(motions[onto]);
    Polygon2 outline = motion.apply(flat.outline(facet));
    if (overlaps(outline, piece[onto])) {
      return false;
    }
    set(facet, motion, outline, piece[onto]);
    scored[edge] = true;
    return true;
  }

  /**
   * Hangs two facets at once, which keep clear of each other too, or neither.
   *
   * @param onto the facet that the one across the first edge is hung on
   * @param other the second edge
   * @param otherOnto what the facet across it is hung on
   */
  boolean hangBoth(int edge, int onto, int other, int otherOnto) {
    if (flat.isCut(edge) || flat.isCut(other)) {
      return false;
    }
    int one = flat.across(edge, onto);
    int two = flat.across(other, otherOnto);
    Motion2 motionOne = flat.beside(edge, one).then(motions[onto]);
    Motion2 motionTwo = flat.beside(other, two).then(motions[otherOnto]);
    Polygon2 outlineOne = motionOne.apply(flat.outline(one));
    Polygon2 outlineTwo = motionTwo.apply(flat.outline(two));
    if (overlaps(outlineOne, piece[onto])
        || overlaps(outlineTwo, piece[onto])
        || Overlap.between(outlineOne, outlineTwo)) {
      return false;
    }
    set(one, motionOne, outlineOne, piece[onto]);
    set(two, motionTwo, outlineTwo, piece[onto]);
    scored[edge] = true;
    scored[other] = true;
    return true;
  }

  /** Where the facet across an edge would lie. */
  Vec2 middleIfHung(int edge, int onto) {
    int facet = flat.across(edge, onto);
    Motion2 motion = flat.beside(edge, facet).then(motions[onto]);
    return motion.apply(flat.middle(facet));
  }

  private boolean overlaps(Polygon2 outline, int inPiece) {
    Box2 box = outline.box();
    for (int other : order) {
      if (piece[other] == inPiece
          && boxes[other].meets(box)
          && Overlap.between(outlines[other], outline)) {
        return true;
      }
    }
    return false;
  }

  private void set(int facet, Motion2 motion, Polygon2 outline, int inPiece) {
    motions[facet] = motion;
    outlines[facet] = outline;
    boxes[facet] = outline.box();
    piece[facet] = inPiece;
    order.add(facet);
  }

  boolean isPlaced(int facet) {
    return piece[facet] != NOT;
  }

  boolean isComplete() {
    return order.size() == flat.count();
  }

  boolean isOnePiece() {
    return isComplete() && pieces == 1;
  }

  int pieces() {
    return pieces;
  }

  int piece(int facet) {
    return piece[facet];
  }

  boolean isScored(int edge) {
    return scored[edge];
  }

  Motion2 motion(int facet) {
    return motions[facet];
  }

  Polygon2 outline(int facet) {
    return outlines[facet];
  }

  Box2 box(int facet) {
    return boxes[facet];
  }

  /** The facets in the order in which they were placed. */
  List<Integer> order() {
    return List.copyOf(order);
  }

  /** The edges that are neither scored nor rim. */
  List<Integer> cuts() {
    List<Integer> cuts = new ArrayList<>();
    for (int e = 0; e < scored.length; e++) {
      if (!scored[e] && !flat.edge(e).isRim()) {
        cuts.add(e);
      }
    }
    return cuts;
  }
}
