package facetwright.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Names of facets: told apart, and listed in a message. */
public final class FacetNames {
  private static final int MOST_LISTED = 12;

  private FacetNames() {}

  static String listed(List<Facet> facets) {
    List<String> some =
        facets.stream().limit(MOST_LISTED).map(f -> "\"" + f.name() + "\"").toList();
    return String.join(", ", some) + (facets.size() > MOST_LISTED ? " and more" : "");
  }

  /** The facets, each whose name was taken before numbered apart: "side", "side (2)". */
  public static List<Facet> apart(List<Facet> facets) {
    Set<String> taken = new HashSet<>();
    List<Facet> all = new ArrayList<>();
    for (Facet facet : facets) {
      String name = facet.name();
      for (int i = 2; !taken.add(name); i++) {
        name = facet.name() + " (" + i + ")";
      }
      all.add(facet.named(name));
    }
    return all;
  }
}
