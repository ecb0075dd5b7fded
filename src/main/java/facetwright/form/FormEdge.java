package facetwright.form;

import java.io.Serializable;

/**
 * An edge of a form.
 *
 * @param from corner where it starts, as the left facet runs it
 * @param to corner where it ends
 * @param left the facet that runs it this way
 * @param leftSide which side of the left facet it is
 * @param right the facet on its other side, or {@link #NONE} at the rim of an open form
 * @param rightSide which side of the right facet it is, or {@link #NONE}
 */
public record FormEdge(int from, int to, int left, int leftSide, int right, int rightSide)
    implements Serializable {
  public static final int NONE = -1;

  /** Which side of one of its two facets it is. */
  public int sideOf(int facet) {
    return left == facet ? leftSide : rightSide;
  }

  /** Whether it belongs to one facet only. */
  public boolean isRim() {
    return right == NONE;
  }
}
