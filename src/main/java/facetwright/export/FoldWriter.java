package facetwright.export;

import facetwright.fold.pose.Senses;
import facetwright.geom.Vec3;
import facetwright.json.JsonText;
import facetwright.language.Telling;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.words.Decimals;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;

/**
 * The net and its folded form in the FOLD format, version 1.2: the key frame is the flat crease
 * pattern, the second frame moves the same vertices to where they are folded; senses and angles are
 * those measured in it. Where it is not known how the net folds, the second frame is left out, the
 * net's own angles stand, and the description says so.
 */
final class FoldWriter implements Exporter {
  private static final double VERSION = 1.2;
  private static final int DECIMALS = 9;

  @Override
  public String format() {
    return "fold";
  }

  @Override
  public String ending() {
    return "net.fold";
  }

  @Override
  public String name() {
    return "Net and folded form (FOLD)";
  }

  @Override
  public String use() {
    return "The flat net and the folded form, for programs that read the open FOLD format.";
  }

  /** Programs read it. */
  @Override
  public Telling reader(Job job) {
    return Telling.english(job.unit(), job.order().ruler());
  }

  @Override
  public byte[] write(Job job) {
    return JsonText.dense(json -> write(json, title(job), job)).getBytes(StandardCharsets.UTF_8);
  }

  private static void write(JsonGenerator json, String title, Job job) {
    Net net = job.laid().net();
    FlatMesh mesh = new FlatMesh(net, job.isSolved() ? Senses.folds(net, job.form()) : List.of());
    json.writeNumberProperty("file_spec", VERSION);
    json.writeStringProperty("file_creator", "Facetwright");
    if (!job.author().isBlank()) {
      json.writeStringProperty("file_author", job.author());
    }
    json.writeStringProperty("file_title", title);
    JsonText.strings(json, "file_classes", List.of("singleModel"));
    json.writeStringProperty("frame_title", job.title());
    json.writeStringProperty(
        "frame_description",
        "The flat net, outside up. "
            + job.judgement().text(job.unit())
            + (job.isSolved()
                ? " The second frame is the folded form."
                : " Some fold angles are not known, so there is no folded form."));
    JsonText.strings(json, "frame_classes", List.of("creasePattern"));
    JsonText.strings(json, "frame_attributes", List.of("2D"));
    json.writeStringProperty("frame_unit", "mm");
    flat(json, mesh);
    edges(json, mesh);
    faces(json, mesh, net);
    joins(json, mesh, net);
    if (job.isSolved()) {
      folded(json, mesh, job);
    }
  }

  private static void flat(JsonGenerator json, FlatMesh mesh) {
    json.writeArrayPropertyStart("vertices_coords");
    for (FlatMesh.Vertex v : mesh.vertices()) {
      json.writeStartArray();
      json.writeNumber(rounded(v.at().x()));
      json.writeNumber(rounded(v.at().y()));
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private static void edges(JsonGenerator json, FlatMesh mesh) {
    json.writeArrayPropertyStart("edges_vertices");
    for (FlatMesh.Edge e : mesh.edges()) {
      json.writeArray(new int[] {e.from(), e.to()}, 0, 2);
    }
    json.writeEndArray();
    JsonText.strings(
        json, "edges_assignment", mesh.edges().stream().map(FlatMesh.Edge::assignment).toList());
    json.writeArrayPropertyStart("edges_foldAngle");
    for (FlatMesh.Edge e : mesh.edges()) {
      if (e.angle() == null) {
        json.writeNull();
      } else {
        json.writeNumber(rounded(e.angle()));
      }
    }
    json.writeEndArray();
  }

  private static void faces(JsonGenerator json, FlatMesh mesh, Net net) {
    json.writeArrayPropertyStart("faces_vertices");
    for (int[] face : mesh.faces()) {
      json.writeArray(face, 0, face.length);
    }
    json.writeEndArray();
    JsonText.strings(
        json, "faces_facetwright:name", net.panels().stream().map(Panel::name).toList());
    JsonText.strings(
        json,
        "faces_facetwright:role",
        net.panels().stream().map(p -> p.role().name().toLowerCase(Locale.ROOT)).toList());
  }

  /** Which edges meet when made, as pairs of edge numbers. */
  private static void joins(JsonGenerator json, FlatMesh mesh, Net net) {
    json.writeArrayPropertyStart("facetwright:joins");
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam seam) {
        json.writeArray(new int[] {mesh.edge(seam.a()), mesh.edge(seam.b())}, 0, 2);
      }
    }
    json.writeEndArray();
  }

  private static void folded(JsonGenerator json, FlatMesh mesh, Job job) {
    json.writeArrayPropertyStart("file_frames");
    json.writeStartObject();
    json.writeStringProperty("frame_title", job.title());
    json.writeStringProperty(
        "frame_description",
        String.format(
            Locale.ROOT,
            "The folded form, z up. Largest gap of a join %.4f mm, largest strain %.6f.",
            gap(mesh, job),
            job.form().strain()));
    JsonText.strings(json, "frame_classes", List.of("foldedForm"));
    JsonText.strings(json, "frame_attributes", List.of("3D"));
    json.writeNumberProperty("frame_parent", 0);
    json.writeBooleanProperty("frame_inherit", true);
    json.writeArrayPropertyStart("vertices_coords");
    for (FlatMesh.Vertex v : mesh.vertices()) {
      Vec3 at = place(job, v);
      json.writeStartArray();
      json.writeNumber(rounded(at.x()));
      json.writeNumber(rounded(at.y()));
      json.writeNumber(rounded(at.z()));
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
  }

  /**
   * How far the sides of a seam stand from each other in the frame, or a lap or a loop of scores
   * misses, if that is more.
   */
  private static double gap(FlatMesh mesh, Job job) {
    double most = job.form().gap();
    for (Join join : job.laid().net().joins()) {
      if (join instanceof Join.Seam seam) {
        FlatMesh.Edge a = mesh.edges().get(mesh.edge(seam.a()));
        FlatMesh.Edge b = mesh.edges().get(mesh.edge(seam.b()));
        double along =
            Math.max(apart(mesh, job, a.from(), b.from()), apart(mesh, job, a.to(), b.to()));
        double against =
            Math.max(apart(mesh, job, a.from(), b.to()), apart(mesh, job, a.to(), b.from()));
        most = Math.max(most, Math.min(along, against));
      }
    }
    return most;
  }

  private static double apart(FlatMesh mesh, Job job, int one, int other) {
    return place(job, mesh.vertices().get(one)).distance(place(job, mesh.vertices().get(other)));
  }

  private static Vec3 place(Job job, FlatMesh.Vertex v) {
    return job.form().whole().get(v.panel()).apply(v.at());
  }

  /** To a millionth of a micrometre, without an exponent. */
  private static BigDecimal rounded(double value) {
    return new BigDecimal(Decimals.places(value, DECIMALS));
  }
}
