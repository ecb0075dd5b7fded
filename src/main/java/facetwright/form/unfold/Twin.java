package facetwright.form.unfold;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An edge and the facet that bears its tab, as another and its tab fall on them. */
record Twin(int edge, int carrier, boolean mirrored) {

  static List<Twin> of(int edge, int carrier, List<Likeness> group) {
    Map<Integer, Twin> twins = new LinkedHashMap<>();
    twins.put(edge, new Twin(edge, carrier, false));
    for (Likeness l : group) {
      twins.putIfAbsent(l.edge(edge), new Twin(l.edge(edge), l.facet(carrier), l.isMirrored()));
    }
    return List.copyOf(twins.values());
  }
}
