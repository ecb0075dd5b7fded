package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Layer;
import facetwright.net.Opening;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.List;

/** Layers of which the reveal leaves too little to be cut and glued. */
public final class LayerLostRule implements Rule {
  /** How near the most room is found, in mm. */
  private static final double NEAR = 0.01;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Layer layer : subject.net().layers()) {
      Panel panel = subject.panel(layer.panel());
      if (layer.isLeftOf(panel)) {
        continue;
      }
      double most = room(panel) - Layer.NARROWEST / 2;
      found.add(
          new Finding(
              "layer-lost",
              Finding.Severity.WARNING,
              Message.of(
                  "A reveal of %s leaves no paper on %s as wide as %s: the layer is left out.",
                  Value.length(layer.reveal()),
                  subject.name(layer.panel()),
                  Value.length(Layer.NARROWEST)),
              most >= NEAR
                  ? Message.of(
                      "Make the reveal %s or less, or leave the layer out.", Value.atMost(most))
                  : Message.text("Leave the layer out: the panel is too narrow for it."),
              new Place.AtPanel(layer.panel()),
              layer.site()));
    }
    return found;
  }

  /** How far the edges of a panel are from the place with the most room about it, in mm. */
  private static double room(Panel panel) {
    List<Polygon2> openings = panel.openings().stream().map(Opening::outline).toList();
    Vec2 place = Planar.inmost(panel.outline(), openings, NEAR);
    Segment2 point = new Segment2(place, place);
    double room = Double.POSITIVE_INFINITY;
    for (int i = 0; i < panel.outline().size(); i++) {
      room = Math.min(room, panel.outline().side(i).distance(place));
    }
    for (Opening opening : panel.openings()) {
      room = Math.min(room, opening.room(point));
    }
    return room;
  }
}
