package facetwright.cli.json;

import facetwright.fold.pose.FlatFolding;
import facetwright.fold.pose.Vertices;
import facetwright.json.JsonText;
import facetwright.net.Net;
import facetwright.net.Stance;
import facetwright.script.design.Design;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/**
 * The points of the made form where panels meet, as JSON: which panels, the sum of their angles,
 * and where all scores are to be folded right over, what flat folding asks for.
 */
final class CheckVertices {
  private CheckVertices() {}

  static void write(JsonGenerator json, Design design) {
    Net net = design.net();
    JsonText.objects(
        json, "vertices", Vertices.of(net, design.folded()), vertex -> vertex(json, net, vertex));
  }

  private static void vertex(JsonGenerator json, Net net, Vertices.Vertex vertex) {
    FormJson.panels(
        json, "panels", net, vertex.corners().stream().map(Stance.Corner::panel).toList());
    json.writeNumberProperty("angle_sum_deg", vertex.angleSum());
    json.writeBooleanProperty("closed", vertex.closed());
    json.writeBooleanProperty("interior", vertex.interior());
    Optional<FlatFolding> flat = FlatFolding.at(net, vertex).filter(FlatFolding::isMeant);
    if (flat.isPresent()) {
      json.writeObjectPropertyStart("fold_flat");
      json.writeNumberProperty("alternating_deg", flat.get().alternating());
      json.writeNumberProperty("surplus", flat.get().surplus());
      json.writeBooleanProperty("possible", flat.get().isPossible());
      json.writeEndObject();
    }
  }
}
