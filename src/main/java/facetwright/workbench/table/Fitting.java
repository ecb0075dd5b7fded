package facetwright.workbench.table;

import facetwright.geom.Box2;
import facetwright.net.sheet.Laid;
import facetwright.workbench.look.Camera;

/** How near one has to be for the sheets to be seen whole, with their rulers. */
final class Fitting {
  /** Left of the sheets and below them there is room for ruler marks. */
  private static final double MARKS = 22;

  /** And for their numbers, as long as they are at the left and as high as they are below. */
  private static final double LONG = 30;

  private static final double HIGH = 20;

  /** Room at the other sides. */
  private static final double EDGE = 16;

  /** The net may be so much smaller for the sake of what lies over the table. */
  private static final double WORTH = 0.75;

  private Fitting() {}

  /**
   * The camera that shows the sheets and the net whole.
   *
   * @param width of the view, in pixels
   * @param height of the view
   * @param kept room at the right that something else lies on, and that is best left free
   * @param type how large lettering is against the usual
   */
  static Camera of(Laid laid, double width, double height, double kept, double type) {
    Box2 sheets = laid.sheet(0).union(laid.sheet(laid.sheets() - 1));
    Box2 whole = sheets.union(laid.net().box());
    double left = MARKS + LONG * type;
    double high = height - MARKS - HIGH * type - EDGE;
    Camera full = Camera.showing(whole, width - left - EDGE, high, 0);
    Camera beside = Camera.showing(whole, width - kept - left - EDGE, high, 0);
    return (beside.scale() > WORTH * full.scale() ? beside : full).moved(left, EDGE);
  }
}
