package facetwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import facetwright.fold.FlatFolding;
import facetwright.fold.Vertices;
import facetwright.net.Net;
import facetwright.net.Stance;
import facetwright.script.Design;
import java.io.IOException;
import java.util.Optional;

/**
 * The points of the made form where panels meet, as JSON: which panels, the sum of their angles,
 * and where all scores are to be folded right over, what flat folding asks for.
 */
final class CheckVertices {
  private CheckVertices() {}

  static void write(JsonGenerator json, Design design) throws IOException {
    json.writeArrayFieldStart("vertices");
    for (Vertices.Vertex vertex : Vertices.of(design.net(), design.folded())) {
      vertex(json, design.net(), vertex);
    }
    json.writeEndArray();
  }

  private static void vertex(JsonGenerator json, Net net, Vertices.Vertex vertex)
      throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("panels");
    for (Stance.Corner corner : vertex.corners()) {
      json.writeString(net.panels().get(corner.panel()).name());
    }
    json.writeEndArray();
    json.writeNumberField("angle_sum_deg", vertex.angleSum());
    json.writeBooleanField("closed", vertex.closed());
    json.writeBooleanField("interior", vertex.interior());
    Optional<FlatFolding> flat = FlatFolding.at(net, vertex).filter(FlatFolding::isMeant);
    if (flat.isPresent()) {
      json.writeObjectFieldStart("fold_flat");
      json.writeNumberField("alternating_deg", flat.get().alternating());
      json.writeNumberField("surplus", flat.get().surplus());
      json.writeBooleanField("possible", flat.get().isPossible());
      json.writeEndObject();
    }
    json.writeEndObject();
  }
}
