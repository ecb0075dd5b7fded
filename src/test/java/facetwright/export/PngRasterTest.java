package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.FillKind;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.export.pixel.Raster;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Areas and edges of PNG pictures, corner by corner. */
class PngRasterTest {
  /** Java draws the same lines and areas, with other samples. */
  @Test
  @SuppressWarnings("EnumOrdinal") // Any of them in turn.
  void anotherRasterGivesTheSame() {
    int size = 240;
    double scale = 4;
    Random random = new Random(5);
    List<Mark> marks = new ArrayList<>();
    BufferedImage other = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D on = other.createGraphics();
    on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    on.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    on.translate(0, size);
    on.scale(scale, -scale);
    for (int i = 0; i < 12; i++) {
      double x = 5 + 50 * random.nextDouble();
      double y = 5 + 50 * random.nextDouble();
      FillKind fill = FillKind.values()[i % FillKind.values().length];
      Polygon2 ring = Polygon2.regular(new Vec2(x, y), 3 + i % 4, 4, random.nextDouble());
      marks.add(new Mark.Fill(List.of(ring), fill));
      Path2D path = new Path2D.Double();
      path.moveTo(ring.corner(0).x(), ring.corner(0).y());
      ring.corners().forEach(c -> path.lineTo(c.x(), c.y()));
      path.closePath();
      on.setColor(new Color(fill.ink().rgb()));
      on.fill(path);
      LineKind kind = LineKind.values()[i % LineKind.values().length];
      Vec2 to = new Vec2(60 * random.nextDouble(), 60 * random.nextDouble());
      marks.add(Mark.Stroke.line(new Vec2(x, y), to, kind));
      float[] dashes = new float[kind.dashes().size()];
      for (int k = 0; k < dashes.length; k++) {
        dashes[k] = kind.dashes().get(k).floatValue();
      }
      on.setStroke(
          new BasicStroke(
              (float) kind.width(),
              BasicStroke.CAP_BUTT,
              BasicStroke.JOIN_ROUND,
              1,
              dashes.length == 0 ? null : dashes,
              0));
      on.setColor(new Color(kind.ink().rgb()));
      on.draw(new Line2D.Double(x, y, to.x(), to.y()));
    }
    on.dispose();
    Raster raster = new Raster(size, size, scale, scale, Vec2.ZERO);
    raster.paint(marks);
    long apart = 0;
    int seen = 0;
    for (int y = 0; y < size; y++) {
      byte[] row = raster.row(y);
      for (int x = 0; x < size; x++) {
        int alpha = other.getRGB(x, y) >>> 24;
        int difference = Math.abs(alpha - (row[4 * x + 3] & 0xFF));
        assertThat(difference).as(x + ", " + y).isLessThan(72);
        apart += difference;
        seen += alpha > 0 ? 1 : 0;
      }
    }
    assertThat(seen).isGreaterThan(5000);
    assertThat((double) apart / seen).isLessThan(2);
  }

  /** Where two areas touch, no ground shines through, whatever way their border runs. */
  @Test
  void touchingAreasHaveNoSeam() {
    Random random = new Random(3);
    for (int i = 0; i < 50; i++) {
      double a = 60 * random.nextDouble();
      double b = 60 * random.nextDouble();
      Polygon2 left =
          Polygon2.ofEitherSense(
              List.of(new Vec2(0, 0), new Vec2(a, 0), new Vec2(b, 60), new Vec2(0, 60)));
      Polygon2 right =
          Polygon2.ofEitherSense(
              List.of(new Vec2(a, 0), new Vec2(60, 0), new Vec2(60, 60), new Vec2(b, 60)));
      Raster raster = new Raster(60, 60, 1, 1, Vec2.ZERO);
      raster.paint(
          List.of(
              new Mark.Fill(List.of(left), FillKind.CARD),
              new Mark.Fill(List.of(right), FillKind.CARD)));
      for (int y = 0; y < 60; y++) {
        byte[] row = raster.row(y);
        for (int x = 0; x < 60; x++) {
          assertThat(row[4 * x + 3]).isEqualTo((byte) 255);
        }
      }
    }
  }

  /** What is drawn twice over counts as inside for lines, and as outside for areas with holes. */
  @Test
  void ringsInsideRingsAreHoles() {
    Raster raster = new Raster(40, 40, 1, 1, Vec2.ZERO);
    raster.paint(
        List.of(
            new Mark.Fill(
                List.of(Polygon2.rectangle(2, 2, 36, 36), Polygon2.rectangle(10, 10, 20, 20)),
                FillKind.GLUE)));
    byte[] row = raster.row(20);
    assertThat(row[4 * 5 + 3]).isEqualTo((byte) 255);
    assertThat(row[4 * 20 + 3]).isZero();
  }
}
