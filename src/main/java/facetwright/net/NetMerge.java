package facetwright.net;

import facetwright.net.fitting.Fittings;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Several nets as one: a box and its lid, each a piece or more. */
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
    UnaryOperator<EdgeRef> now = r -> new EdgeRef(panels.indexOf(r.panel()), r.edge());
    return new Net(
            panels.stream().map(net.panels()::get).toList(),
            net.scores().stream()
                .filter(s -> isIn.test(s.a()))
                .map(
                    s ->
                        new Score(
                            now.apply(s.a()),
                            now.apply(s.b()),
                            s.sense(),
                            s.angle(),
                            s.perforated(),
                            s.site()))
                .toList(),
            net.slits().stream()
                .filter(s -> isIn.test(s.a()) && isIn.test(s.b()))
                .map(s -> new Slit(now.apply(s.a()), now.apply(s.b()), s.site()))
                .toList(),
            net.joins().stream()
                .flatMap(
                    j ->
                        switch (j) {
                          case Join.Seam s when isIn.test(s.a()) ->
                              Stream.of(
                                  new Join.Seam(
                                      now.apply(s.a()),
                                      now.apply(s.b()),
                                      panels.indexOf(s.tab()),
                                      s.site()));
                          case Join.Lap l when panels.contains(l.under()) ->
                              Stream.of(
                                  new Join.Lap(
                                      panels.indexOf(l.under()),
                                      panels.indexOf(l.over()),
                                      l.glued(),
                                      l.site()));
                          default -> Stream.<Join>empty();
                        })
                .toList(),
            net.layers().stream()
                .filter(l -> panels.contains(l.panel()))
                .map(l -> new Layer(panels.indexOf(l.panel()), l.reveal(), l.paper(), l.site()))
                .toList(),
            List.of(),
            net.cutaways().stream()
                .map(c -> new Cutaway(c.sides().stream().filter(isIn).map(now).toList(), c.site()))
                .filter(c -> !c.sides().isEmpty())
                .toList(),
            new Stance(
                stance.ring().stream()
                    .map(c -> new Stance.Corner(panels.indexOf(c.panel()), c.corner()))
                    .toList()))
        .with(net.fittings().only(panels));
  }

  private void add(Net net) {
    int by = panels.size();
    panels.addAll(net.panels());
    for (Score s : net.scores()) {
      scores.add(
          new Score(
              moved(s.a(), by), moved(s.b(), by), s.sense(), s.angle(), s.perforated(), s.site()));
    }
    for (Slit s : net.slits()) {
      slits.add(new Slit(moved(s.a(), by), moved(s.b(), by), s.site()));
    }
    for (Join join : net.joins()) {
      joins.add(
          switch (join) {
            case Join.Seam(EdgeRef a, EdgeRef b, int tab, Site site) ->
                new Join.Seam(
                    moved(a, by),
                    moved(b, by),
                    tab == Join.Seam.NO_TAB ? Join.Seam.NO_TAB : tab + by,
                    site);
            case Join.Lap(int under, int over, boolean glued, Site site) ->
                new Join.Lap(under + by, over + by, glued, site);
          });
    }
    for (Layer l : net.layers()) {
      layers.add(new Layer(l.panel() + by, l.reveal(), l.paper(), l.site()));
    }
    ticks.addAll(net.ticks());
    fittings = fittings.and(net.fittings().after(by));
    for (Cutaway c : net.cutaways()) {
      cutaways.add(new Cutaway(c.sides().stream().map(s -> moved(s, by)).toList(), c.site()));
    }
  }

  private static EdgeRef moved(EdgeRef ref, int by) {
    return new EdgeRef(ref.panel() + by, ref.edge());
  }
}
