package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Checks of a net against its form, written apart from the unfolder. */
public final class NetChecks {
  private static final GeometryFactory JTS = new GeometryFactory();

  private NetChecks() {}

  /** All panels of a piece share no area, tabs included: pair by pair, by the overlay library. */
  public static void overlapFree(Net net) {
    List<Polygon> all = net.panels().stream().map(p -> polygon(p.outline())).toList();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (!all.get(i).getEnvelopeInternal().intersects(all.get(j).getEnvelopeInternal())) {
          continue;
        }
        assertThat(all.get(i).intersection(all.get(j)).getArea())
            .as(net.panels().get(i).name() + " on " + net.panels().get(j).name())
            .isLessThan(1e-5);
      }
    }
  }

  private static Polygon polygon(Polygon2 outline) {
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec2 c = outline.corner(i);
      ring[i] = new Coordinate(c.x(), c.y());
    }
    return JTS.createPolygon(ring);
  }

  /** Panel i is facet i: same side lengths, same angles, same area, not mirrored. */
  public static void congruent(Net net, Form form) {
    for (int f = 0; f < form.facets().size(); f++) {
      Polygon2 panel = net.panels().get(f).outline();
      Facet facet = form.facets().get(f);
      assertThat(panel.size()).isEqualTo(facet.size());
      for (int s = 0; s < panel.size(); s++) {
        assertThat(panel.side(s).length())
            .isCloseTo(
                form.corners()
                    .get(facet.corner(s))
                    .distance(form.corners().get(facet.corner(s + 1))),
                within(1e-6));
        assertThat(panel.corner(s).distance(panel.corner(s + 2)))
            .isCloseTo(
                form.corners()
                    .get(facet.corner(s))
                    .distance(form.corners().get(facet.corner(s + 2))),
                within(1e-6));
      }
    }
    double facets =
        net.panels().stream()
            .filter(p -> p.role() == PanelRole.FACET)
            .mapToDouble(p -> p.outline().area())
            .sum();
    assertThat(facets).isCloseTo(form.area(), within(1e-9 * form.area()));
  }

  /** Every edge is scored or seamed once; fold angles and senses are those of the form. */
  public static void edgesAccounted(Net net, Form form) {
    long inner = form.edges().stream().filter(e -> !e.isRim()).count();
    long scores =
        net.scores().stream()
            .filter(
                s -> s.a().panel() < form.facets().size() && s.b().panel() < form.facets().size())
            .count();
    assertThat(scores + net.joins().size()).isEqualTo(inner);
    assertThat(scores).isEqualTo(form.facets().size() - net.pieces());
    for (Score s : net.scores()) {
      FormEdge e = edge(form, s.a().panel(), s.b().panel(), net, s);
      double degrees = Math.toDegrees(Dihedral.of(form, e));
      assertThat(((FoldAngle.Known) s.angle()).degrees())
          .isCloseTo(Math.abs(180 - degrees), within(2e-9));
      if (Math.abs(180 - degrees) > 1e-6) {
        assertThat(s.sense()).isEqualTo(degrees < 180 ? Sense.MOUNTAIN : Sense.VALLEY);
      }
    }
    for (Join join : net.joins()) {
      Join.Seam seam = (Join.Seam) join;
      Segment2 a = net.segment(seam.a());
      Segment2 b = net.segment(seam.b());
      assertThat(a.length()).isCloseTo(b.length(), within(1e-6));
    }
  }

  private static FormEdge edge(Form form, int a, int b, Net net, Score score) {
    int panel = a;
    int side = score.a().edge();
    if (panel >= form.facets().size()) {
      panel = b;
      side = score.b().edge();
    }
    for (FormEdge e : form.edges()) {
      if ((e.left() == panel && e.leftSide() == side)
          || (e.right() == panel && e.rightSide() == side)) {
        return e;
      }
    }
    throw new AssertionError("no edge for a score of " + net.panels().get(panel).name());
  }

  /** Each tab laid back under the panel it is glued to stays inside it, clear of windows. */
  public static void tabsHidden(Net net) {
    for (Join join : net.joins()) {
      Join.Seam seam = (Join.Seam) join;
      if (seam.tab() == Join.Seam.NO_TAB) {
        continue;
      }
      Segment2 a = net.segment(seam.a());
      Segment2 b = net.segment(seam.b());
      Polygon2 under =
          Motion2.carrying(a.from(), a.to(), b.to(), b.from())
              .apply(net.panels().get(seam.tab()).outline());
      Polygon card = net.panels().get(seam.b().panel()).region();
      assertThat(polygon(under).difference(card).getArea())
          .as(net.panels().get(seam.tab()).name())
          .isLessThan(1e-4);
    }
  }
}
