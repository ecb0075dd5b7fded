package facetwright.net;

import java.io.Serializable;

/** How far a score is folded when the form is made: 0° is flat, 180° is folded right over. */
public sealed interface FoldAngle extends Serializable {
  /** Left to the closing solver. */
  @SuppressWarnings("ClassInitializationDeadlock") // Its class begins nothing of this one.
  FoldAngle TO_SOLVE = new ToSolve(false);

  /** The same, the score's sense being what the design asks for. */
  @SuppressWarnings("ClassInitializationDeadlock") // Its class begins nothing of this one.
  FoldAngle TO_SOLVE_AS_SAID = new ToSolve(true);

  /** So far, the way that the score's sense says. */
  static FoldAngle degrees(double degrees) {
    return new Known(degrees, true);
  }

  /** So far, but nobody asked which way. */
  static FoldAngle degreesEitherWay(double degrees) {
    return new Known(degrees, false);
  }

  /**
   * Whether the design asks for the score's sense; if not, that is a guess to begin with, and the
   * made form decides.
   */
  boolean isSenseSaid();

  /** Whether it is known to be folded right over, 180°. */
  default boolean isRightOver() {
    return this instanceof Known known && known.degrees == 180;
  }

  /**
   * Known from the form or given by the script.
   *
   * @param degrees 0 to 180
   */
  record Known(double degrees, boolean isSenseSaid) implements FoldAngle {
    public Known {
      if (!(degrees >= 0 && degrees <= 180)) {
        throw new IllegalArgumentException("a fold angle lies in 0° to 180°, not " + degrees);
      }
    }
  }

  /** Not known before the piece is closed. */
  record ToSolve(boolean isSenseSaid) implements FoldAngle {}
}
