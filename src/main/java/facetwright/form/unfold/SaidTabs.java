package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.form.FormEdge;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether tabs that the maker said became what was said. */
final class SaidTabs {
  private SaidTabs() {}

  /**
   * @throws NetException with the place where a tab was said, where it finds no room
   */
  static void check(Candidate chosen, Tabs tabs, List<UnfoldNote> notes) {
    Layout layout = chosen.layout();
    FlatForm flat = layout.flat();
    Map<Site, Integer> uncut = new LinkedHashMap<>();
    Set<Site> cut = new HashSet<>();
    for (int e = 0; e < flat.form().edges().size(); e++) {
      EdgeTab said = flat.tab(e).orElse(null);
      if (said == null || flat.edge(e).isRim()) {
        continue;
      }
      if (said.isHinge()) {
        hinge(layout, e, said);
      } else if (layout.isScored(e)) {
        uncut.putIfAbsent(said.site(), e);
      } else {
        cut.add(said.site());
        room(chosen, e, said, tabs);
      }
    }
    uncut.forEach(
        (site, e) -> {
          if (!cut.contains(site) && flat.tab(e).orElseThrow().bearer() != EdgeTab.Bearer.NONE) {
            notes.add(
                UnfoldNote.ofEdge(
                    Message.of(
                        "%s hang together in this net, so there is no tab between them: lay it flat"
                            + " another way (as: \"strip\", \"petals\"), or leave the tab out.",
                        SaidFlap.both(flat, e)),
                    flat,
                    e));
          }
        });
  }

  private static void hinge(Layout layout, int edge, EdgeTab said) {
    if (!layout.isScored(edge)) {
      throw new NetException(
          Message.of(
              "%s can't hang together at their hinge in a net without overlap: hinge the lid to"
                  + " another facet, or open one that is in its way",
              SaidFlap.both(layout.flat(), edge)),
          said.site());
    }
  }

  private static void room(Candidate chosen, int edge, EdgeTab said, Tabs tabs) {
    FlatForm flat = chosen.layout().flat();
    if (!chosen.tabs().dropped().contains(edge)) {
      return;
    }
    FormEdge e = flat.edge(edge);
    String bearer =
        switch (said.bearer()) {
          case THIS -> " on \"" + SaidFlap.name(flat, e.left()) + "\"";
          case OTHER -> " on \"" + SaidFlap.name(flat, e.right()) + "\"";
          case EITHER, BOTH, NONE, HINGE -> "";
        };
    String word = SaidFlap.word(flat, edge);
    if (!word.equals("tab")) {
      throw new NetException(
          Message.of(
              "there is no room for the %s of %s between %s: it would lie on another flap, show in"
                  + " an opening or reach past the panel it lies under; make it less deep, or"
                  + " leave out what is in its way",
              word, Value.given(said.depth()), SaidFlap.both(flat, edge)),
          said.site());
    }
    double least = Math.min(said.depth() > 0 ? said.depth() : tabs.depth(), tabs.minDepth());
    throw new NetException(
        Message.of(
            "there is no room for a tab of %s or more between %s%s: let the other bear it, or say"
                + " on: \"none\"",
            Value.given(least), SaidFlap.both(flat, edge), bearer),
        said.site());
  }
}
