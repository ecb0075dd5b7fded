package facetwright.fold;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import java.io.Serializable;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A net folded up. It stands on the table: z up, lowest point at z = 0.
 *
 * @param poses for each panel, the motion from its place in the flat net to its place in the form
 * @param gaps for each join, how far it misses; empty where the form is not solved
 * @param tears for each score that closes a loop, how far its sides miss; empty where the form is
 *     not solved
 * @param closure whether it closes
 * @param strain largest relative change of a length inside a panel; 0 for an exact folding
 * @param measures what it measures
 */
public record FoldedForm(
    List<Motion3> poses,
    List<JoinGap> gaps,
    List<ScoreGap> tears,
    Closure closure,
    double strain,
    Measures measures)
    implements Serializable {

  public FoldedForm {
    poses = List.copyOf(poses);
    gaps = List.copyOf(gaps);
    tears = List.copyOf(tears);
  }

  /** A form without loops of scores. */
  public FoldedForm(
      List<Motion3> poses, List<JoinGap> gaps, Closure closure, double strain, Measures measures) {
    this(poses, gaps, List.of(), closure, strain, measures);
  }

  /** The largest gap or tear in mm, 0 where there is none. */
  public double gap() {
    return DoubleStream.concat(
            gaps.stream().mapToDouble(JoinGap::mm), tears.stream().mapToDouble(ScoreGap::mm))
        .max()
        .orElse(0);
  }

  /** The corners of a panel in space. */
  public List<Vec3> corners(Net net, int panel) {
    return net.panels().get(panel).outline().corners().stream()
        .map(c -> poses.get(panel).apply(c))
        .toList();
  }
}
