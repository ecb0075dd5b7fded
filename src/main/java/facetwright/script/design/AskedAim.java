package facetwright.script.design;

import facetwright.aim.Goal;
import facetwright.aim.Grid;
import facetwright.words.Site;
import java.util.List;

/**
 * What a script wants its dials turned for.
 *
 * @param goals at least one
 * @param turn the dials that may be turned; empty to leave the choice
 * @param grid the ruler that they are set by
 * @param site where the script says so
 */
public record AskedAim(List<Goal> goals, List<String> turn, Grid grid, Site site) {
  public AskedAim {
    goals = List.copyOf(goals);
    turn = List.copyOf(turn);
  }
}
