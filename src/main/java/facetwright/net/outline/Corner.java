package facetwright.net.outline;

import facetwright.geom.Vec2;
import java.io.Serializable;

/**
 * A corner of an {@link Outline}.
 *
 * @param at where its two sides, drawn out, meet
 * @param radius of the arc that rounds it, in mm; 0 where it is sharp
 */
public record Corner(Vec2 at, double radius) implements Serializable {
  Corner(Vec2 at) {
    this(at, 0);
  }

  boolean isRound() {
    return radius > 0;
  }
}
