package facetwright.check.fit;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.geom.Motion2;
import facetwright.geom.Motion3;
import facetwright.geom.PartingSides;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * A tab as it lies under its host once glued.
 *
 * @param join index of the join that glues it
 * @param tab index of the tab
 * @param host index of the panel it is glued under
 * @param lying the tab's outline where the host lies in the net
 * @param foot the side of it that is scored, the tab on its left
 */
record Glued(int join, int tab, int host, Polygon2 lying, Segment2 foot) {
  /** A sliver this deep does not count, in mm. */
  static final double SHALLOW = 0.05;

  /**
   * All glued tabs: of seams, unfolded about the seam into the host's plane; of laps, as they lie
   * in the folded form where the lap closes.
   */
  static List<Glued> of(Subject subject) {
    List<Glued> all = new ArrayList<>();
    for (int j = 0; j < subject.net().joins().size(); j++) {
      switch (subject.net().joins().get(j)) {
        case Join.Seam s -> {
          if (s.tab() != Join.Seam.NO_TAB) {
            all.add(glued(subject, j, s.tab(), s.b().panel(), unfolded(subject, s)));
          }
        }
        case Join.Lap(int under, int over, _, _) -> {
          if (subject.panel(under).role() == PanelRole.TAB && meets(subject, j)) {
            all.add(glued(subject, j, under, over, shadow(subject, under, over)));
          }
        }
      }
    }
    return all;
  }

  private static Glued glued(
      Subject subject, int join, int tab, int host, UnaryOperator<Vec2> move) {
    List<Vec2> corners = subject.panel(tab).outline().corners().stream().map(move).toList();
    Polygon2 lying = Polygon2.ofEitherSense(corners);
    Segment2 side = subject.foot(tab);
    Segment2 foot = new Segment2(move.apply(side.from()), move.apply(side.to()));
    boolean isTurned = foot.direction().cross(lying.centroid().minus(foot.from())) < 0;
    return new Glued(join, tab, host, lying, isTurned ? foot.reversed() : foot);
  }

  private static UnaryOperator<Vec2> unfolded(Subject subject, Join.Seam seam) {
    Segment2 a = subject.net().segment(seam.a());
    Segment2 from = seam.a().panel() == seam.tab() ? a.reversed() : a;
    Segment2 onto = subject.net().segment(seam.b()).reversed();
    return Motion2.carrying(from.from(), from.to(), onto.from(), onto.to())::apply;
  }

  private static boolean meets(Subject subject, int join) {
    return subject.folded().gaps().stream().anyMatch(g -> g.join() == join && g.mm() <= Mm.HAIR);
  }

  private static UnaryOperator<Vec2> shadow(Subject subject, int tab, int host) {
    Motion3 move =
        subject.folded().poses().get(tab).then(subject.folded().poses().get(host).inverse());
    return corner -> {
      Vec3 p = move.apply(corner);
      return new Vec2(p.x(), p.y());
    };
  }

  /** How far the tab reaches past the host's outline, in mm; 0 where it does not. */
  double past(Subject subject) {
    return TabShape.past(lying, subject.panel(host).outline());
  }

  /** Whether two outlines share more than a shallow sliver. */
  static boolean share(Polygon2 a, Polygon2 b) {
    if (!a.box().meets(b.box()) || PartingSides.isApart(a, b)) {
      return false;
    }
    Geometry both =
        OverlayNGRobust.overlay(Planar.polygon(a), Planar.polygon(b), OverlayNG.INTERSECTION);
    return both.getArea() > SHALLOW * both.getLength() / 2;
  }
}
