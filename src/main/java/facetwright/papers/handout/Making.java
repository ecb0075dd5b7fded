package facetwright.papers.handout;

import facetwright.fold.making.Action;
import facetwright.fold.making.Bond;
import java.util.List;

/**
 * How a part is made up, or all.
 *
 * @param part its index, or {@link Picture.Folded#ALL}
 * @param actions in order
 */
public record Making(int part, List<Action> actions) {
  public Making {
    actions = List.copyOf(actions);
  }

  /** All that is glued or closed, in order. */
  public List<Bond> bonds() {
    return Action.bonds(actions);
  }
}
