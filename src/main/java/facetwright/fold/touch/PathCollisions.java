package facetwright.fold.touch;

import java.io.Serializable;
import java.util.List;

/**
 * What was found on the way from flat to made.
 *
 * @param first the pairs that pass through each other where that first happens; none on a clear way
 * @param t where on the way it happens, 0 flat to 1 made; 1 on a clear way
 * @param step the longest step between two samples, as a part of the way
 * @param stride the farthest that any corner moved between two samples, in mm: what is smaller and
 *     quicker than that may have gone unseen
 */
public record PathCollisions(List<Collision> first, double t, double step, double stride)
    implements Serializable {
  public PathCollisions {
    first = List.copyOf(first);
  }

  /** Whether nothing was seen to pass through anything. */
  public boolean isClear() {
    return first.isEmpty();
  }
}
