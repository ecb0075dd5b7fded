package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.GlueMarks;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import java.util.List;
import java.util.Set;

/**
 * How a template shows its net.
 *
 * @param gluing what is known of how it is glued
 * @param isInside whether it is printed on the face that ends up inside, where no line shows: all
 *     lies turned over then, mountains are valleys, and what is glued on the outside is left out
 */
public record Template(GlueMarks gluing, boolean isInside) {
  /** Outside up, nothing known of gluing. */
  static final Template PLAIN = outside(GlueMarks.NONE);

  private static final Set<NetDrawing.Content> INSIDE =
      Set.of(NetDrawing.Content.GLUE, NetDrawing.Content.TICKS, NetDrawing.Content.NAMES);

  public static Template outside(GlueMarks gluing) {
    return new Template(gluing, false);
  }

  public static Template inside(GlueMarks gluing) {
    return new Template(gluing, true);
  }

  /** The net of a sheet at true size, as it lies on the page. */
  Drawing net(SheetPart part) {
    return isInside
        ? NetDrawing.of(part, INSIDE, gluing.turnedOver(part.laid().net())).turnedOver()
        : NetDrawing.of(part, NetDrawing.TEMPLATE, gluing);
  }

  /** What of the laid net lies there, on the page. */
  Polygon2 onPage(SheetPart part, Polygon2 outline) {
    Polygon2 there = Motion2.shift(part.shift()).apply(outline);
    return isInside
        ? Polygon2.ofEitherSense(there.corners().stream().map(c -> part.turnedOver(c)).toList())
        : there;
  }

  /** The same of a line or a box. */
  Box2 onPage(SheetPart part, List<Vec2> points) {
    Vec2 shift = part.shift();
    return Box2.around(
        points.stream()
            .map(p -> p.plus(shift))
            .map(p -> isInside ? part.turnedOver(p) : p)
            .toList());
  }

  /** Round the panels of a sheet, on the page. */
  Box2 panelBox(SheetPart part) {
    Box2 box = part.panelBox();
    return isInside ? part.turnedOver(box) : box;
  }

  /** Which face is up, in a sentence. */
  String faces(Telling tell) {
    return tell.say("template.faces", "inside", String.valueOf(isInside));
  }
}
