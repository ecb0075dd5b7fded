package facetwright.fold;

import facetwright.fold.close.ClosingSolver;
import facetwright.fold.close.Solved;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.SolverSettings;
import facetwright.net.Net;

/** Solves for the angles that a net itself leaves open, as is usual. */
public final class Solving {
  private Solving() {}

  public static Solved of(Net net) {
    return ClosingSolver.solve(net, ScoreAngles.nominal(net), SolverSettings.USUAL);
  }
}
