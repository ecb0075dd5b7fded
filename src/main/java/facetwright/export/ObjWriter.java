package facetwright.export;

import facetwright.geom.Vec3;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.words.Decimals;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The folded form as facets in text, in mm, z up: the groups facets, gussets and tabs. Panels with
 * openings or hollow outlines are given as triangles, all others whole. A form whose fold angles
 * are not all known is written as far as it folds, and says so.
 */
final class ObjWriter implements Exporter {
  private static final int DECIMALS = 9;

  @Override
  public String format() {
    return "obj";
  }

  @Override
  public String ending() {
    return "folded.obj";
  }

  @Override
  public String name() {
    return "Folded model (OBJ)";
  }

  @Override
  public String use() {
    return "The folded form in space, for a 3D program.";
  }

  /** Programs read it. */
  @Override
  public Telling reader(Job job) {
    return Telling.english(job.unit(), job.order().ruler());
  }

  @Override
  public byte[] write(Job job) {
    Net net = job.laid().net();
    FoldedMesh mesh = job.mesh(FoldedMesh.all(net));
    StringBuilder out = new StringBuilder();
    out.append("# ").append(title(job)).append('\n');
    out.append("# made with Facetwright; millimetres, z up\n");
    if (!job.isSolved()) {
      out.append("# folded as far as its fold angles are known; the rest is left flat\n");
    }
    for (Vec3 v : mesh.vertices()) {
      out.append("v ")
          .append(Decimals.places(v.x(), DECIMALS))
          .append(' ')
          .append(Decimals.places(v.y(), DECIMALS))
          .append(' ')
          .append(Decimals.places(v.z(), DECIMALS))
          .append('\n');
    }
    for (PanelRole role : PanelRole.values()) {
      boolean started = false;
      for (FoldedMesh.Part part : mesh.parts()) {
        if (net.panels().get(part.panel()).role() != role) {
          continue;
        }
        if (!started) {
          out.append("g ").append(group(role)).append('\n');
          started = true;
        }
        if (part.whole()) {
          face(out, part.outline());
        } else {
          part.triangles().forEach(t -> face(out, List.of(t[0], t[1], t[2])));
        }
      }
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String group(PanelRole role) {
    return switch (role) {
      case FACET -> "facets";
      case GUSSET -> "gussets";
      case TAB -> "tabs";
    };
  }

  private static void face(StringBuilder out, List<Integer> vertices) {
    out.append('f');
    for (int v : vertices) {
      out.append(' ').append(v + 1);
    }
    out.append('\n');
  }
}
