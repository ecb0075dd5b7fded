package facetwright.fold.touch;

import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Card that can't be where it is though no panel passes through the inside of another: what comes
 * together along a line crosses there, in whatever order its layers lie.
 *
 * <p>The order of two layers is known where a score between them is folded right over, and where
 * the one is glued under the other, by a tab or a lap: that lies inside.
 *
 * <p>What it does not detect: sheets that come apart by less than a steady hand makes up at a slant
 * of more than some 8°, and layers that hang together so much that all their orders are too many to
 * try.
 */
final class Layers {
  private final Net net;
  private final List<PosedPanel> placed;
  private final Orders orders;
  private final List<Collision> outside = new ArrayList<>();

  private Layers(Net net, List<PosedPanel> placed) {
    this.net = net;
    this.placed = placed;
    this.orders = new Orders(this::share);
  }

  /**
   * @param near pairs of panels that touch
   * @param by how far from a plane still counts as in it, in mm
   */
  static List<Collision> of(Net net, List<PosedPanel> placed, List<BoxTree.Pair> near, double by) {
    Crossings crossings = Crossings.of(net, placed, near, by);
    boolean isFlat = net.scores().stream().anyMatch(s -> isRightOver(s) && crossings.isLying(s));
    if (crossings.all().isEmpty() && !isFlat) {
      return crossings.plain();
    }
    Layers layers = new Layers(net, placed);
    crossings.all().forEach(layers.orders::ask);
    if (isFlat) {
      near.stream()
          .filter(p -> crossings.lieTogether(p.a(), p.b()))
          .forEach(p -> layers.orders.pair(p.a(), p.b()));
    }
    List<Collision> found = new ArrayList<>(crossings.plain());
    layers.tell();
    found.addAll(layers.orders.broken());
    found.addAll(layers.outside);
    if (found.isEmpty()) {
      layers.orders.round().ifPresent(p -> found.add(layers.stuck(p)));
    }
    if (found.isEmpty()) {
      layers.stuck().forEach(found::add);
    }
    return found;
  }

  private static boolean isRightOver(Score score) {
    return score.angle() instanceof FoldAngle.Known(double degrees, _) && degrees > 90;
  }

  /** What senses tell, then what is glued. */
  private void tell() {
    List<Crossing.Pair> known = new ArrayList<>();
    for (Score score : net.scores()) {
      if (isRightOver(score)) {
        int a = score.a().panel();
        int b = score.b().panel();
        boolean isOver = placed.get(a).isUp() == (score.sense() == Sense.MOUNTAIN);
        known.add(new Crossing.Pair(isOver ? a : b, isOver ? b : a));
      }
    }
    orders.know(known);
    for (Join join : net.joins()) {
      switch (join) {
        case Join.Seam(_, EdgeRef b, int tab, _, _) when tab != Join.Seam.NO_TAB ->
            glue(tab, b.panel());
        case Join.Lap(int tongue, int host, Hold hold, _) when hold == Hold.TONGUE ->
            glue(host, tongue);
        case Join.Lap(int under, int over, _, _) -> glue(under, over);
        default -> {}
      }
    }
  }

  private void glue(int under, int over) {
    int broken = orders.broken().size();
    boolean isUp = placed.get(over).isUp();
    if (!orders.tell(isUp ? over : under, isUp ? under : over)
        && orders.broken().size() == broken) {
      outside.add(Collision.outside(under, over, middle(under)));
    }
  }

  /** What can't be however what is left open is ordered. */
  private List<Collision> stuck() {
    List<Collision> found = new ArrayList<>();
    for (List<Crossing> together : orders.stuck()) {
      Set<Collision> round = new LinkedHashSet<>();
      for (Crossing crossing : together) {
        Vec3 place = crossing.otherwise().place();
        if (crossing.otherwise().kind() == Collision.Kind.ROUND) {
          crossing.pairs().forEach(p -> round.add(Collision.round(p.a(), p.b(), place)));
        }
      }
      found.addAll(
          round.isEmpty() ? List.of(stuck(together.getFirst().pairs().getFirst())) : round);
    }
    return found;
  }

  private Collision stuck(Crossing.Pair pair) {
    return Collision.stuck(pair.a(), pair.b(), middle(pair.a()));
  }

  private Vec3 middle(int panel) {
    List<Vec3> corners = placed.get(panel).outline();
    return corners.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / corners.size());
  }

  private boolean share(int[] panels) {
    return Patch.of(placed.get(panels[0]))
        .share(IntStream.of(panels).mapToObj(placed::get).toList(), Collision.HELD);
  }
}
