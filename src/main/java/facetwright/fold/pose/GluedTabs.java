package facetwright.fold.pose;

import facetwright.geom.AngleTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.List;

/**
 * The fold angles of tabs that the net leaves open: a glued tab has the outside direction of the
 * panel it is glued under.
 *
 * @param angles all angles, those found added
 * @param found whether any was found
 * @param open how many scores of unknown angle remain that the form hangs on
 */
public record GluedTabs(ScoreAngles angles, boolean found, int open) {
  private static final int NO_HOST = -1;

  public static GluedTabs of(Net net, FoldTree tree, ScoreAngles given, List<Motion3> poses) {
    List<FoldTree.Branch> unknown =
        tree.steps().stream().filter(s -> !given.isKnown(s.score())).toList();
    List<FoldTree.Branch> tabs =
        unknown.stream()
            .filter(s -> net.panels().get(s.child()).role() == PanelRole.TAB)
            .filter(s -> tree.isLeaf(s.child()))
            .toList();
    int open = unknown.size() - tabs.size();
    if (open > 0) {
      return new GluedTabs(given, false, open);
    }
    ScoreAngles angles = given;
    boolean found = false;
    for (FoldTree.Branch tab : tabs) {
      int host = host(net, tab.child());
      if (host != NO_HOST) {
        angles = angles.with(tab.score(), angle(net, tab, poses, host));
        found = true;
      }
    }
    return new GluedTabs(angles, found, 0);
  }

  private static int host(Net net, int tab) {
    for (Join join : net.joins()) {
      switch (join) {
        case Join.Seam(_, EdgeRef b, int glued, _, _) when glued == tab -> {
          return b.panel();
        }
        case Join.Lap(int under, int over, _, _) when under == tab -> {
          return over;
        }
        default -> {}
      }
    }
    return NO_HOST;
  }

  private static double angle(Net net, FoldTree.Branch tab, List<Motion3> poses, int host) {
    Score score = net.scores().get(tab.score());
    Segment2 side = net.segment(score.a().panel() == tab.parent() ? score.a() : score.b());
    double angle = Dihedrals.turn(poses.get(tab.parent()), side, poses.get(host));
    boolean rightOver = Math.PI - Math.abs(angle) < AngleTolerance.FINE.radians();
    return rightOver ? Math.copySign(angle, score.sense() == Sense.MOUNTAIN ? 1 : -1) : angle;
  }
}
