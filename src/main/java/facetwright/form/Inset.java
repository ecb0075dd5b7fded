package facetwright.form;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import java.util.List;

/** An outline drawn inward by an even border. */
final class Inset {
  private Inset() {}

  static Polygon2 of(Polygon2 outline, double border, String facet) {
    FormCheck.require(
        border > 0 && border <= 10_000,
        "a window's border is over 0 and up to 10 000 mm, not " + border);
    List<Polygon2> left = Planar.inset(outline, border);
    FormCheck.require(
        !left.isEmpty(),
        "a border of " + border + " mm leaves no window in facet \"" + facet + "\": take less");
    FormCheck.require(
        left.size() == 1,
        "a border of "
            + border
            + " mm parts the window in facet \""
            + facet
            + "\" in two: take less, or give the windows one by one");
    return left.getFirst();
  }
}
