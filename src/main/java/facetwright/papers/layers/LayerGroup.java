package facetwright.papers.layers;

import facetwright.geom.AngleTolerance;
import java.util.List;
import java.util.Optional;

/**
 * Layers of one shape, cut from one paper one way up.
 *
 * @param letter what pages call it, "a", "b" and so on
 * @param paper the name of the paper
 * @param shape as it is cut, seen on the face of the paper; its box stands at the origin
 * @param isBehind whether it goes behind windows, not on the face of the card
 * @param panels the names of the panels it goes on, in panel order; a panel that takes two is named
 *     twice
 * @param mirrorOf the group whose mirror image it is
 */
public record LayerGroup(
    String letter,
    String paper,
    Inset shape,
    boolean isBehind,
    List<String> panels,
    Optional<String> mirrorOf) {
  /** Angles nearer to a right one are right: 0.01 mm over 100 mm, which a trimmer does not show. */
  private static final AngleTolerance RIGHT = new AngleTolerance(1e-4);

  /** How it is cut. */
  public enum Kind {
    /** By the trimmer alone. */
    RECTANGLE,
    /** From strips. */
    TRIANGLE,
    /** From the smallest rectangle round it. */
    OTHER
  }

  public LayerGroup {
    panels = List.copyOf(panels);
  }

  /** For one piece of the design. */
  public int count() {
    return panels.size();
  }

  /** Of the box round it, in mm. */
  public double width() {
    return shape.outline().box().width();
  }

  /** Of the box round it, in mm. */
  public double height() {
    return shape.outline().box().height();
  }

  public Kind kind() {
    int corners = shape.outline().size();
    if (corners == 3) {
      return Kind.TRIANGLE;
    }
    boolean upright = RIGHT.same(4 * direction(), 0);
    for (int i = 0; i < corners; i++) {
      upright &= RIGHT.same(shape.outline().angle(i), Math.PI / 2);
    }
    return corners == 4 && upright ? Kind.RECTANGLE : Kind.OTHER;
  }

  private double direction() {
    var along = shape.outline().side(0).direction();
    return Math.atan2(along.y(), along.x());
  }
}
