package facetwright.fold.making;

import java.util.List;
import java.util.stream.Stream;

/**
 * One thing that hands do in making a piece up: one sentence and one picture. What is done alike
 * several times over is one action.
 */
public sealed interface Action {
  /** All that some actions glue or close, in order. */
  static List<Bond> bonds(List<Action> actions) {
    return actions.stream()
        .flatMap(
            a -> a instanceof Bonded(List<Bond> bonds, boolean _) ? bonds.stream() : Stream.empty())
        .toList();
  }

  /**
   * Places are glued or closed, all alike.
   *
   * @param bonds in order; the first stands for all, at least one
   * @param isOpposite whether the second lies opposite the first
   */
  record Bonded(List<Bond> bonds, boolean isOpposite) implements Action {
    public Bonded {
      bonds = List.copyOf(bonds);
    }
  }

  /**
   * Gussets are pushed in.
   *
   * @param gussets their panels
   * @param isAll whether these are all that the net has
   */
  record Pinched(List<Integer> gussets, boolean isAll) implements Action {
    public Pinched {
      gussets = List.copyOf(gussets);
    }
  }

  /**
   * A thing goes in or on, or is told.
   *
   * @param fitting its index among the net's fittings
   * @param isLater whether something is glued or closed after it
   */
  record Fitted(int fitting, boolean isLater) implements Action {}
}
