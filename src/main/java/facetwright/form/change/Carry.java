package facetwright.form.change;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.geom.FacetFrame;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Vec3;
import facetwright.net.Opening;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/** Keeps a facet's name, paper, windows and holes when its outline changes. */
final class Carry {
  private Carry() {}

  /** The facet on a new outline in the same plane; its openings stay where they are in space. */
  static Facet onto(Form form, int facet, List<Integer> loop, List<Vec3> corners) {
    Facet old = form.facets().get(facet);
    if (old.openings().isEmpty()) {
      return old.on(loop);
    }
    List<Vec3> outline = loop.stream().map(corners::get).toList();
    return onto(old, form.frame(facet), loop, outline);
  }

  /**
   * The facet on a new outline, its openings moved from the frame it had to the frame it has.
   *
   * @param was the old frame, moved in space as the facet was
   */
  static Facet onto(Facet old, FacetFrame was, List<Integer> loop, List<Vec3> outline) {
    FacetFrame frame = FacetFrame.of(outline);
    Motion2 motion = was.into(frame);
    Polygon card = Planar.polygon(frame.flat(outline));
    List<Opening> moved = old.openings().stream().map(o -> o.moved(motion)).toList();
    for (Opening opening : moved) {
      Polygon cut = Planar.polygon(opening.outline());
      FormCheck.require(
          card.contains(cut) && !card.getBoundary().intersects(cut),
          "the change would cut into a window or hole of facet \""
              + old.name()
              + "\": change the form first, then open the window");
    }
    return old.on(loop).with(moved);
  }
}
