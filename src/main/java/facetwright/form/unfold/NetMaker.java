package facetwright.form.unfold;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormEdge;
import facetwright.form.FormMeasure;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** Draws a laid-out form as a net: facet panels, scores, tabs, seams, windows and layers. */
final class NetMaker {
  /** Room between two pieces, in mm. */
  private static final double GAP = 10;

  /** An edge that bends inward by less is flat. */
  private static final AngleTolerance FLAT = AngleTolerance.FINE;

  private final Candidate chosen;
  private final Form form;
  private final NetDraft draft = new NetDraft();
  private final List<PanelDraft> panels = new ArrayList<>();
  private final List<Motion2> motions = new ArrayList<>();

  private NetMaker(Candidate chosen) {
    this.chosen = chosen;
    form = chosen.layout().flat().form();
    double x = 0;
    for (Packing p : chosen.packings()) {
      motions.add(p.motion().then(Motion2.shift(new Vec2(x, 0))));
      x += p.width() + GAP;
    }
  }

  /**
   * @param base the facet it is unfolded from
   * @param onBase whether it stands on that facet rather than upright as drawn
   */
  static Net net(Candidate chosen, int base, boolean onBase) {
    NetMaker maker = new NetMaker(chosen);
    maker.facets();
    maker.scores();
    maker.seams();
    List<Integer> ring = onBase ? List.of() : LevelRing.of(maker.form);
    if (ring.isEmpty()) {
      maker.draft.standOn(maker.panels.get(base));
    } else {
      maker.draft.stance(ring.stream().map(maker::cornerOf).toList());
    }
    return maker.draft.build();
  }

  private void facets() {
    for (int f = 0; f < form.facets().size(); f++) {
      Facet facet = form.facets().get(f);
      Motion2 motion = chosen.layout().motion(f).then(place(f));
      PanelDraft panel =
          draft.panel(
              facet.name(),
              PanelRole.FACET,
              motion.apply(chosen.layout().flat().outline(f)).corners(),
              facet.site());
      for (Opening opening : facet.openings()) {
        panel.open(opening.moved(motion));
      }
      facet.labels().forEach(panel::label);
      facet.layers().forEach(l -> panel.layer(l.reveal(), l.paper(), l.site()));
      panels.add(panel);
    }
  }

  private NetDraft.CornerDraft cornerOf(int corner) {
    for (int f = 0; f < panels.size(); f++) {
      int at = form.facets().get(f).corners().indexOf(corner);
      if (at >= 0) {
        return new NetDraft.CornerDraft(panels.get(f).edge(at));
      }
    }
    throw new IllegalStateException("corner " + corner + " belongs to no facet");
  }

  private Motion2 place(int facet) {
    return motions.get(chosen.layout().piece(facet));
  }

  private void scores() {
    for (int e = 0; e < form.edges().size(); e++) {
      if (chosen.layout().isScored(e)) {
        FormEdge edge = form.edges().get(e);
        draft.score(
            panels.get(edge.left()).edge(edge.leftSide()),
            panels.get(edge.right()).edge(edge.rightSide()),
            sense(edge),
            angle(edge),
            form.facets().get(edge.left()).site());
      }
    }
  }

  private void seams() {
    for (int e : chosen.layout().cuts()) {
      FormEdge edge = form.edges().get(e);
      Site site = form.facets().get(edge.left()).site();
      Tab tab = chosen.tabs().placed().stream().filter(t -> t.edge() == e).findFirst().orElse(null);
      int a = tab == null ? edge.left() : tab.carrier();
      int b = chosen.layout().flat().across(e, a);
      var carrying = panels.get(a).edge(chosen.layout().flat().sideOf(e, a));
      var meeting = panels.get(b).edge(chosen.layout().flat().sideOf(e, b));
      PanelDraft flap = null;
      if (tab != null) {
        flap =
            draft.panel(
                "tab " + form.facets().get(a).name() + " to " + form.facets().get(b).name(),
                PanelRole.TAB,
                place(a).apply(tab.outline()).corners(),
                form.facets().get(a).site());
        draft.score(carrying, flap.edge(0), sense(edge), angle(edge), site);
      }
      draft.seam(carrying, meeting, flap, site);
    }
  }

  private Sense sense(FormEdge edge) {
    return FormMeasure.fold(form, edge) >= -FLAT.radians() ? Sense.MOUNTAIN : Sense.VALLEY;
  }

  /** In degrees to nine places, so that 45° reads 45°. */
  private FoldAngle angle(FormEdge edge) {
    double degrees = Math.toDegrees(Math.abs(FormMeasure.fold(form, edge)));
    return FoldAngle.degrees(Math.min(180, Math.rint(degrees * 1e9) / 1e9));
  }
}
