package facetwright.net;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Value;
import java.io.Serializable;
import java.util.List;

/**
 * Where a panel was found on a blank, so that its maker finds it again: nobody drew it, but lines
 * round it.
 *
 * @param outline in mm from the blank's lower left corner, its corners in the panel's order
 * @param isNamed whether the script names it, so that its name tells which it is
 */
public record OnBlank(Polygon2 outline, boolean isNamed) implements Serializable {
  /** How near to the place with the most room is near enough, in mm. */
  private static final double NEAR = 0.01;

  /** A point inside it, rounded as far as there is room for. */
  public Value.Place spot() {
    Vec2 at = Planar.inmost(outline, List.of(), NEAR);
    double room = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outline.size(); i++) {
      room = Math.min(room, outline.side(i).distance(at));
    }
    return new Value.Place(at.x(), at.y(), room);
  }
}
