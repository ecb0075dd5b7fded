package facetwright.form;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.Shapes;
import java.util.List;

/** An outline drawn inward by an even border. */
final class Inset {
  private Inset() {}

  static Polygon2 of(Polygon2 outline, double border, String facet) {
    FormCheck.require(
        border > 0 && border <= Ask.LONGEST,
        () ->
            Message.of(
                "a window's border is over 0 and up to %s, not %s",
                Value.given(Ask.LONGEST), Value.given(border)));
    List<Polygon2> left = Planar.inset(outline, border);
    FormCheck.require(
        !left.isEmpty(),
        () ->
            Shapes.noWindow(
                border, Message.of("facet %s", Value.name(facet)), Planar.mostInset(outline)));
    FormCheck.require(
        left.size() == 1,
        () ->
            Message.of(
                "a border of %s parts the window in facet %s in two: take less, or give the windows"
                    + " one by one",
                Value.given(border), Value.name(facet)));
    return left.getFirst();
  }
}
