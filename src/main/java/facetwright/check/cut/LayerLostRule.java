package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Most;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Layer;
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
      double most = Most.under(layer.reveal(), mm -> layer.showing(mm).isLeftOf(panel));
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
}
