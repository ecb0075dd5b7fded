package facetwright.fold;

/** Whether a folded form closes. */
public enum Closure {
  /** Every join meets within the tolerance. */
  CLOSES,
  /** Every join meets, but panels have to bend a little. */
  CLOSES_WITH_STRAIN,
  /** Some joins miss, by no more than a steady hand does when cutting and scoring. */
  FORGIVEN,
  /** Every join meets, but panels are where others are, or lock where they fold flat. */
  IN_ITSELF,
  /** At least one join misses by more than that. */
  OPEN,
  /** Some fold angles are not known, so closing can't be told. */
  NOT_SOLVED
}
