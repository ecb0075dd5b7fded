package facetwright.export;

import facetwright.geom.Vec3;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The folded form as triangles, binary, in mm, z up. A form that closes is given by its facets
 * alone, as a body; one that does not, with all its panels. Windows and holes stay open.
 */
final class StlWriter implements Exporter {
  private static final int HEADER = 80;
  private static final int TRIANGLE = 50;

  @Override
  public String format() {
    return "stl";
  }

  @Override
  public String ending() {
    return "folded.stl";
  }

  @Override
  public String name() {
    return "Folded model (STL)";
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
    FoldedMesh mesh = job.mesh(panels(job));
    List<int[]> triangles = mesh.parts().stream().flatMap(p -> p.triangles().stream()).toList();
    ByteBuffer out =
        ByteBuffer.allocate(HEADER + 4 + TRIANGLE * triangles.size())
            .order(ByteOrder.LITTLE_ENDIAN);
    String how = job.isSolved() ? "" : "; folded as far as its angles are known";
    String head = "Facetwright, millimetres, z up" + how + ". " + title(job);
    byte[] told = head.getBytes(StandardCharsets.US_ASCII);
    out.put(told, 0, Math.min(HEADER, told.length));
    out.position(HEADER);
    out.putInt(triangles.size());
    for (int[] t : triangles) {
      Vec3 a = mesh.vertices().get(t[0]);
      Vec3 b = mesh.vertices().get(t[1]);
      Vec3 c = mesh.vertices().get(t[2]);
      Vec3 square = b.minus(a).cross(c.minus(a));
      put(out, square.length() > 0 ? square.unit() : Vec3.ZERO);
      put(out, a);
      put(out, b);
      put(out, c);
      out.putShort((short) 0);
    }
    return out.array();
  }

  private static List<Integer> panels(Job job) {
    Net net = job.laid().net();
    boolean closed = job.form().closes();
    return FoldedMesh.all(net).stream()
        .filter(p -> !closed || net.panels().get(p).role() == PanelRole.FACET)
        .toList();
  }

  private static void put(ByteBuffer out, Vec3 v) {
    // Adding 0 turns −0 into 0.
    out.putFloat((float) v.x() + 0f).putFloat((float) v.y() + 0f).putFloat((float) v.z() + 0f);
  }
}
