package facetwright.net;

import facetwright.geom.Polygon2;
import java.io.Serializable;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * How the finished form stands on the table: these corners lie level when it is made, and seen from
 * above they run counter-clockwise. A flat base panel is given by its corners in reverse (its
 * outside faces the table); a wrap by the corners round its waist.
 *
 * @param ring at least three corners
 */
public record Stance(List<Corner> ring) implements Serializable {

  /** A corner of a panel's outline. */
  public record Corner(int panel, int corner) implements Serializable {}

  /**
   * @throws IllegalArgumentException when fewer than three corners are given
   */
  public Stance {
    ring = List.copyOf(ring);
    if (ring.size() < 3) {
      throw new IllegalArgumentException("a stance needs at least three corners");
    }
  }

  /**
   * The same of the net's mirror image, facing the same way: the first side of the ring stays it.
   *
   * @param corners how many corners a panel has
   */
  Stance mirrored(IntUnaryOperator corners) {
    int n = ring.size();
    return new Stance(
        IntStream.range(0, n)
            .mapToObj(i -> ring.get(Polygon2.mirroredCorner(i, n)))
            .map(
                c ->
                    new Corner(
                        c.panel(),
                        Polygon2.mirroredCorner(c.corner(), corners.applyAsInt(c.panel()))))
            .toList());
  }

  /** The same in a net where so many panels come before. */
  public Stance after(int panels) {
    return new Stance(ring.stream().map(c -> new Corner(c.panel() + panels, c.corner())).toList());
  }
}
