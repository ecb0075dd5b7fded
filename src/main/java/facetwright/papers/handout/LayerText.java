package facetwright.papers.handout;

import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.papers.chart.Measure;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Decorative papers in words: how many, of what size, with what border. */
final class LayerText {
  private final Net net;
  private final Works works;
  private final Order order;

  LayerText(Net net, Works works, Order order) {
    this.net = net;
    this.works = works;
    this.order = order;
  }

  /** What is to be cut for all pieces, a sentence; empty where nothing is glued on. */
  String needs() {
    List<String> all = new ArrayList<>();
    for (LayerGroup g : groups()) {
      all.add(counted(g, g.count() * works.materials().pieces()));
    }
    return all.isEmpty() ? "" : "Papers to glue on: " + String.join("; ", all) + ".";
  }

  /** What is glued on some panels of one piece, a sentence; empty where nothing is. */
  String gluedOn(List<Integer> panels) {
    Set<String> names =
        panels.stream().map(p -> net.panels().get(p).name()).collect(Collectors.toSet());
    List<String> all = new ArrayList<>();
    for (LayerGroup g : groups()) {
      int count = (int) g.panels().stream().filter(names::contains).count();
      if (count > 0) {
        all.add(counted(g, count) + ", " + border(g));
      }
    }
    return all.isEmpty()
        ? ""
        : "Glue on the decorative papers, tinted here, while the piece is flat: "
            + String.join("; ", all)
            + ".";
  }

  private List<LayerGroup> groups() {
    return works.layers().groups().stream().filter(g -> !g.isBehind()).toList();
  }

  private String counted(LayerGroup g, int count) {
    String many = count == 1 ? "" : "s";
    String kind =
        switch (g.kind()) {
          case RECTANGLE -> "rectangle" + many + " of ";
          case TRIANGLE -> "triangle" + many + ", each in a box of ";
          case OTHER -> "piece" + many + ", each in a box of ";
        };
    String paper = g.paper().isBlank() ? "" : " from “" + g.paper() + "”";
    return count + " " + kind + size(g.width()) + " × " + size(g.height()) + paper;
  }

  private String border(LayerGroup g) {
    List<String> borders =
        net.layers().stream()
            .filter(l -> l.paper().equals(g.paper()))
            .filter(l -> g.panels().contains(net.panels().get(l.panel()).name()))
            .map(Layer::reveal)
            .distinct()
            .map(mm -> mm == 0 ? "no border" : "a border of " + size(mm))
            .toList();
    return "with " + Sentence.listed(borders) + " all round";
  }

  private String size(double mm) {
    return Measure.of(mm, order.ruler()).text(order.telling());
  }
}
