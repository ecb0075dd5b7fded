package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.form.Form;
import facetwright.form.FormEdge;
import facetwright.form.Sides;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.backing.Backings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A form's facets laid flat one by one, with what borders on each side. */
final class FlatForm {
  private final Form form;
  private final List<Polygon2> outlines = new ArrayList<>();
  private final boolean[] convex;
  private final List<List<Polygon2>> openings;
  private final Vec2[] middles;

  /** By edge, first for its left facet, then for its right; found where they are needed. */
  private final Motion2[][] beside;

  private final int[][] edgeOfSide;
  private final double size;

  /** By facet; found where they are needed, for they are asked for again and again. */
  private final double[][] angles;

  private final double[][] lengths;
  private final List<Optional<EdgeTab>> tabs;
  private final boolean[] cut;

  FlatForm(Form form) {
    this.form = form;
    edgeOfSide = Sides.edgeOfSide(form);
    double sum = 0;
    for (int f = 0; f < form.facets().size(); f++) {
      outlines.add(form.flat(f));
      sum += outlines.getLast().area();
    }
    size = Math.sqrt(sum);
    convex = new boolean[outlines.size()];
    middles = new Vec2[outlines.size()];
    for (int f = 0; f < convex.length; f++) {
      convex[f] = outlines.get(f).isConvex();
      middles[f] = outlines.get(f).centroid();
    }
    tabs = form.edges().stream().map(this::told).toList();
    cut = new boolean[form.edges().size()];
    for (int e = 0; e < cut.length; e++) {
      cut[e] = tab(e).map(EdgeTab::isCut).orElse(false);
    }
    angles = new double[outlines.size()][];
    lengths = new double[outlines.size()][];
    beside = new Motion2[form.edges().size()][2];
    openings =
        form.facets().stream()
            .map(facet -> facet.openings().stream().map(Backings::kept).toList())
            .toList();
  }

  Form form() {
    return form;
  }

  int count() {
    return outlines.size();
  }

  /** The side of a square as large as all facets together: a measure to compare lengths with. */
  double size() {
    return size;
  }

  Polygon2 outline(int facet) {
    return outlines.get(facet);
  }

  /** The angle inside a facet at a corner, in radians; corners count on round. */
  double angle(int facet, int corner) {
    Polygon2 outline = outlines.get(facet);
    if (angles[facet] == null) {
      angles[facet] = IntStream.range(0, outline.size()).mapToDouble(outline::angle).toArray();
    }
    return angles[facet][Math.floorMod(corner, outline.size())];
  }

  /** How long a side of a facet is, in mm. */
  double sideLength(int facet, int side) {
    Polygon2 outline = outlines.get(facet);
    if (lengths[facet] == null) {
      lengths[facet] =
          IntStream.range(0, outline.size()).mapToDouble(s -> outline.side(s).length()).toArray();
    }
    return lengths[facet][side];
  }

  /** The centre of a facet's area. */
  Vec2 middle(int facet) {
    return middles[facet];
  }

  boolean isConvex(int facet) {
    return convex[facet];
  }

  /** What is cut out of a facet, in its flat frame. */
  List<Polygon2> openings(int facet) {
    return openings.get(facet);
  }

  FormEdge edge(int edge) {
    return form.edges().get(edge);
  }

  double length(int edge) {
    return form.length(edge(edge));
  }

  /** The edges round a facet, side by side. */
  int[] edgesOf(int facet) {
    return edgeOfSide[facet].clone();
  }

  /** What was said of the tab along an edge, told from its left facet. */
  Optional<EdgeTab> tab(int edge) {
    return tabs.get(edge);
  }

  private Optional<EdgeTab> told(FormEdge e) {
    return form.facets().get(e.left()).tabs().stream()
        .filter(t -> t.side() == e.leftSide())
        .findFirst();
  }

  /** Whether an edge has to be cut. */
  boolean isCut(int edge) {
    return cut[edge];
  }

  /** Whether any edge has to be cut. */
  boolean isAnyCut() {
    for (boolean isCut : cut) {
      if (isCut) {
        return true;
      }
    }
    return false;
  }

  /** Whether the fold along an edge stays a hinge. */
  boolean isHinge(int edge) {
    return tab(edge).map(EdgeTab::isHinge).orElse(false);
  }

  /** The facet across an edge, or {@link FormEdge#NONE} at the rim. */
  int across(int edge, int facet) {
    FormEdge e = edge(edge);
    return e.left() == facet ? e.right() : e.left();
  }

  int sideOf(int edge, int facet) {
    FormEdge e = edge(edge);
    return e.left() == facet ? e.leftSide() : e.rightSide();
  }

  Segment2 side(int edge, int facet) {
    return outlines.get(facet).side(sideOf(edge, facet));
  }

  /** The motion that lays a facet's outline beside the facet across an edge, both flat. */
  Motion2 beside(int edge, int facet) {
    int place = edge(edge).left() == facet ? 0 : 1;
    if (beside[edge][place] == null) {
      beside[edge][place] = motionBeside(edge, facet);
    }
    return beside[edge][place];
  }

  private Motion2 motionBeside(int edge, int facet) {
    Segment2 mine = side(edge, facet);
    Segment2 other = side(edge, across(edge, facet));
    // Middle on middle halves what little two flattened facets differ in the length of the edge.
    Motion2 turn = Motion2.carrying(mine.from(), mine.to(), other.to(), other.from());
    return turn.then(Motion2.shift(other.middle().minus(turn.apply(mine.middle()))));
  }
}
