package facetwright.workbench.table;

import facetwright.geom.Box2;
import facetwright.net.Laid;

/** How near one has to be for the sheets to be seen whole, with their rulers. */
final class Fitting {
  /** Left of the sheets and below them there is room for ruler marks, and for their numbers. */
  private static final double MARKS = 34;

  private static final double NUMBERS = 22;

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
    double rulers = MARKS + NUMBERS * type;
    double high = height - rulers - EDGE;
    Camera full = Camera.showing(whole, width - rulers - EDGE, high, 0);
    Camera beside = Camera.showing(whole, width - kept - rulers - EDGE, high, 0);
    return (beside.scale() > WORTH * full.scale() ? beside : full).moved(rulers, EDGE);
  }
}
