package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.form.Facet;
import facetwright.form.FormEdge;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Count;
import java.util.ArrayList;
import java.util.List;

/** What a maker should know about a net that was found. */
final class UnfoldNotes {
  private static final int MOST_NAMED = 6;

  private UnfoldNotes() {}

  static void add(List<UnfoldNote> notes, Candidate chosen, Tabs tabs, int tries, boolean sheet) {
    Layout layout = chosen.layout();
    if (layout.pieces() > 1) {
      notes.add(
          UnfoldNote.ofAll(
              Message.of(
                  "The net is cut as %s pieces: no single piece without overlap was found in %s"
                      + " tries.",
                  layout.pieces(), tries)));
    }
    List<Tab> usual = new ArrayList<>();
    for (Tab tab : chosen.tabs().placed()) {
      double said = layout.flat().tab(tab.edge()).map(EdgeTab::depth).orElse(0.0);
      if (said == 0) {
        usual.add(tab);
      } else if (isLess(tab, said)) {
        notes.add(
            UnfoldNote.ofEdge(
                Message.of(
                    "The %s on %s is %s deep, not %s, so that it lies on no other and does not"
                        + " show.",
                    SaidFlap.word(layout.flat(), tab.edge()),
                    Value.name(SaidFlap.name(layout.flat(), tab.carrier())),
                    Value.rough(tab.depth()),
                    Value.given(said)),
                layout.flat(),
                tab.edge()));
      }
    }
    List<Tab> narrow = usual.stream().filter(t -> isLess(t, tabs.depth())).toList();
    // Nobody asked for the usual depth: such tabs are as deep as there is room for.
    boolean asked = !LengthTolerance.FINE.same(tabs.depth(), Tabs.USUAL.depth());
    if (asked && !narrow.isEmpty()) {
      double least = narrow.stream().mapToDouble(Tab::depth).min().orElseThrow();
      notes.add(
          UnfoldNote.ofEdge(
              Message.of(
                  "%s of %s %s less deep than %s, so that none lies on another or shows; the least"
                      + " deep is %s.",
                  narrow.size(),
                  Count.of(usual.size(), "tab"),
                  narrow.size() == 1 ? "is" : "are",
                  Value.given(tabs.depth()),
                  Value.rough(least)),
              layout.flat(),
              narrow.getFirst().edge()));
    }
    List<Integer> dropped = chosen.tabs().dropped();
    if (!dropped.isEmpty()) {
      List<String> names = dropped.stream().limit(MOST_NAMED).map(e -> between(layout, e)).toList();
      notes.add(
          UnfoldNote.ofEdge(
              Message.of(
                  "%s no tab, as none of %s or more fits: %s%s. Close %s with tape.",
                  Count.of(dropped.size(), "seam has", "seams have"),
                  Value.given(tabs.minDepth()),
                  String.join(", ", names),
                  dropped.size() > MOST_NAMED ? " and more" : "",
                  dropped.size() == 1 ? "it" : "them"),
              layout.flat(),
              dropped.getFirst()));
    }
    if (sheet && !chosen.fits()) {
      notes.add(
          UnfoldNote.ofAll(
              Message.text("No net found fits the sheet: take a larger sheet or a smaller form.")));
    }
  }

  private static boolean isLess(Tab tab, double wanted) {
    return tab.depth() < wanted - LengthTolerance.FINE.mm();
  }

  private static String between(Layout layout, int edge) {
    FormEdge e = layout.flat().edge(edge);
    List<Facet> facets = layout.flat().form().facets();
    return facets.get(e.left()).name() + " to " + facets.get(e.right()).name();
  }
}
