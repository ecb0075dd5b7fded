package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Planar;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Panel;
import facetwright.net.Tick;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Ticks that run off the card. */
public final class TickOffCardRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Tick tick : subject.net().ticks()) {
      double off = off(tick.mark(), subject.net().panels());
      if (off > Mm.HAIR) {
        found.add(
            new Finding(
                "tick-off-card",
                Finding.Severity.WARNING,
                Message.of(
                    "%s of a tick, %s long in all, lies off the card.",
                    Value.length(off), Value.length(tick.mark().length())),
                Message.text(
                    "Draw it between places of its panel, counted from the panel's own corner."),
                new Place.WholeNet(),
                tick.site()));
      }
    }
    return found;
  }

  /** Length of a mark that lies on no panel, in mm. */
  private static double off(Segment2 mark, List<Panel> panels) {
    Coordinate[] ends = {Planar.coordinate(mark.from()), Planar.coordinate(mark.to())};
    Envelope box = new Envelope(ends[0], ends[1]);
    Geometry left = Planar.factory().createLineString(ends);
    for (Panel panel : panels) {
      Geometry card = Planar.polygon(panel.outline());
      if (card.getEnvelopeInternal().intersects(box)) {
        left = left.difference(card);
      }
    }
    return left.getLength();
  }
}
