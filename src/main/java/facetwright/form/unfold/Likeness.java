package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.form.FormEdge;
import facetwright.form.Mirror;
import facetwright.geom.AngleTolerance;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Optional;

/**
 * A way in which a layout lies on itself when it is turned or turned over: each facet falls on one
 * of the same shape, scores fall on scores and cuts on cuts.
 */
final class Likeness {
  private final FlatForm flat;
  private final boolean mirrored;
  private final int[] facet;
  private final int[] shift;

  private Likeness(FlatForm flat, boolean mirrored) {
    this.flat = flat;
    this.mirrored = mirrored;
    facet = new int[flat.count()];
    shift = new int[flat.count()];
    Arrays.fill(facet, Layout.NOT);
  }

  /** The one that carries a facet's first side onto a side of another, if there is one. */
  static Optional<Likeness> carrying(
      Layout layout, int from, int onto, int side, boolean mirrored) {
    Likeness likeness = new Likeness(layout.flat(), mirrored);
    return likeness.spread(layout, from, onto, side) ? Optional.of(likeness) : Optional.empty();
  }

  /** The one in which a layout lies on itself as its form does in a mirror, if it does. */
  static Optional<Likeness> in(Layout layout, Mirror mirror) {
    FlatForm flat = layout.flat();
    int from = layout.order().getFirst();
    int onto = mirror.facet(from);
    int side = flat.sideOf(mirror.edge(flat.edgesOf(from)[0]), onto);
    return carrying(layout, from, onto, side, /* mirrored= */ true);
  }

  /** Whether another is the same. */
  boolean isSame(Likeness other) {
    return mirrored == other.mirrored
        && Arrays.equals(facet, other.facet)
        && Arrays.equals(shift, other.shift);
  }

  private boolean spread(Layout layout, int from, int onto, int firstSide) {
    facet[from] = onto;
    shift[from] = firstSide;
    ArrayDeque<Integer> open = new ArrayDeque<>();
    open.add(from);
    while (!open.isEmpty()) {
      int f = open.remove();
      if (!sameShape(f)) {
        return false;
      }
      int[] edges = flat.edgesOf(f);
      for (int s = 0; s < edges.length; s++) {
        int image = flat.edgesOf(facet[f])[side(f, s)];
        int next = flat.across(edges[s], f);
        int nextImage = flat.across(image, facet[f]);
        if (layout.isScored(edges[s]) != layout.isScored(image)
            || (next == FormEdge.NONE) != (nextImage == FormEdge.NONE)) {
          return false;
        }
        if (next == FormEdge.NONE) {
          continue;
        }
        int turn =
            turn(next, flat.sideOf(edges[s], next), nextImage, flat.sideOf(image, nextImage));
        if (facet[next] == Layout.NOT) {
          facet[next] = nextImage;
          shift[next] = turn;
          open.add(next);
        } else if (facet[next] != nextImage || shift[next] != turn) {
          return false;
        }
      }
    }
    return true;
  }

  private int turn(int of, int side, int image, int imageSide) {
    int n = flat.outline(of).size();
    return flat.outline(image).size() != n
        ? Layout.NOT
        : Math.floorMod(mirrored ? imageSide + side : imageSide - side, n);
  }

  private boolean sameShape(int f) {
    Polygon2 one = flat.outline(f);
    Polygon2 other = flat.outline(facet[f]);
    if (one.size() != other.size() || flat.openings(f).size() != flat.openings(facet[f]).size()) {
      return false;
    }
    for (int s = 0; s < one.size(); s++) {
      int t = side(f, s);
      // The corner where a side begins is, mirrored, the one where its image ends.
      double angle = flat.angle(facet[f], mirrored ? t + 1 : t);
      if (!LengthTolerance.FINE.same(flat.sideLength(f, s), flat.sideLength(facet[f], t))
          || Math.abs(flat.angle(f, s) - angle) > AngleTolerance.FINE.radians()) {
        return false;
      }
    }
    return true;
  }

  private int side(int f, int s) {
    return Math.floorMod(mirrored ? shift[f] - s : shift[f] + s, flat.outline(f).size());
  }

  boolean isMirrored() {
    return mirrored;
  }

  /** The facet that a facet falls on. */
  int facet(int f) {
    return facet[f];
  }

  /** The edge that an edge falls on. */
  int edge(int e) {
    int f = flat.edge(e).left();
    return flat.edgesOf(facet[f])[side(f, flat.sideOf(e, f))];
  }

  /** Whether the same is said of the tab along an edge and along the one that it falls on. */
  boolean keepsSaid(int edge) {
    Optional<EdgeTab> mine = flat.tab(edge);
    Optional<EdgeTab> its = flat.tab(edge(edge));
    boolean sameWay = flat.edge(edge(edge)).left() == facet(flat.edge(edge).left());
    return mine.isEmpty()
        ? its.isEmpty()
        : its.isPresent()
            && its.get()
                .isLike(
                    sameWay ? mine.get().bearer() : mine.get().bearer().fromAcross(), mine.get());
  }

  /** What tells one of a layout from another: where it carries the first side of one facet. */
  record Key(int facet, int side, boolean mirrored) {}

  Key key(int root) {
    return new Key(facet[root], side(root, 0), mirrored);
  }

  /** That of this after another. */
  Key keyAfter(Likeness first, int root) {
    int between = first.facet[root];
    return new Key(facet[between], side(between, first.side(root, 0)), mirrored != first.mirrored);
  }

  /** Whether it carries every facet's place half round, so that opposite ones change places. */
  boolean isHalfTurn(int root) {
    return !mirrored && keyAfter(this, root).equals(identity().key(root)) && !isIdentity();
  }

  private Likeness identity() {
    Likeness none = new Likeness(flat, false);
    for (int f = 0; f < facet.length; f++) {
      none.facet[f] = f;
    }
    return none;
  }

  boolean isIdentity() {
    return !mirrored && facet[0] == 0 && shift[0] == 0;
  }
}
