package facetwright.check.closing;

import facetwright.fold.making.Bodies;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Two panels that meet along a side of each, by a score or by a seam. */
record Meeting(EdgeRef a, EdgeRef b) {

  static List<Meeting> all(Net net) {
    List<Meeting> meetings = new ArrayList<>();
    for (Score s : net.scores()) {
      meetings.add(new Meeting(s.a(), s.b()));
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, _, _, _)) {
        meetings.add(new Meeting(a, b));
      }
    }
    return meetings;
  }

  /** For each side that meets another, that other. */
  static Map<EdgeRef, EdgeRef> across(Net net) {
    Map<EdgeRef, EdgeRef> across = new HashMap<>();
    for (Meeting m : all(net)) {
      across.put(m.a, m.b);
      across.put(m.b, m.a);
    }
    return across;
  }

  /** What gussets hang together: for each panel its row, as {@link Bodies#find} tells it. */
  static int[] rows(Net net, List<Meeting> meetings) {
    int[] row = IntStream.range(0, net.panels().size()).toArray();
    meetings.stream()
        .filter(m -> m.isOfGusset(net))
        .forEach(m -> Bodies.unite(row, m.a.panel(), m.b.panel()));
    return row;
  }

  static boolean isGusset(Net net, EdgeRef side) {
    return net.panels().get(side.panel()).role() == PanelRole.GUSSET;
  }

  boolean isOfGusset(Net net) {
    return isGusset(net, a) || isGusset(net, b);
  }

  /** Gussets come in twos that meet in the middle of their column. */
  boolean isOfGussets(Net net) {
    return isGusset(net, a) && isGusset(net, b);
  }

  /** Of a gusset and another panel the side of the other. */
  EdgeRef beside(Net net) {
    return isGusset(net, a) ? b : a;
  }
}
