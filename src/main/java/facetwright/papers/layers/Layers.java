package facetwright.papers.layers;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.backing.Backings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All layers of a net in groups.
 *
 * @param groups by paper, in the order in which the net first needs them
 * @param lost the names of panels whose layer the reveal leaves too little of to be cut
 */
public record Layers(List<LayerGroup> groups, List<String> lost) {
  /** A panel leaning less than this out of the level has no upright of its own. */
  private static final double LEVEL = 0.02;

  public Layers {
    groups = List.copyOf(groups);
    lost = List.copyOf(lost);
  }

  /**
   * Which side of the net is up does not matter where a paper has no direction. Where it has one,
   * its pattern stands upright on the folded form; on a level panel, and where the form is not
   * solved, it runs up the net as drawn.
   *
   * @param papers what is known of papers; one that a layer names and this lacks is taken to have a
   *     face and no direction
   */
  public static Layers of(Net net, FoldedForm form, List<LayerPaper> papers) {
    return new Grouping(net, form, papers).group();
  }

  /** The names of the papers that a net is dressed with, as it first needs them. */
  public static List<String> papersOf(Net net) {
    return Stream.concat(
            net.layers().stream().map(Layer::paper),
            Backings.of(net).stream().map(b -> b.asked().paper()))
        .distinct()
        .toList();
  }

  /** The names of the papers, in the order of the groups. */
  public List<String> papers() {
    return groups.stream().map(LayerGroup::paper).distinct().toList();
  }

  private static final class Grouping {
    private final Net net;
    private final FoldedForm form;
    private final List<LayerPaper> papers;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<String> lost = new ArrayList<>();

    /** A group as it fills; shapes of directed papers stand upright. */
    private record Draft(String paper, Inset shape, boolean isBehind, List<String> panels) {}

    Grouping(Net net, FoldedForm form, List<LayerPaper> papers) {
      this.net = net;
      this.form = form;
      this.papers = papers;
    }

    Layers group() {
      for (Layer layer : net.layers()) {
        Panel panel = net.panels().get(layer.panel());
        List<Inset> insets = Inset.of(panel, layer.reveal());
        if (insets.isEmpty()) {
          lost.add(panel.name());
        }
        insets.forEach(inset -> add(layer.paper(), inset, false, layer.panel()));
      }
      for (Backings.Piece piece : Backings.of(net)) {
        add(piece.asked().paper(), new Inset(piece.outline(), List.of()), true, piece.panel());
      }
      List<LayerGroup> groups = new ArrayList<>();
      for (String paper : drafts.stream().map(Draft::paper).distinct().toList()) {
        for (Draft draft : drafts) {
          if (draft.paper.equals(paper)) {
            groups.add(finished(draft, letter(groups.size()), groups));
          }
        }
      }
      return new Layers(groups, lost);
    }

    private void add(String paper, Inset inset, boolean isBehind, int panel) {
      boolean directed = paper(paper).map(LayerPaper::directed).orElse(false);
      Inset lying = directed ? inset.moved(upright(panel)) : inset;
      sort(paper, lying, isBehind, directed, net.panels().get(panel).name());
    }

    private Optional<LayerPaper> paper(String name) {
      return papers.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    private void sort(String paper, Inset inset, boolean isBehind, boolean directed, String panel) {
      boolean faced = paper(paper).map(LayerPaper::faced).orElse(true);
      for (Draft draft : drafts) {
        if (draft.paper.equals(paper)
            && draft.isBehind == isBehind
            && (same(draft.shape, inset, directed)
                || (!faced && same(draft.shape, inset.mirrored(), directed)))) {
          draft.panels.add(panel);
          return;
        }
      }
      drafts.add(new Draft(paper, inset, isBehind, new ArrayList<>(List.of(panel))));
    }

    private static boolean same(Inset a, Inset b, boolean directed) {
      return directed ? Congruence.USUAL.shifted(a, b) : Congruence.USUAL.turned(a, b);
    }

    private LayerGroup finished(Draft draft, String letter, List<LayerGroup> before) {
      boolean directed = paper(draft.paper).map(LayerPaper::directed).orElse(false);
      Inset lying = directed ? atOrigin(draft.shape) : lying(draft.shape);
      Optional<String> mirrorOf =
          before.stream()
              .filter(g -> g.paper().equals(draft.paper))
              .filter(g -> same(g.shape(), lying.mirrored(), directed))
              .map(LayerGroup::letter)
              .findFirst();
      return new LayerGroup(letter, draft.paper, lying, draft.isBehind, draft.panels, mirrorOf);
    }

    /** The turn after which up on the folded form is up on the paper. */
    private Motion2 upright(int panel) {
      if (form.closure() == Closure.NOT_SOLVED) {
        return Motion2.NONE;
      }
      Motion3 pose = form.poses().get(panel);
      Vec2 up = new Vec2(pose.ex().z(), pose.ey().z());
      return up.length() < LEVEL
          ? Motion2.NONE
          : Motion2.carrying(Vec2.ZERO, up, Vec2.ZERO, new Vec2(0, 1));
    }
  }

  /** Turned so that the box round it is smallest, a long side below. */
  private static Inset lying(Inset shape) {
    Polygon2 ring = shape.outline();
    Inset best = null;
    double least = Double.POSITIVE_INFINITY;
    double longest = 0;
    List<Integer> straight =
        IntStream.range(0, ring.size()).filter(i -> !ring.isRound(i)).boxed().toList();
    if (straight.isEmpty()) {
      return atOrigin(shape);
    }
    for (int i : straight) {
      Inset turned =
          shape.moved(
              Motion2.carrying(ring.corner(i), ring.corner(i + 1), Vec2.ZERO, new Vec2(1, 0)));
      Box2 box = turned.outline().box();
      double area = box.width() * box.height();
      double length = ring.side(i).length();
      if (area < least * (1 - RoundOff.PART)
          || (area < least * (1 + RoundOff.PART)
              && length > longest + LengthTolerance.ROUNDING.mm())) {
        best = turned;
        least = area;
        longest = length;
      }
    }
    return atOrigin(best);
  }

  private static Inset atOrigin(Inset shape) {
    Box2 box = shape.outline().box();
    return shape.moved(Motion2.shift(new Vec2(-box.minX(), -box.minY())));
  }

  private static String letter(int index) {
    String last = String.valueOf((char) ('a' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }
}
