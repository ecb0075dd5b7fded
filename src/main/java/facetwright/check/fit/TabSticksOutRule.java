package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.fold.making.Bodies;
import facetwright.fold.place.FreeSides;
import facetwright.fold.pose.Closure;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tabs folded over an opening that stick out past its rim, as where they are deeper than the
 * opening is wide or where its corners are sharper than theirs.
 *
 * <p>What it does not detect: tabs that lie aslant to the opening, which pass through panels or
 * hang free; and tabs that are folded outward, as a brim is.
 */
public final class TabSticksOutRule implements Rule {
  /** Of a tab that lies over an opening at least so much does, as part of its area. */
  private static final double OVER = 0.1;

  /**
   * A tab and the opening it lies over, in the tab's own plane, its foot from one end to the other.
   */
  private record Folded(int tab, Segment2 foot, Polygon2 outline, Polygon2 opening) {}

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    Map<EdgeRef, List<FreeSides.Side>> ringOf = new HashMap<>();
    boolean looked = false;
    for (Score score : subject.net().scores()) {
      boolean first = subject.panel(score.a().panel()).role() == PanelRole.TAB;
      EdgeRef foot = first ? score.a() : score.b();
      if (subject.panel(foot.panel()).role() != PanelRole.TAB) {
        continue;
      }
      if (!looked) {
        ringOf = rings(subject);
        looked = true;
      }
      List<FreeSides.Side> ring = ringOf.get(first ? score.b() : score.a());
      if (ring != null) {
        look(subject, foot, ring, found);
      }
    }
    return found;
  }

  private static Map<EdgeRef, List<FreeSides.Side>> rings(Subject subject) {
    Map<EdgeRef, List<FreeSides.Side>> ringOf = new HashMap<>();
    for (List<Integer> body : Bodies.of(subject.net())) {
      for (List<FreeSides.Side> ring :
          FreeSides.rings(FreeSides.of(subject.net(), subject.folded().poses(), body))) {
        ring.forEach(side -> ringOf.put(side.ref(), ring));
      }
    }
    return ringOf;
  }

  private static void look(
      Subject subject, EdgeRef foot, List<FreeSides.Side> ring, List<Finding> found) {
    Motion3 back = subject.folded().poses().get(foot.panel()).inverse();
    List<Vec2> corners = new ArrayList<>();
    for (FreeSides.Side side : ring) {
      Vec3 at = back.apply(side.from());
      if (Math.abs(at.z()) > Mm.HAIR) {
        return;
      }
      corners.add(new Vec2(at.x(), at.y()));
    }
    Optional<Polygon2> opening =
        Polygon2.wide(corners)
            .or(() -> Polygon2.wide(corners.reversed()))
            .filter(Polygon2::isSimple);
    if (opening.isEmpty()) {
      return;
    }
    Polygon2 outline = subject.panel(foot.panel()).outline();
    double past = TabShape.past(outline, opening.get());
    if (past > Mm.HAIR && Planar.sharedArea(outline, opening.get()) >= OVER * outline.area()) {
      Folded folded = new Folded(foot.panel(), subject.net().segment(foot), outline, opening.get());
      found.add(finding(subject, folded, past));
    }
  }

  private static Finding finding(Subject subject, Folded folded, double past) {
    Value.Name tab = subject.name(folded.tab());
    return new Finding(
        "tab-sticks-out",
        Finding.Severity.WARNING,
        Message.of(
            "%s, folded over the opening it stands at, sticks out %s past the rim.",
            tab, Value.length(past)),
        TabShape.within(tab, folded.foot(), folded.outline(), folded.opening()),
        new Place.AtPanel(folded.tab()),
        subject.panel(folded.tab()).site());
  }
}
