package facetwright.net;

import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The outline of a whole piece, for laying it on a sheet. */
final class PieceShape {
  /** How near the boundary two pieces with no gap may be taken to touch, in mm. */
  private static final double TOUCH = 1e-5;

  private static final double MERE_TURN = 1e-6;

  private final Geometry outline;
  private final double gap;

  private PieceShape(Geometry outline, double gap) {
    this.outline = outline;
    this.gap = gap;
  }

  /**
   * A piece turned, its lower left corner at the origin.
   *
   * @param motion from where the piece lies in the net to here
   * @param outline the true outline
   * @param reach the outline grown by the gap: no other piece's outline may meet it
   */
  record Turned(Motion2 motion, Geometry outline, Geometry reach) {
    double width() {
      return outline.getEnvelopeInternal().getMaxX();
    }

    double height() {
      return outline.getEnvelopeInternal().getMaxY();
    }
  }

  static List<PieceShape> of(Net net, double gap) {
    int[] pieceOfPanel = net.pieceOfPanel();
    List<PieceShape> shapes = new ArrayList<>();
    for (int piece = 0; piece < net.pieces(); piece++) {
      List<Geometry> parts = new ArrayList<>();
      for (int p = 0; p < pieceOfPanel.length; p++) {
        if (pieceOfPanel[p] == piece) {
          parts.add(Planar.polygon(net.panels().get(p).outline()));
        }
      }
      shapes.add(new PieceShape(OverlayNGRobust.union(Planar.factory().buildGeometry(parts)), gap));
    }
    return shapes;
  }

  double area() {
    return outline.getArea();
  }

  /** The directions to try, as given first. */
  List<Turned> turns(boolean mayTurn) {
    List<Double> angles = new ArrayList<>(List.of(0.0));
    if (mayTurn) {
      angles.add(Math.PI / 2);
      double slant = slant();
      if (Math.abs(Math.IEEEremainder(slant, Math.PI / 2)) > MERE_TURN) {
        angles.add(-slant);
        angles.add(Math.PI / 2 - slant);
      }
      angles.add(Math.PI);
      angles.add(3 * Math.PI / 2);
    }
    return angles.stream().map(this::turned).toList();
  }

  private double slant() {
    Coordinate[] corners = MinimumAreaRectangle.getMinimumRectangle(outline).getCoordinates();
    Coordinate a = corners[0];
    Coordinate b = corners[1];
    return Math.atan2(b.y - a.y, b.x - a.x);
  }

  private Turned turned(double angle) {
    Motion2 turn = Motion2.turn(angle);
    Geometry shape = moved(outline, turn);
    var box = shape.getEnvelopeInternal();
    Motion2 whole = turn.then(Motion2.shift(new Vec2(-box.getMinX(), -box.getMinY())));
    Geometry at = moved(outline, whole);
    Geometry reach = BufferOp.bufferOp(at, gap > TOUCH ? gap : -TOUCH);
    return new Turned(whole, at, reach);
  }

  private static Geometry moved(Geometry g, Motion2 m) {
    return new AffineTransformation(
            m.cos(), -m.sin(), m.shift().x(), m.sin(), m.cos(), m.shift().y())
        .transform(g);
  }
}
