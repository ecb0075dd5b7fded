package facetwright.net.blank;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.net.Ask;
import facetwright.net.Backing;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.net.fitting.Lettered;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Point;

/** Makes a net of a blank's regions. */
final class BlankBuild {
  private final Blank blank;
  private final BlankRegions lines;
  private final List<BlankRegions.Region> regions;
  private final PanelDraft[] panels;
  private final NetDraft net;

  private record Ends(Vec2 from, Vec2 to) {}

  private final List<Between> folds = new ArrayList<>();

  /** Where a word was said of a thing. */
  private final Map<List<Object>, Site> said = new HashMap<>();

  BlankBuild(Blank blank) {
    this.blank = blank;
    net = new NetDraft(blank.twice);
    lines = new BlankRegions(blank);
    regions = lines.find();
    panels = new PanelDraft[regions.size()];
  }

  Net build() {
    boolean[] waste = new boolean[regions.size()];
    for (Mark mark : blank.marks) {
      if (mark instanceof Mark.Waste w) {
        int region = region(w.at(), w.site());
        if (waste[region]) {
          blank.twice.idle("waste", "", said.get(List.of("waste", region)), w.site());
        }
        said.putIfAbsent(List.of("waste", region), w.site());
        waste[region] = true;
      }
    }
    int number = 0;
    for (int i = 0; i < panels.length; i++) {
      if (!waste[i]) {
        number++;
        panels[i] =
            net.panel(
                    "panel " + number,
                    PanelRole.FACET,
                    regions.get(i).outline().corners(),
                    blank.site)
                .onBlank();
        openInner(i);
      }
    }
    Ask.that(number > 0, "nothing is left of the blank", blank.site);
    blank.marks.forEach(
        m -> {
          if (m instanceof Mark.Folded f) {
            folds.add(new Between(panels(f.a(), f.site()), panels(f.b(), f.site()), f));
          }
        });
    pairSides();
    folds.forEach(f -> f.tell(blank.twice));
    Redrawn.tell(blank.lines, blank.twice);
    blank.marks.forEach(this::apply);
    if (blank.marks.stream().noneMatch(Mark.Base.class::isInstance)) {
      net.panels().stream()
          .filter(p -> p.role() == PanelRole.FACET)
          .max(Comparator.comparingDouble(p -> Math.rint(p.outline().area() * 1e6)))
          .ifPresent(net::standOn);
    }
    return net.build();
  }

  private void openInner(int region) {
    for (Polygon2 inner : regions.get(region).inner()) {
      Site site = blank.site;
      for (int e = 0; e < inner.size(); e++) {
        Line line = lines.lineAt(inner.side(e).middle());
        Ask.that(
            line.isCut(),
            () ->
                Message.of(
                    "%s lies inside a panel and joins nothing to its edge: run it across the"
                        + " panel",
                    line.told()),
            line.site());
        site = line.site();
      }
      panels[region].open(new Opening.Window(inner, site));
    }
  }

  /** Scores and slits where two regions share a side. */
  private void pairSides() {
    Map<Ends, EdgeDraft> open = new LinkedHashMap<>();
    for (PanelDraft panel : panels) {
      if (panel == null) {
        continue;
      }
      for (EdgeDraft side : panel.edges()) {
        EdgeDraft other = open.remove(new Ends(side.to(), side.from()));
        if (other == null) {
          open.put(new Ends(side.from(), side.to()), side);
          continue;
        }
        join(other, side);
      }
    }
  }

  private void join(EdgeDraft a, EdgeDraft b) {
    Vec2 middle = b.segment().middle();
    Line line = Between.said(folds, lines.lineAt(middle), a.panel(), b.panel());
    int turns = line.folds().size();
    LineFold fold =
        turns == 0
            ? LineFold.FREE
            : line.folds()
                .get(turns == 1 ? 0 : BlankRegions.stretch(line, middle, regions) % turns);
    switch (line.kind()) {
      case CUT -> net.slit(a, b, line.site());
      case PERFORATED -> net.perforation(a, b, fold.sense(), fold.angle(), line.site());
      case SCORE -> net.score(a, b, fold.sense(), fold.angle(), line.site());
    }
  }

  private void apply(Mark mark) {
    switch (mark) {
      case Mark.Waste _, Mark.Folded _ -> {}
      case Mark.Bordered(Vec2 at, double border, Site site) -> border(at, border, site);
      case Mark.Name(Vec2 at, String name, Site site) -> {
        once("name", panel(at, site), site);
        Site alike = said.putIfAbsent(List.of("name", name), site);
        if (alike != null && !panel(at, site).name().equals(name)) {
          blank.twice.alike("name", name, alike, site);
        }
        panel(at, site).rename(name);
      }
      case Mark.Role(Vec2 at, PanelRole role, Site site) -> {
        once("role", panel(at, site), site);
        panel(at, site).become(role);
      }
      case Mark.Layered(Vec2 at, double reveal, String paper, Site site) ->
          panel(at, site).layer(reveal, paper, site);
      case Mark.Window(Polygon2 outline, Site site) ->
          panel(inside(outline), site).open(new Opening.Window(outline, site));
      case Mark.Backed(Vec2 at, Backing backing) -> panel(at, backing.site()).back(backing);
      case Mark.Written(Vec2 at, Lettered words) -> panel(at, words.site()).label(words);
      case Mark.Hole(Vec2 at, double diameter, Site site) ->
          panel(at, site).open(new Opening.Hole(at, diameter, site));
      case Mark.Base(Vec2 at, Site site) -> {
        once("standOn", net, site);
        net.standOn(panel(at, site));
      }
      case Mark.Lapped(Vec2 under, Vec2 over, Site site) ->
          net.lap(panel(under, site), panel(over, site), site);
      case Mark.Joined(Vec2 a, Vec2 b, Vec2 tab, Site site) -> join(a, b, tab, site);
    }
  }

  /** What is said of one thing twice counts as it is said last. */
  private void once(String word, Object of, Site site) {
    Site before = said.put(List.of(word, of), site);
    if (before != null) {
      blank.twice.replaced(word, of instanceof PanelDraft p ? p.name() : "", before, site);
    }
  }

  private void border(Vec2 at, double border, Site site) {
    panel(at, site).openWithin(border, site);
  }

  private void join(Vec2 a, Vec2 b, Vec2 tab, Site site) {
    PanelDraft glued = tab == null ? null : panel(tab, site);
    List<EdgeDraft> sides = new ArrayList<>(panel(a, site).edges());
    if (glued != null) {
      sides.removeIf(s -> net.across(s) == null || net.across(s).panel() != glued);
      Ask.that(
          !sides.isEmpty(),
          () ->
              Message.of(
                  "the tab at %s does not hang on the panel at %s: draw a score between them, or"
                      + " give a point in the tab that does",
                  Ask.place(tab), Ask.place(a)),
          site);
      glued.become(PanelRole.TAB);
    }
    net.seam(nearest(sides, a), nearest(panel(b, site).edges(), b), glued, site);
  }

  private static EdgeDraft nearest(List<EdgeDraft> sides, Vec2 point) {
    return sides.stream()
        .min(Comparator.comparingDouble(s -> s.segment().distance(point)))
        .orElseThrow();
  }

  private static Vec2 inside(Polygon2 outline) {
    Point inside = Planar.polygon(outline).getInteriorPoint();
    return new Vec2(inside.getX(), inside.getY());
  }

  private List<PanelDraft> panels(List<Vec2> at, Site site) {
    return at.stream().map(p -> panel(p, site)).toList();
  }

  private PanelDraft panel(Vec2 at, Site site) {
    PanelDraft panel = panels[region(at, site)];
    Ask.that(
        panel != null,
        () ->
            Message.of(
                "the panel at %s is cut away as waste: give a point in another, or do not call"
                    + " waste there",
                Ask.place(at)),
        site);
    return panel;
  }

  private int region(Vec2 at, Site site) {
    Point point = Planar.factory().createPoint(Planar.coordinate(at));
    for (int i = 0; i < regions.size(); i++) {
      if (regions.get(i).shape().contains(point)) {
        return i;
      }
    }
    throw new NetException(
        Message.of("the point %s lies on a line: give one inside a panel", Ask.place(at)), site);
  }
}
