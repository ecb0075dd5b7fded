package facetwright.check;

import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.List;
import java.util.stream.IntStream;

/** Scores whose fold angle the net leaves open and on which its shape hangs: not those of tabs. */
final class OpenScores {
  private OpenScores() {}

  /** The scores in order; those of tabs only where there are no others. */
  static List<Integer> of(Net net) {
    List<Integer> all =
        IntStream.range(0, net.scores().size())
            .filter(s -> net.scores().get(s).angle() instanceof FoldAngle.ToSolve)
            .boxed()
            .toList();
    List<Integer> shaping = all.stream().filter(s -> !isOfTab(net, net.scores().get(s))).toList();
    return shaping.isEmpty() ? all : shaping;
  }

  /** Whether the angle of any score but those of tabs is known. */
  static boolean knows(Net net) {
    return net.scores().stream()
        .anyMatch(s -> s.angle() instanceof FoldAngle.Known && !isOfTab(net, s));
  }

  private static boolean isOfTab(Net net, Score score) {
    return net.panels().get(score.a().panel()).role() == PanelRole.TAB
        || net.panels().get(score.b().panel()).role() == PanelRole.TAB;
  }
}
