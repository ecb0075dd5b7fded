package facetwright.fold.close;

import facetwright.fold.solve.LevenbergMarquardt;

/**
 * What came of a start.
 *
 * @param rest where the points came to rest
 * @param against how many scores went against their sense
 * @param slant how far the corners it is to stand on are from level, in mm; 0 where it is next to
 *     nothing. A form that does not stand level may be what there is; for a level one a few more
 *     starts are made, as where the search wandered far and may have come to rest in a form not
 *     meant
 */
record Trial(LevenbergMarquardt.Rest rest, State state, int against, double slant) {
  private static final int LEVEL_STARTS = 6;

  /** So many iterations from a start tell that it was no good one. */
  private static final int WANDERED = 15;

  /** What kind of form it is, the better ones first. */
  enum State {
    /** Everything meets, and no panels are in each other's way. */
    CLOSED,
    /** Everything meets, but panels are in each other's way. */
    IN_ITSELF,
    /** Something misses. */
    OPEN,
    /** The ring it is to stand on goes round twice, or not at all. */
    ASTRAY;

    /** Whether everything meets, on a ring that goes round once. */
    boolean meets() {
      return this == CLOSED || this == IN_ITSELF;
    }
  }

  /** Whether no more starts are needed after so many. */
  boolean isGood(int tried) {
    boolean straight = state == State.CLOSED && slant == 0 && rest.iterations() <= WANDERED;
    return state.meets() && against == 0 && (straight || tried >= LEVEL_STARTS);
  }

  /** Whether it is no form to be made, though something may meet. */
  boolean isInItself() {
    return state == State.IN_ITSELF || state == State.ASTRAY;
  }

  boolean beats(Trial other) {
    if (state != other.state) {
      return state.compareTo(other.state) < 0;
    }
    if (!state.meets()) {
      return rest.worst() < other.rest.worst();
    }
    if (against != other.against) {
      return against < other.against;
    }
    return slant == other.slant ? rest.iterations() < other.rest.iterations() : slant < other.slant;
  }
}
