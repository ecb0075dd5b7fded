package facetwright.papers.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which numbers of equal sides seat flush. The normals of two upright sides of a regular piece of m
 * sides that lie k sides apart make the angle k · 360°/m. It has to be 180° − 360°/n, so that k =
 * m(n − 2)/(2n): a ring of n is flush just where 2n divides m(n − 2).
 */
public final class SideCounts {
  /** Numbers of sides are told up to this one. */
  public static final int MOST_SIDES = 24;

  private SideCounts() {}

  /**
   * How many sides apart the two seats lie; empty where no two sides seat flush.
   *
   * @param sides of the piece, at least 3
   * @param count of pieces, at least 3
   */
  static OptionalInt apart(int sides, int count) {
    int product = sides * (count - 2);
    return product % (2 * count) == 0 ? OptionalInt.of(product / (2 * count)) : OptionalInt.empty();
  }

  /** The numbers of sides up to a greatest one that seat flush in a ring of so many. */
  public static List<Integer> flush(int count, int most) {
    List<Integer> sides = new ArrayList<>();
    for (int m = 3; m <= most; m++) {
      if (apart(m, count).isPresent()) {
        sides.add(m);
      }
    }
    return List.copyOf(sides);
  }
}
