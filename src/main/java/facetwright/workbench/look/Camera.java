package facetwright.workbench.look;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;

/**
 * How the plane of the net, in mm with y up, lies on the screen, in pixels with y down.
 *
 * @param scale pixels a millimetre
 * @param x where the origin of the plane is on the screen
 * @param y the same, downward
 */
public record Camera(double scale, double x, double y) {
  private static final double LEAST = 0.05;
  private static final double MOST = 400;

  /** The camera that shows a box whole in a view of this size, with a margin in pixels. */
  public static Camera showing(Box2 box, double width, double height, double margin) {
    double across =
        Math.max(width - 2 * margin, 1) / Math.max(box.width(), LengthTolerance.FINE.mm());
    double down =
        Math.max(height - 2 * margin, 1) / Math.max(box.height(), LengthTolerance.FINE.mm());
    double scale = Math.clamp(Math.min(across, down), LEAST, MOST);
    return new Camera(
        scale, width / 2 - box.centre().x() * scale, height / 2 + box.centre().y() * scale);
  }

  public double screenX(Vec2 p) {
    return x + p.x() * scale;
  }

  public double screenY(Vec2 p) {
    return y - p.y() * scale;
  }

  /** Where in the plane a place of the screen lies. */
  public Vec2 plane(double screenX, double screenY) {
    return new Vec2((screenX - x) / scale, (y - screenY) / scale);
  }

  /** Nearer or farther by a factor; what is under the pointer stays there. */
  public Camera zoomed(double factor, double atX, double atY) {
    double next = Math.clamp(scale * factor, LEAST, MOST);
    double by = next / scale;
    return new Camera(next, atX + (x - atX) * by, atY + (y - atY) * by);
  }

  public Camera moved(double dx, double dy) {
    return new Camera(scale, x + dx, y + dy);
  }
}
