package facetwright.fold.close;

import facetwright.fold.pose.Assembly;
import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.RootPanels;
import facetwright.fold.pose.ScoreAngles;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.util.List;

/** Where panels stand before anything is sought. */
final class StartPoses {
  private StartPoses() {}

  /** Where panels stand by angles guessed at: what a solver may begin with. */
  static List<Motion3> of(Net net, ScoreAngles guess) {
    int[] piece = net.pieceOfPanel();
    FoldTree tree = FoldTree.of(net, RootPanels.of(net, piece), guess);
    return Assembly.of(net, 0, tree.fold(guess), piece, 0).poses();
  }
}
