package facetwright.papers.handout;

import facetwright.language.Telling;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.papers.chart.Measure;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.materials.Goods;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Decorative papers in words: how many, of what size, with what border. */
final class LayerText {
  private final Net net;
  private final Works works;
  private final Order order;
  private final Telling tell;

  LayerText(Net net, Works works, Order order) {
    this.net = net;
    this.works = works;
    this.order = order;
    this.tell = order.telling();
  }

  /** What is to be cut for all pieces, a sentence; empty where nothing is glued on. */
  String needs() {
    List<String> all = new ArrayList<>();
    for (LayerGroup g : groups()) {
      all.add(counted(g, g.count() * works.materials().pieces()));
    }
    return all.isEmpty() ? "" : tell.say("handout.papers", "papers", tell.apart(all));
  }

  /** What is glued on some panels of one piece, a sentence; empty where nothing is. */
  String gluedOn(List<Integer> panels) {
    Set<String> names =
        panels.stream().map(p -> net.panels().get(p).name()).collect(Collectors.toSet());
    List<String> all = new ArrayList<>();
    for (LayerGroup g : groups()) {
      int count = (int) g.panels().stream().filter(names::contains).count();
      if (count > 0) {
        all.add(tell.say("handout.bordered", "paper", counted(g, count), "borders", borders(g)));
      }
    }
    return all.isEmpty() ? "" : tell.say("handout.glue-papers", "papers", tell.apart(all));
  }

  private List<LayerGroup> groups() {
    return works.layers().groups().stream().filter(g -> !g.isBehind()).toList();
  }

  private String counted(LayerGroup g, int count) {
    return tell.say(
        "handout.paper",
        "kind",
        g.kind().name().toLowerCase(Locale.ROOT),
        "count",
        count,
        "width",
        size(g.width()),
        "height",
        size(g.height()),
        "named",
        String.valueOf(!g.paper().isBlank()),
        "paper",
        Goods.paper(g.paper(), tell));
  }

  private String borders(LayerGroup g) {
    List<String> borders =
        net.layers().stream()
            .filter(l -> l.paper().equals(g.paper()))
            .filter(l -> g.panels().contains(net.panels().get(l.panel()).name()))
            .map(Layer::reveal)
            .distinct()
            .map(
                mm ->
                    tell.say("handout.border", "bare", String.valueOf(mm == 0), "border", size(mm)))
            .toList();
    return tell.listed(borders);
  }

  private String size(double mm) {
    return Measure.of(mm, order.ruler()).text(tell);
  }
}
