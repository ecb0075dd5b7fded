package facetwright.workbench.desk;

import facetwright.net.Cutaway;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Slit;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.SequencedSet;

/** What a line of the script left in a net: what it made, what it dressed, where it cut. */
final class Traces {
  private final int line;
  private final SequencedSet<Integer> panels = new LinkedHashSet<>();
  private final List<Integer> scores = new ArrayList<>();
  private final SequencedSet<EdgeRef> sides = new LinkedHashSet<>();

  Traces(Net net, int line) {
    this.line = line;
    for (int p = 0; p < net.panels().size(); p++) {
      Panel panel = net.panels().get(p);
      if (isHere(panel.site())
          || panel.openings().stream().map(Opening::site).anyMatch(this::isHere)) {
        panels.add(p);
      }
    }
    net.layers().stream().filter(l -> isHere(l.site())).map(Layer::panel).forEach(panels::add);
    for (int s = 0; s < net.scores().size(); s++) {
      if (isHere(net.scores().get(s).site())) {
        scores.add(s);
      }
    }
    for (Slit slit : net.slits()) {
      if (isHere(slit.site())) {
        sides.add(slit.a());
      }
    }
    net.cutaways().stream()
        .filter(c -> isHere(c.site()))
        .map(Cutaway::sides)
        .forEach(sides::addAll);
    net.joins().stream().filter(j -> isHere(j.site())).forEach(this::join);
  }

  private boolean isHere(Site site) {
    return site.line() == line;
  }

  private void join(Join join) {
    switch (join) {
      case Join.Seam(EdgeRef a, EdgeRef b, _, _, _) -> sides.addAll(List.of(a, b));
      case Join.Lap(int under, int over, _, _) -> panels.addAll(List.of(under, over));
    }
  }

  Selection selection() {
    return panels.isEmpty() && scores.isEmpty() && sides.isEmpty()
        ? Selection.nothing()
        : new Selection.OfLine(line, List.copyOf(panels), scores, List.copyOf(sides));
  }
}
