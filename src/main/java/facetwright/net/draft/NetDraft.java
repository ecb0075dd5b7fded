package facetwright.net.draft;

import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Cutaway;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.Slit;
import facetwright.net.Stance;
import facetwright.net.Tick;
import facetwright.net.backing.Backings;
import facetwright.net.fitting.Fittings;
import facetwright.net.fitting.Label;
import facetwright.words.SaidTwice;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * A net in the making. Panels and sides are handles that keep their identity while sides are
 * divided, corners cut back and panels removed; {@link #build()} numbers them and checks the
 * invariants.
 */
public final class NetDraft {
  private final List<PanelDraft> panels = new ArrayList<>();
  private final List<ScoreDraft> scores = new ArrayList<>();
  private final List<SlitDraft> slits = new ArrayList<>();
  private final List<SeamDraft> seams = new ArrayList<>();
  private final List<LapDraft> laps = new ArrayList<>();
  private final List<TickDraft> ticks = new ArrayList<>();
  private final List<CutawayDraft> cutaways = new ArrayList<>();
  private List<CornerDraft> stance = List.of();
  private final SaidTwice twice;

  public NetDraft() {
    this(new SaidTwice());
  }

  /**
   * @param twice where it notes what is said twice of the same
   */
  public NetDraft(SaidTwice twice) {
    this.twice = twice;
  }

  private record ScoreDraft(
      EdgeDraft a,
      EdgeDraft b,
      Sense sense,
      FoldAngle angle,
      boolean perforated,
      boolean hinge,
      Site site) {
    boolean isBetween(PanelDraft one, PanelDraft other) {
      return (a.panel() == one && b.panel() == other) || (a.panel() == other && b.panel() == one);
    }
  }

  private record SlitDraft(EdgeDraft a, EdgeDraft b, Site site) {}

  private record SeamDraft(EdgeDraft a, EdgeDraft b, PanelDraft tab, Hold hold, Site site) {}

  private record LapDraft(PanelDraft under, PanelDraft over, Hold hold, Site site) {}

  private record TickDraft(PanelDraft panel, Segment2 mark, Site site) {}

  private record CutawayDraft(List<EdgeDraft> sides, Site site) {}

  /** The corner at which a side starts: how a stance names it while sides may still be divided. */
  public record CornerDraft(EdgeDraft startOf) {}

  /** A new panel; corners counter-clockwise. */
  public PanelDraft panel(String name, PanelRole role, List<Vec2> corners, Site site) {
    PanelDraft panel = new PanelDraft(name, role, corners, site, twice);
    panels.add(panel);
    return panel;
  }

  /** A new panel of an outline, its arcs with it. */
  public PanelDraft panel(String name, PanelRole role, Polygon2 outline, Site site) {
    PanelDraft panel = panel(name, role, outline.corners(), site);
    panel.round(outline.arcs());
    return panel;
  }

  /** What was said twice of the same panels. */
  public SaidTwice twice() {
    return twice;
  }

  public List<PanelDraft> panels() {
    return List.copyOf(panels);
  }

  public void score(EdgeDraft a, EdgeDraft b, Sense sense, FoldAngle angle, Site site) {
    scores.add(new ScoreDraft(a, b, sense, angle, false, false, site));
  }

  /** A score that is perforated rather than pressed. */
  public void perforation(EdgeDraft a, EdgeDraft b, Sense sense, FoldAngle angle, Site site) {
    scores.add(new ScoreDraft(a, b, sense, angle, true, false, site));
  }

  /** A score that stays a hinge: it opens and shuts. */
  public void hinge(EdgeDraft a, EdgeDraft b, Sense sense, FoldAngle angle, Site site) {
    scores.add(new ScoreDraft(a, b, sense, angle, false, true, site));
  }

  /** Makes hinges of all scores between two panels; whether there is one. */
  public boolean hinge(PanelDraft one, PanelDraft other) {
    boolean found = false;
    for (int i = 0; i < scores.size(); i++) {
      ScoreDraft s = scores.get(i);
      if (s.isBetween(one, other)) {
        scores.set(i, new ScoreDraft(s.a, s.b, s.sense, s.angle, s.perforated, true, s.site));
        found = true;
      }
    }
    return found;
  }

  /** The panels that a panel is scored to. */
  public List<PanelDraft> beside(PanelDraft panel) {
    return panels.stream()
        .filter(p -> scores.stream().anyMatch(s -> p != panel && s.isBetween(p, panel)))
        .toList();
  }

  public void slit(EdgeDraft a, EdgeDraft b, Site site) {
    slits.add(new SlitDraft(a, b, site));
  }

  /** Two sides meet when made; {@code tab} is glued under b's panel and may be null for no tab. */
  public void seam(EdgeDraft a, EdgeDraft b, PanelDraft tab, Site site) {
    seams.add(new SeamDraft(a, b, tab, Hold.GLUE, site));
  }

  /** The same, {@code tab} held there otherwise than by glue. */
  public void seam(EdgeDraft a, EdgeDraft b, PanelDraft tab, Hold hold, Site site) {
    seams.add(new SeamDraft(a, b, tab, hold, site));
  }

  public void lap(PanelDraft under, PanelDraft over, Site site) {
    lap(under, over, Hold.GLUE, site);
  }

  /** One panel lies on another, and is held there so. */
  public void lap(PanelDraft under, PanelDraft over, Hold hold, Site site) {
    laps.stream()
        .filter(l -> l.under == under && l.over == over)
        .findFirst()
        .ifPresent(l -> twice.idle("lap", under.name(), l.site, site));
    laps.add(new LapDraft(under, over, hold, site));
  }

  /** A tick drawn from a panel, here in the net. */
  public void tick(PanelDraft panel, Segment2 mark, Site site) {
    ticks.add(new TickDraft(panel, mark, site));
  }

  /** Card was cut away that lay against these sides. */
  public void cutaway(List<EdgeDraft> sides, Site site) {
    cutaways.add(new CutawayDraft(List.copyOf(sides), site));
  }

  /** The corners that lie level when made, counter-clockwise from above. */
  public void stance(List<CornerDraft> ring) {
    stance = List.copyOf(ring);
  }

  /** Stands on this panel, its outside to the table, the side that is drawn lowest in front. */
  public void standOn(PanelDraft base) {
    standOn(base, base.lowest());
  }

  /** The same with another of its sides in front. */
  public void standOn(PanelDraft base, EdgeDraft front) {
    List<EdgeDraft> ring = new ArrayList<>(base.edges().reversed());
    Collections.rotate(ring, 1 - ring.indexOf(front));
    stance = ring.stream().map(CornerDraft::new).toList();
  }

  /** The side scored to this one, or null when it is not scored. */
  public EdgeDraft across(EdgeDraft side) {
    for (ScoreDraft s : scores) {
      if (s.a == side) {
        return s.b;
      }
      if (s.b == side) {
        return s.a;
      }
    }
    return null;
  }

  /** Whether the side is neither scored nor slit. */
  public boolean isFree(EdgeDraft side) {
    return across(side) == null && slits.stream().noneMatch(s -> s.a == side || s.b == side);
  }

  /** Whether the side meets another when made. */
  public boolean isJoined(EdgeDraft side) {
    return seams.stream().anyMatch(s -> s.a == side || s.b == side);
  }

  /**
   * Numbers everything and checks the invariants. Where no stance was given, the net stands on its
   * first facet.
   *
   * @throws NetException when an invariant is broken
   */
  public Net build() {
    if (panels.isEmpty()) {
      throw new NetException("a net needs at least one panel", Site.NONE);
    }
    if (stance.size() < 3) {
      standOn(
          panels.stream()
              .filter(p -> p.role() == PanelRole.FACET)
              .findFirst()
              .orElse(panels.getFirst()));
    }
    IdentityHashMap<EdgeDraft, EdgeRef> refs = new IdentityHashMap<>();
    IdentityHashMap<PanelDraft, Integer> numbers = new IdentityHashMap<>();
    List<Panel> built = new ArrayList<>();
    List<Layer> layers = new ArrayList<>();
    List<Label> labels = new ArrayList<>();
    for (PanelDraft panel : panels) {
      int number = built.size();
      numbers.put(panel, number);
      for (int e = 0; e < panel.edges().size(); e++) {
        refs.put(panel.edges().get(e), new EdgeRef(number, e));
      }
      built.add(panel.build());
      panel.layer().ifPresent(l -> layers.add(new Layer(number, l.reveal(), l.paper(), l.site())));
      panel.labels().forEach(l -> labels.add(new Label(number, l)));
    }
    List<Join> joins = new ArrayList<>();
    for (SeamDraft s : seams) {
      int tab = s.tab == null ? Join.Seam.NO_TAB : numbers.get(s.tab);
      joins.add(new Join.Seam(refs.get(s.a), refs.get(s.b), tab, s.hold, s.site));
    }
    for (LapDraft l : laps) {
      joins.add(new Join.Lap(numbers.get(l.under), numbers.get(l.over), l.hold, l.site));
    }
    Net made =
        new Net(
                built,
                scores.stream()
                    .map(
                        s ->
                            new Score(
                                refs.get(s.a),
                                refs.get(s.b),
                                s.sense,
                                s.angle,
                                s.perforated,
                                s.hinge,
                                s.site))
                    .toList(),
                slits.stream().map(s -> new Slit(refs.get(s.a), refs.get(s.b), s.site)).toList(),
                joins,
                layers,
                ticks.stream().map(t -> new Tick(numbers.get(t.panel), t.mark, t.site)).toList(),
                cutaways.stream()
                    .map(
                        c ->
                            new Cutaway(
                                c.sides.stream().filter(refs::containsKey).map(refs::get).toList(),
                                c.site))
                    .toList(),
                new Stance(
                    stance.stream()
                        .map(c -> refs.get(c.startOf))
                        .map(r -> new Stance.Corner(r.panel(), r.edge()))
                        .toList()))
            .with(Fittings.labelled(labels));
    if (Backings.isAny(made)) {
      // Refuses those there is no room for.
      Backings.of(made);
    }
    return made;
  }
}
