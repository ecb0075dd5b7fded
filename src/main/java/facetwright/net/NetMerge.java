package facetwright.net;

import facetwright.geom.Polygon2;
import facetwright.net.fitting.Fittings;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Nets made of nets: several as one, some panels of one, the mirror image of one. */
public final class NetMerge {
  private final List<Panel> panels = new ArrayList<>();
  private final List<Score> scores = new ArrayList<>();
  private final List<Slit> slits = new ArrayList<>();
  private final List<Join> joins = new ArrayList<>();
  private final List<Layer> layers = new ArrayList<>();
  private final List<Tick> ticks = new ArrayList<>();
  private final List<Cutaway> cutaways = new ArrayList<>();
  private Fittings fittings = Fittings.NONE;

  private NetMerge() {}

  /**
   * The nets as one, panels in the order given. The whole stands as the first one does.
   *
   * @throws IllegalArgumentException when there is none
   */
  public static Net of(List<Net> nets) {
    if (nets.isEmpty()) {
      throw new IllegalArgumentException("no nets to put together");
    }
    if (nets.size() == 1) {
      return nets.getFirst();
    }
    NetMerge merge = new NetMerge();
    nets.forEach(merge::add);
    return new Net(
            merge.panels,
            merge.scores,
            merge.slits,
            merge.joins,
            merge.layers,
            merge.ticks,
            merge.cutaways,
            nets.getFirst().stance())
        .with(merge.fittings);
  }

  /** Some panels of a net by themselves, which nothing joins to others. */
  public static Net only(Net net, List<Integer> panels, Stance stance) {
    Predicate<EdgeRef> isIn = r -> panels.contains(r.panel());
    Renumbering now = Renumbering.of(panels::indexOf);
    return new Net(
            panels.stream().map(net.panels()::get).toList(),
            net.scores().stream().filter(s -> isIn.test(s.a())).map(now::of).toList(),
            net.slits().stream()
                .filter(s -> isIn.test(s.a()) && isIn.test(s.b()))
                .map(now::of)
                .toList(),
            net.joins().stream()
                .filter(
                    j ->
                        switch (j) {
                          case Join.Seam s -> isIn.test(s.a());
                          case Join.Lap l -> panels.contains(l.under());
                        })
                .map(now::of)
                .toList(),
            net.layers().stream().filter(l -> panels.contains(l.panel())).map(now::of).toList(),
            net.ticks().stream().filter(t -> panels.contains(t.panel())).map(now::of).toList(),
            net.cutaways().stream()
                .map(c -> new Cutaway(c.sides().stream().filter(isIn).toList(), c.site()))
                .filter(c -> !c.sides().isEmpty())
                .map(now::of)
                .toList(),
            new Stance(
                stance.ring().stream()
                    .map(c -> new Stance.Corner(panels.indexOf(c.panel()), c.corner()))
                    .toList()))
        .with(net.fittings().only(panels));
  }

  /**
   * The mirror image of a net: a left one of a right one. It is cut from the same face of the card,
   * so that mountains stay mountains and valleys valleys; panels, joins and fittings keep their
   * order and their names. It stands facing as the net does. What is told of the net's parts is not
   * carried over.
   */
  public static Net mirrored(Net net) {
    UnaryOperator<EdgeRef> sides =
        s -> {
          int n = net.panels().get(s.panel()).outline().size();
          return new EdgeRef(s.panel(), Polygon2.mirroredSide(s.edge(), n));
        };
    Renumbering now = new Renumbering(p -> p, sides);
    return new Net(
            net.panels().stream().map(Panel::mirrored).toList(),
            net.scores().stream().map(now::of).toList(),
            net.slits().stream().map(now::of).toList(),
            net.joins().stream().map(now::of).toList(),
            net.layers(),
            net.ticks().stream().map(Tick::mirrored).toList(),
            net.cutaways().stream().map(now::of).toList(),
            net.stance().mirrored(p -> net.panels().get(p).outline().size()))
        .with(net.fittings().mirrored());
  }

  private void add(Net net) {
    int by = panels.size();
    Renumbering now = Renumbering.of(p -> p + by);
    panels.addAll(net.panels());
    net.scores().stream().map(now::of).forEach(scores::add);
    net.slits().stream().map(now::of).forEach(slits::add);
    net.joins().stream().map(now::of).forEach(joins::add);
    net.layers().stream().map(now::of).forEach(layers::add);
    net.ticks().stream().map(now::of).forEach(ticks::add);
    fittings = fittings.and(net.fittings().after(by));
    net.cutaways().stream().map(now::of).forEach(cutaways::add);
  }
}
