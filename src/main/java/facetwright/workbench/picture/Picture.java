package facetwright.workbench.picture;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.fold.pose.Measures;
import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Pen;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;

/**
 * The folded form as seen, and its finished size in words.
 *
 * @param size such as "106 mm tall, 76 mm wide"; or why there is no picture
 * @param patches from the farthest to the nearest, in mm
 */
public record Picture(String size, List<Mark.Patch> patches) {
  private static final int FORM = 3;
  private static final int MOST = 100_000;

  public Picture {
    patches = List.copyOf(patches);
  }

  /** What a design looks like, a little from the left and above. */
  static Picture of(Design design) {
    Measures m = design.folded().measures();
    Unit unit = design.unit();
    return new Picture(
        (design.isSound() ? "" : "✕ ")
            + length(m.height(), unit)
            + " tall, "
            + length(m.width(), unit)
            + " wide",
        new FoldedDrawing(design.net(), design.folded().whole(), true).seen(Viewpoint.USUAL));
  }

  private static String length(double mm, Unit unit) {
    return new Length(mm).atAGlance(unit);
  }

  /** Paints it into a field of this size. */
  public void paint(GraphicsContext on, double width, double height, double margin) {
    on.clearRect(0, 0, width, height);
    if (patches.isEmpty()) {
      return;
    }
    List<Vec2> corners =
        patches.stream()
            .flatMap(p -> p.rings().stream())
            .flatMap(r -> r.corners().stream())
            .toList();
    Camera camera = Camera.showing(Box2.around(corners), width, height, margin);
    new Pen(on, camera, false).paintAll(patches);
  }

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeInt(FORM);
      out.writeUTF(size);
      out.writeInt(patches.size());
      for (Mark.Patch patch : patches) {
        out.writeInt(patch.ink().red() << 16 | patch.ink().green() << 8 | patch.ink().blue());
        out.writeInt(patch.rings().size());
        for (Polygon2 ring : patch.rings()) {
          write(ring.corners(), out);
        }
        out.writeInt(patch.edges().size());
        for (Mark.Stroke edge : patch.edges()) {
          out.writeUTF(edge.kind().name());
          out.writeBoolean(edge.closed());
          write(edge.points(), out);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void write(List<Vec2> points, DataOutputStream out) throws IOException {
    out.writeInt(points.size());
    for (Vec2 p : points) {
      out.writeDouble(p.x());
      out.writeDouble(p.y());
    }
  }

  /**
   * @throws IOException when the bytes are no picture of this form
   */
  static Picture read(byte[] bytes) throws IOException {
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
    if (in.readInt() != FORM) {
      throw new IOException("another form of picture");
    }
    try {
      String size = in.readUTF();
      List<Mark.Patch> patches = new ArrayList<>();
      for (int left = count(in); left > 0; left--) {
        Ink ink = new Ink(in.readInt());
        List<Polygon2> rings = new ArrayList<>();
        for (int r = count(in); r > 0; r--) {
          rings.add(Polygon2.ofEitherSense(points(in)));
        }
        List<Mark.Stroke> edges = new ArrayList<>();
        for (int e = count(in); e > 0; e--) {
          LineKind kind = LineKind.valueOf(in.readUTF());
          boolean closed = in.readBoolean();
          edges.add(new Mark.Stroke(points(in), closed, kind));
        }
        patches.add(new Mark.Patch(rings, ink, edges, 0));
      }
      return new Picture(size, patches);
    } catch (IllegalArgumentException e) {
      throw new IOException("a damaged picture", e);
    }
  }

  private static List<Vec2> points(DataInputStream in) throws IOException {
    List<Vec2> points = new ArrayList<>();
    for (int i = count(in); i > 0; i--) {
      points.add(new Vec2(in.readDouble(), in.readDouble()));
    }
    return points;
  }

  private static int count(DataInputStream in) throws IOException {
    int n = in.readInt();
    if (n < 0 || n > MOST) {
      throw new IOException("a damaged picture");
    }
    return n;
  }
}
