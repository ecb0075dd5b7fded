package facetwright.fold.touch;

import java.util.List;

/**
 * Two sheets of card that come together along a line and don't cross there if, of the panels of the
 * one that lie on panels of the other, an even number (or an odd one) lies over them.
 *
 * @param pairs the panels that lie on each other: first one of the one sheet, then one of the other
 * @param even whether the product of their orders is 1, not −1; an order is 1 where the first lies
 *     over the second and −1 where it lies under it
 * @param otherwise what is the matter where that does not hold
 */
record Crossing(List<Pair> pairs, boolean even, Collision otherwise) {
  /** Two panels that lie on each other. */
  record Pair(int a, int b) {}

  Crossing {
    pairs = List.copyOf(pairs);
  }
}
