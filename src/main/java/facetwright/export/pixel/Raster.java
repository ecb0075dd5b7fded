package facetwright.export.pixel;

import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;

/** Marks as pixels on a transparent ground. */
public final class Raster {
  private final double pen;
  private final AffineTransform place = new AffineTransform();
  private final Samples samples;

  /**
   * @param width in pixels
   * @param height in pixels
   * @param scale pixels to a mm
   * @param pen pixels to a mm of a line's width
   * @param corner of the marks' plane that lies in the lower left corner
   */
  public Raster(int width, int height, double scale, double pen, Vec2 corner) {
    this.pen = pen;
    this.samples = new Samples(width, height);
    place.scale(Samples.FINE, Samples.FINE);
    place.translate(0, height);
    place.scale(scale, -scale);
    place.translate(-corner.x(), -corner.y());
  }

  /** A row of pixels from the top, see {@link Samples#row}. */
  public byte[] row(int row) {
    return samples.row(row);
  }

  /** Paints more on top. */
  public void paint(List<? extends Mark> marks) {
    for (Mark mark : marks) {
      Pace.step();
      switch (mark) {
        case Mark.Stroke s -> line(path(s.points(), s.closed()), s.kind());
        case Mark.Circle c -> {
          double across = 2 * c.radius();
          line(
              new Ellipse2D.Double(
                  c.centre().x() - c.radius(), c.centre().y() - c.radius(), across, across),
              c.kind());
        }
        case Mark.Fill f -> area(f.rings(), f.kind().ink());
        case Mark.Patch p -> {
          area(p.rings(), p.ink());
          paint(p.edges());
        }
        case Mark.Text t -> text(t);
      }
    }
  }

  private static Path2D path(List<Vec2> points, boolean closed) {
    Path2D path = new Path2D.Double();
    path.moveTo(points.getFirst().x(), points.getFirst().y());
    points.subList(1, points.size()).forEach(p -> path.lineTo(p.x(), p.y()));
    if (closed) {
      path.closePath();
    }
    return path;
  }

  private void line(Shape along, LineKind kind) {
    float[] dashes = new float[kind.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = fine(kind.dashes().get(i));
    }
    BasicStroke stroke =
        new BasicStroke(
            fine(kind.width()),
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_ROUND,
            1,
            dashes.length == 0 ? null : dashes,
            0);
    samples.add(stroke.createStrokedShape(place.createTransformedShape(along)), false, kind.ink());
  }

  private float fine(double mm) {
    return (float) (mm * pen * Samples.FINE);
  }

  private void area(List<Polygon2> rings, Ink ink) {
    Path2D path = new Path2D.Double();
    rings.forEach(ring -> path.append(path(ring.corners(), true), false));
    samples.add(place.createTransformedShape(path), true, ink);
  }

  private void text(Mark.Text t) {
    AffineTransform set = new AffineTransform(place);
    set.translate(t.at().x(), t.at().y());
    set.rotate(Math.toRadians(t.angle()));
    set.translate(-t.back(), 0);
    set.scale(t.size(), t.size());
    Path2D letters = Lettering.outline(t.content(), t.weight());
    samples.add(set.createTransformedShape(letters), false, t.ink());
  }
}
