package facetwright.fold.making;

/** One thing to be glued, or closed. */
public sealed interface Bond {
  /**
   * A join of the net.
   *
   * @param join its index
   */
  record Joined(int join) implements Bond {}

  /**
   * A tab that no join names: it folds over an opening, on the others there.
   *
   * @param tab index of its panel
   */
  record Closing(int tab) implements Bond {}
}
