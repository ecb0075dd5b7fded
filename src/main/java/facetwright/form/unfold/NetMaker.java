package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.form.Facet;
import facetwright.form.FacetNotch;
import facetwright.form.Form;
import facetwright.form.FormEdge;
import facetwright.form.FormMeasure;
import facetwright.geom.AngleTolerance;
import facetwright.geom.FacetFrame;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.Stance;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Draws a laid-out form as a net: facet panels, scores, tabs, seams, windows and layers. */
final class NetMaker {
  /** Room between two pieces, in mm. */
  private static final double GAP = 10;

  /** A facet that climbs by less of its length lies nearly level. */
  private static final double STANDS = 0.15;

  /** An edge that bends inward by less is flat. */
  private static final AngleTolerance FLAT = AngleTolerance.FINE;

  private final Candidate chosen;
  private final Form form;
  private final NetDraft draft = new NetDraft();
  private final List<PanelDraft> panels = new ArrayList<>();

  /** The sides of each facet as they were before any was divided for a flap. */
  private final List<List<EdgeDraft>> sides = new ArrayList<>();

  private final List<Motion2> motions = new ArrayList<>();

  private NetMaker(Candidate chosen) {
    this.chosen = chosen;
    form = chosen.layout().flat().form();
    double x = 0;
    for (int piece = 0; piece < chosen.packings().size(); piece++) {
      Packing p = chosen.packings().get(piece);
      int quarters = quarters(piece, p.motion());
      motions.add(p.turned(quarters).then(Motion2.shift(new Vec2(x, 0))));
      x += (quarters % 2 == 0 ? p.width() : p.height()) + GAP;
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
    maker.notches();
    List<Integer> level = onBase ? List.of() : LevelRing.of(maker.form);
    List<Integer> below = maker.form.facets().get(base).corners();
    List<Integer> ring = maker.fromFront(level.isEmpty() ? below.reversed() : level);
    maker.draft.stance(
        ring.stream()
            .map(
                c ->
                    level.isEmpty()
                        ? new NetDraft.CornerDraft(maker.sides.get(base).get(below.indexOf(c)))
                        : maker.cornerOf(c))
            .toList());
    return maker.draft.build();
  }

  /** A ring that begins with the side at the front: what is drawn along x, or called so. */
  private List<Integer> fromFront(List<Integer> ring) {
    int n = ring.size();
    int first = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      int from = ring.get(i);
      int to = ring.get((i + 1) % n);
      Vec3 along = form.corners().get(to).minus(form.corners().get(from)).unit();
      double front = along.x() + (isAtFront(from, to) ? 2 : 0);
      if (front > most + RoundOff.SOLVED) {
        most = front;
        first = i;
      }
    }
    List<Integer> turned = new ArrayList<>(ring);
    Collections.rotate(turned, -first);
    return turned;
  }

  private boolean isAtFront(int from, int to) {
    return form.facets().stream()
        .anyMatch(
            f ->
                f.name().equalsIgnoreCase(Stance.FRONT)
                    && f.corners().contains(from)
                    && f.corners().contains(to));
  }

  /**
   * How many quarter turns stand a piece as its maker thinks of it: the facet upright that faces
   * the front most, of those that do not lie level.
   */
  private int quarters(int piece, Motion2 packed) {
    Vec2 up = Vec2.ZERO;
    double most = Double.NEGATIVE_INFINITY;
    for (int f : chosen.layout().order()) {
      FacetFrame frame = form.frame(f);
      Vec2 climb = new Vec2(frame.x().z(), frame.y().z());
      if (chosen.layout().piece(f) != piece || climb.length() < STANDS) {
        continue;
      }
      boolean isCalled = form.facets().get(f).name().equalsIgnoreCase(Stance.FRONT);
      double faces = isCalled ? 2 : -frame.normal().y();
      if (faces > most + RoundOff.SOLVED) {
        most = faces;
        Motion2 motion = chosen.layout().motion(f).then(packed);
        up = motion.apply(climb).minus(motion.apply(Vec2.ZERO));
      }
    }
    return up.equals(Vec2.ZERO)
        ? 0
        : (int) Math.rint((Math.PI / 2 - Math.atan2(up.y(), up.x())) / (Math.PI / 2));
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
      sides.add(panel.edges());
    }
  }

  private NetDraft.CornerDraft cornerOf(int corner) {
    for (int f = 0; f < panels.size(); f++) {
      int at = form.facets().get(f).corners().indexOf(corner);
      if (at >= 0) {
        return new NetDraft.CornerDraft(sides.get(f).get(at));
      }
    }
    throw new IllegalStateException("corner " + corner + " belongs to no facet");
  }

  private Motion2 place(int facet) {
    return motions.get(chosen.layout().piece(facet));
  }

  private void scores() {
    FlatForm flat = chosen.layout().flat();
    for (int e = 0; e < form.edges().size(); e++) {
      if (chosen.layout().isScored(e)) {
        FormEdge edge = form.edges().get(e);
        EdgeDraft left = side(e, edge.left());
        EdgeDraft right = side(e, edge.right());
        if (flat.isHinge(e)) {
          draft.hinge(left, right, sense(edge), angle(edge), flat.tab(e).orElseThrow().site());
        } else {
          Site site = form.facets().get(edge.left()).site();
          draft.score(left, right, sense(edge), angle(edge), site);
        }
      }
    }
  }

  private EdgeDraft side(int edge, int facet) {
    return sides.get(facet).get(chosen.layout().flat().sideOf(edge, facet));
  }

  private void seams() {
    FlatForm flat = chosen.layout().flat();
    for (int e : chosen.layout().cuts()) {
      FormEdge edge = form.edges().get(e);
      List<Tab> flaps = chosen.tabs().placed().stream().filter(t -> t.edge() == e).toList();
      if (flat.tab(e).filter(EdgeTab::isLoose).isPresent()) {
        EdgeTab said = flat.tab(e).orElseThrow();
        flaps.forEach(
            f -> draft.lap(hung(f, edge), panels.get(f.host()), said.hold(), said.site()));
      } else if (flaps.size() == 2) {
        both(e, flaps.getFirst(), flaps.getLast());
      } else {
        int a = flaps.isEmpty() ? edge.left() : flaps.getFirst().carrier();
        PanelDraft flap = flaps.isEmpty() ? null : hung(flaps.getFirst(), edge);
        EdgeDraft met = side(e, flat.across(e, a));
        EdgeTab said = flat.tab(e).filter(t -> flap != null && !t.hold().isGlued()).orElse(null);
        if (said == null) {
          draft.seam(side(e, a), met, flap, form.facets().get(edge.left()).site());
        } else {
          SaidFlap.slot(flat, e, met.segment()).ifPresent(panels.get(flat.across(e, a))::open);
          draft.seam(side(e, a), met, flap, said.hold(), said.site());
        }
      }
    }
  }

  private void notches() {
    for (int f = 0; f < panels.size(); f++) {
      for (FacetNotch cut : form.facets().get(f).notches()) {
        String name = "the free edge of \"" + form.facets().get(f).name() + "\"";
        cut.notch().cut(draft, sides.get(f).get(cut.side()), name, cut.site());
      }
    }
  }

  /** The half of each side that bears a flap meets the half of the other that bears none. */
  private void both(int e, Tab one, Tab two) {
    FormEdge edge = form.edges().get(e);
    EdgeTab said = chosen.layout().flat().tab(e).orElseThrow();
    PanelDraft onOne = hung(one, edge);
    PanelDraft onTwo = hung(two, edge);
    draft.seam(
        draft.across(onOne.edge(0)), side(e, two.carrier()), onOne, said.hold(), said.site());
    draft.seam(
        draft.across(onTwo.edge(0)), side(e, one.carrier()), onTwo, said.hold(), said.site());
  }

  /** Hangs a flap on the part of its carrier's side along which it is scored. */
  private PanelDraft hung(Tab tab, FormEdge edge) {
    Motion2 motion = place(tab.carrier());
    Facet carrier = form.facets().get(tab.carrier());
    String name =
        SaidFlap.word(chosen.layout().flat(), tab.edge())
            + " "
            + carrier.name()
            + " to "
            + form.facets().get(tab.host()).name();
    PanelDraft flap =
        draft.panel(name, PanelRole.TAB, motion.apply(tab.outline()).corners(), carrier.site());
    EdgeDraft hinge = side(tab.edge(), tab.carrier());
    if (!LengthTolerance.FINE.same(hinge.from(), flap.edge(1).from())) {
      hinge = panels.get(tab.carrier()).split(hinge, flap.edge(1).from());
    }
    if (!LengthTolerance.FINE.same(hinge.to(), flap.edge(0).from())) {
      panels.get(tab.carrier()).split(hinge, flap.edge(0).from());
    }
    Site site = form.facets().get(edge.left()).site();
    draft.score(hinge, flap.edge(0), sense(edge), angle(edge), site);
    SaidFlap.round(chosen.layout().flat(), tab.edge(), flap);
    return flap;
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
