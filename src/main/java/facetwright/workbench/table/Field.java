package facetwright.workbench.table;

import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Laid;
import facetwright.workbench.look.Camera;

/**
 * A part of the view, in whole pixels. What is painted at every change is kept to the part it
 * needs: a toolkit without a graphics card lays every pixel of it over the mat anew.
 *
 * @param left where it begins in the view
 * @param top the same, downward
 */
record Field(double left, double top, double width, double height) {
  /** Pins, a halo and bold lines reach so far over what they mark, with lettering of usual size. */
  private static final double OVER = 16;

  /** All of a view of this size. */
  static Field whole(double width, double height) {
    return new Field(0, 0, width, height);
  }

  /**
   * Where sheets are in sight; all of the view where the net reaches over them.
   *
   * @param type how large lettering is against the usual
   */
  static Field about(Laid laid, Camera camera, double width, double height, double type) {
    Box2 box = laid.sheet(0).union(laid.sheet(laid.sheets() - 1));
    if (!box.union(laid.net().box()).equals(box)) {
      return whole(width, height);
    }
    double over = OVER * type;
    double left = Math.floor(camera.screenX(new Vec2(box.minX(), 0)) - over);
    double right = Math.ceil(camera.screenX(new Vec2(box.maxX(), 0)) + over);
    double top = Math.floor(camera.screenY(new Vec2(0, box.maxY())) - over);
    double bottom = Math.ceil(camera.screenY(new Vec2(0, box.minY())) + over);
    double from = Math.clamp(left, 0, width);
    double down = Math.clamp(top, 0, height);
    return new Field(
        from, down, Math.clamp(right, from, width) - from, Math.clamp(bottom, down, height) - down);
  }
}
