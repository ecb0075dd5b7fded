package facetwright.net;

import java.io.Serializable;

/** How far a score is folded when the form is made: 0° is flat, 180° is folded right over. */
public sealed interface FoldAngle extends Serializable {
  /** Left to the closing solver. */
  FoldAngle TO_SOLVE = new ToSolve();

  static FoldAngle degrees(double degrees) {
    return new Known(degrees);
  }

  /**
   * Known from the form or given by the script.
   *
   * @param degrees 0 to 180
   */
  record Known(double degrees) implements FoldAngle {
    public Known {
      if (!(degrees >= 0 && degrees <= 180)) {
        throw new IllegalArgumentException("a fold angle lies in 0° to 180°, not " + degrees);
      }
    }
  }

  /** Not known before the piece is closed. */
  record ToSolve() implements FoldAngle {}
}
