package facetwright.fold.close;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.JoinGap;
import facetwright.fold.pose.ScoreAngles;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.io.Serializable;
import java.util.List;

/**
 * What the closing solver found.
 *
 * @param angles for each score how far it is folded; not a number where nothing determines it
 * @param iterations of the start that was kept
 * @param starts how many starts were tried
 * @param residual the largest miss of any distance, angle or join that is left, in mm
 * @param gaps for each join how far it misses where the solver left it
 * @param strain for each panel how far its corners stand from a rigid panel, as part of its size
 * @param poses for each panel the rigid pose nearest to its corners; {@link Motion3#NONE} where it
 *     was not sought
 * @param verdict {@link Closure#NOT_SOLVED} where some score is not determined
 */
public record Solved(
    ScoreAngles angles,
    int iterations,
    int starts,
    double residual,
    List<JoinGap> gaps,
    List<Double> strain,
    List<Motion3> poses,
    Closure verdict)
    implements Serializable {

  public Solved {
    gaps = List.copyOf(gaps);
    strain = List.copyOf(strain);
    poses = List.copyOf(poses);
  }

  /** Whether its angles may be taken for a first guess at a net: it has as many scores. */
  public boolean suits(Net net) {
    return verdict != Closure.NOT_SOLVED && angles.radians().size() == net.scores().size();
  }
}
