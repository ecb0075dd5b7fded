package facetwright.net;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.io.Serializable;

/** What the blade or punch takes out of the inside of a panel. */
public sealed interface Opening extends Serializable {
  Site site();

  /** The outline taken away; a hole's is a polygon of 48 sides around it (0.2 % in radius). */
  Polygon2 outline();

  /** Cut with the knife. */
  record Window(Polygon2 outline, Site site) implements Opening {}

  /**
   * Punched.
   *
   * @param diameter over 0, in mm
   */
  record Hole(Vec2 centre, double diameter, Site site) implements Opening {
    private static final int SIDES = 48;

    public Hole {
      if (!(diameter > 0) || Double.isInfinite(diameter)) {
        throw new IllegalArgumentException("a hole's diameter must be over 0 mm, not " + diameter);
      }
    }

    @Override
    public Polygon2 outline() {
      return Polygon2.regular(centre, SIDES, diameter / 2 / Math.cos(Math.PI / SIDES), 0);
    }
  }
}
