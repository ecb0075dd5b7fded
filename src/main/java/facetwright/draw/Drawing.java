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
 * @param headings from above down; often none
 */
public record Drawing(double width, double height, List<Mark> marks, List<Heading> headings) {
  /**
   * A heading on it, by which a reader goes there.
   *
   * @param top where it begins, in mm above the page's lower edge
   */
  public record Heading(String text, double top) {}

  /**
   * @throws IllegalArgumentException when the page has no size
   */
  public Drawing {
    marks = List.copyOf(marks);
    headings = List.copyOf(headings);
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a page's width and height must be over 0");
    }
  }

  /** One without headings. */
  public Drawing(double width, double height, List<Mark> marks) {
    this(width, height, marks, List.of());
  }

  /** The same page under a heading of its own. */
  public Drawing headed(String text) {
    return new Drawing(width, height, marks, List.of(new Heading(text, height)));
  }

  /** The same page with more marks on top. */
  public Drawing with(List<Mark> more) {
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(more);
    return new Drawing(width, height, all, headings);
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
