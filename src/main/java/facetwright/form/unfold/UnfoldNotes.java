package facetwright.form.unfold;

import facetwright.form.Facet;
import facetwright.form.FormEdge;
import facetwright.words.Count;
import facetwright.words.Decimals;
import java.util.List;
import java.util.Locale;

/** What a maker should know about a net that was found. */
final class UnfoldNotes {
  private static final int MOST_NAMED = 6;

  private UnfoldNotes() {}

  static void add(List<String> notes, Candidate chosen, Tabs tabs, int tries, boolean sheet) {
    Layout layout = chosen.layout();
    if (layout.pieces() > 1) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The net is cut as %d pieces: no single piece without overlap was found in %d"
                  + " tries.",
              layout.pieces(),
              tries));
    }
    List<Tab> narrow =
        chosen.tabs().placed().stream().filter(t -> t.depth() < tabs.depth() - 1e-6).toList();
    if (!narrow.isEmpty()) {
      double least = narrow.stream().mapToDouble(Tab::depth).min().orElseThrow();
      notes.add(
          String.format(
              Locale.ROOT,
              "%d of %s %s narrower than %s mm so as not to clash or show; the narrowest is"
                  + " %.1f mm.",
              narrow.size(),
              Count.of(chosen.tabs().placed().size(), "tab"),
              narrow.size() == 1 ? "is" : "are",
              Decimals.plain(tabs.depth()),
              least));
    }
    List<Integer> dropped = chosen.tabs().dropped();
    if (!dropped.isEmpty()) {
      List<String> names = dropped.stream().limit(MOST_NAMED).map(e -> between(layout, e)).toList();
      notes.add(
          String.format(
              Locale.ROOT,
              "%s no tab, as none of %s mm or more fits: %s%s. Close %s with tape.",
              Count.of(dropped.size(), "seam has", "seams have"),
              Decimals.plain(tabs.minDepth()),
              String.join(", ", names),
              dropped.size() > MOST_NAMED ? " and more" : "",
              dropped.size() == 1 ? "it" : "them"));
    }
    if (sheet && !chosen.fits()) {
      notes.add("No net found fits the sheet: take a larger sheet or a smaller form.");
    }
  }

  private static String between(Layout layout, int edge) {
    FormEdge e = layout.flat().edge(edge);
    List<Facet> facets = layout.flat().form().facets();
    return facets.get(e.left()).name() + " to " + facets.get(e.right()).name();
  }
}
