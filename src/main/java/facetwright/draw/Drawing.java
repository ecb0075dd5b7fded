package facetwright.draw;

import facetwright.geom.Motion2;
import java.util.ArrayList;
import java.util.List;

/**
 * A page and what lies on it.
 *
 * @param width of the page, in mm
 * @param height of the page, in mm
 * @param marks in painting order, the last on top
 */
public record Drawing(double width, double height, List<Mark> marks) {

  /**
   * @throws IllegalArgumentException when the page has no size
   */
  public Drawing {
    marks = List.copyOf(marks);
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a page's width and height must be over 0");
    }
  }

  /** The same page with more marks on top. */
  public Drawing with(List<Mark> more) {
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(more);
    return new Drawing(width, height, all);
  }

  /** The marks, all turned and shifted; the page stays. */
  public Drawing moved(Motion2 motion) {
    return new Drawing(width, height, marks.stream().map(m -> m.moved(motion)).toList());
  }

  /** The page turned over about its upright middle: what lies inside up. */
  public Drawing turnedOver() {
    return new Drawing(width, height, marks.stream().map(m -> m.turnedOver(width)).toList());
  }
}
