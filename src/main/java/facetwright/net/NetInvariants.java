package facetwright.net;

import facetwright.geom.Apart;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Site;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** What every {@link Net} has passed, checked once. */
final class NetInvariants {
  private static final LengthTolerance TOLERANCE = LengthTolerance.FINE;

  private NetInvariants() {}

  static void check(
      List<Panel> panels,
      List<Score> scores,
      List<Slit> slits,
      List<Join> joins,
      List<Layer> layers,
      Stance stance) {
    if (panels.isEmpty()) {
      throw new NetException("a net needs at least one panel", Site.NONE);
    }
    panels.forEach(p -> checkPanel(p, panels, scores));
    Set<EdgeRef> used = new HashSet<>();
    for (Score s : scores) {
      pair(panels, used, s.a(), s.b(), "score", s.site());
    }
    for (Slit s : slits) {
      pair(panels, used, s.a(), s.b(), "slit", s.site());
    }
    for (Join join : joins) {
      switch (join) {
        case Join.Seam(EdgeRef a, EdgeRef b, int tab, _, Site site) -> {
          require(
              hasEdge(panels, a) && hasEdge(panels, b), "a seam names no side of a panel", site);
          require(
              tab == Join.Seam.NO_TAB || hasPanel(panels, tab), "a seam names no tab panel", site);
        }
        case Join.Lap(int under, int over, _, Site site) ->
            require(
                hasPanel(panels, under) && hasPanel(panels, over) && under != over,
                "a lap needs two different panels",
                site);
      }
    }
    for (Layer layer : layers) {
      require(hasPanel(panels, layer.panel()), "a layer names no panel", layer.site());
      require(layer.reveal() >= 0, "a layer's reveal can't be below 0 mm", layer.site());
    }
    for (Stance.Corner c : stance.ring()) {
      require(
          hasPanel(panels, c.panel())
              && c.corner() >= 0
              && c.corner() < panels.get(c.panel()).outline().size(),
          "the stance names no corner of a panel",
          Site.NONE);
    }
  }

  private static void checkPanel(Panel panel, List<Panel> panels, List<Score> scores) {
    String who = "panel \"" + panel.name() + "\"";
    shape(panel.outline(), who, panel.site());
    if (!panel.outline().isSimple()) {
      Vec2 at = Planar.selfContact(panel.outline().corners()).orElse(panel.outline().corner(0));
      throw new NetException(
          Message.of("the outline of %s%s", who, Shapes.crossing(at)), panel.site());
    }
    if (panel.openings().isEmpty()) {
      return;
    }
    PreparedGeometry card = PreparedGeometryFactory.prepare(Planar.polygon(panel.outline()));
    Apart apart = new Apart();
    for (Opening opening : panel.openings()) {
      shape(opening.outline(), "a " + opening.word() + " in " + who, opening.site());
      Polygon cut = Planar.polygon(opening.outline());
      require(cut.isValid(), "a window in " + who + " crosses itself", opening.site());
      if (!card.containsProperly(cut)) {
        throw new NetException(
            Shapes.overEdge("a " + opening.word() + " in " + who, opening, panel.outline()),
            opening.site(),
            OpeningMends.of(Clearance.all(panels, scores), opening.site()));
      }
      if (!apart.takes(cut)) {
        throw new NetException(
            "two windows or holes in " + who + " run into each other",
            opening.site(),
            OpeningMends.of(Clearance.all(panels, scores), opening.site()));
      }
    }
  }

  /** Every side has a length, and the whole a width. */
  private static void shape(Polygon2 outline, String who, Site site) {
    for (int i = 0; i < outline.size(); i++) {
      Vec2 from = outline.corner(i);
      if (TOLERANCE.same(from, outline.corner(i + 1))) {
        throw new NetException(
            Message.of(
                "%s has two corners in one place, %s in the net: leave one of them out, or move"
                    + " what begins and ends there apart",
                who, Ask.place(from)),
            site);
      }
    }
    if (outline.meanWidth() < Shapes.NARROWEST) {
      throw new NetException(
          Message.of(
              "%s is narrower than %s, too little to be cut: make it wider or leave it out",
              who, Value.limit(Shapes.NARROWEST)),
          site);
    }
  }

  private static void pair(
      List<Panel> panels, Set<EdgeRef> used, EdgeRef a, EdgeRef b, String what, Site site) {
    require(hasEdge(panels, a) && hasEdge(panels, b), "a " + what + " names no side", site);
    require(a.panel() != b.panel(), "a " + what + " needs two different panels", site);
    require(
        used.add(a) && used.add(b), "one side can't belong to two scores or slits: " + what, site);
    for (EdgeRef side : List.of(a, b)) {
      require(
          !panels.get(side.panel()).outline().isRound(side.edge()),
          "a "
              + what
              + " of panel \""
              + panels.get(side.panel()).name()
              + "\" runs along an arc: cut arcs, and fold along straight sides",
          site);
    }
    Segment2 one = panels.get(a.panel()).outline().side(a.edge());
    Segment2 two = panels.get(b.panel()).outline().side(b.edge());
    if (!TOLERANCE.same(one.from(), two.to()) || !TOLERANCE.same(one.to(), two.from())) {
      throw new NetException(
          Message.of(
              "the two sides of a %s between %s and %s do not lie on one line: they are %s and %s"
                  + " long and %s apart",
              what,
              Value.name(panels.get(a.panel()).name()),
              Value.name(panels.get(b.panel()).name()),
              Value.length(one.length()),
              Value.length(two.length()),
              Value.length(Math.max(one.from().distance(two.to()), one.to().distance(two.from())))),
          site);
    }
  }

  private static boolean hasPanel(List<Panel> panels, int index) {
    return index >= 0 && index < panels.size();
  }

  private static boolean hasEdge(List<Panel> panels, EdgeRef ref) {
    return hasPanel(panels, ref.panel())
        && ref.edge() >= 0
        && ref.edge() < panels.get(ref.panel()).outline().size();
  }

  private static void require(boolean holds, String message, Site site) {
    if (!holds) {
      throw new NetException(message, site);
    }
  }
}
