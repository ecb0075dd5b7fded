package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.geom.Planar;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Overlap;
import facetwright.net.Overlaps;
import facetwright.net.PanelRole;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/** Panels that lie over each other in the flat net. */
public final class OverlapRule implements Rule {
  public static final String NAME = "overlap";

  /** What is proposed lies over another by less, in mm². */
  private static final double LEAST = 1e-3;

  @Override
  public List<Finding> find(Subject subject) {
    return Overlaps.find(subject.net()).stream().map(o -> finding(subject, o)).toList();
  }

  private static Finding finding(Subject subject, Overlap o) {
    Message shared =
        Message.of(
            "%s and %s share %s of the sheet",
            subject.name(o.a()), subject.name(o.b()), Value.area(o.area()));
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            Message.of("%s: they can't both be cut from it.", shared),
            fix(subject, o),
            new Place.AtPanel(o.b()),
            subject.panel(o.b()).site())
        .telling(Message.of("%s, and can't both be cut from it", shared));
  }

  private static Message fix(Subject subject, Overlap o) {
    for (int[] pair : new int[][] {{o.b(), o.a()}, {o.a(), o.b()}}) {
      if (subject.panel(pair[0]).role() == PanelRole.TAB) {
        Polygon other = subject.panel(pair[1]).region();
        return TabShape.words(
                subject.name(pair[0]),
                subject.foot(pair[0]),
                subject.panel(pair[0]).outline(),
                tab -> Planar.sharedArea(Planar.polygon(tab), other) <= LEAST,
                "put it on the other side of its seam")
            .plus(".");
      }
    }
    return Message.text("Cut one of them loose and join it by a tab, or hang it on another side.");
  }
}
