package facetwright.check.closing;

import facetwright.check.finding.Subject;
import facetwright.fold.Folding;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * The one score that, folded right over, brings a panel to lie under the one it lies beside: each
 * between the two is tried by folding the net, one way and the other, those nearest to the panel
 * first. Other joins may miss still: they have a score of their own.
 */
final class RightOver {
  /** So many scores are tried. */
  private static final int MOST_TRIED = 4;

  private RightOver() {}

  /**
   * What to do; empty where no score does it alone.
   *
   * @param join number of the lap
   */
  static Optional<Message> of(Subject subject, int join) {
    Net net = subject.net();
    if (!(net.joins().get(join) instanceof Join.Lap lap)) {
      return Optional.empty();
    }
    for (int s : between(net, lap.under(), lap.over()).stream().limit(MOST_TRIED).toList()) {
      for (Sense way : Sense.values()) {
        if (meets(subject, join, s, way)) {
          return Optional.of(
              Message.of(
                  "Fold %s right over: 180°, a %s.",
                  subject.name(net.scores().get(s)),
                  way == Sense.MOUNTAIN ? "mountain" : "valley"));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean meets(Subject subject, int join, int score, Sense way) {
    Net net = subject.net();
    List<Score> scores = new ArrayList<>(net.scores());
    scores.set(score, scores.get(score).toward(way).folded(FoldAngle.degrees(180)));
    FoldedForm form = Folding.fold(subject.laid().with(net.scored(scores)));
    return form.closure() != Closure.IN_ITSELF
        && form.gaps().stream()
            .filter(g -> g.join() == join)
            .anyMatch(g -> g.mm() <= LengthTolerance.UNSEEN.mm());
  }

  /** The fewest scores that lead from one panel to another, in turn. */
  private static List<Integer> between(Net net, int from, int to) {
    int[] by = new int[net.panels().size()];
    Arrays.fill(by, -1);
    Deque<Integer> next = new ArrayDeque<>(List.of(from));
    while (!next.isEmpty() && by[to] < 0) {
      int panel = next.removeFirst();
      for (int s = 0; s < net.scores().size(); s++) {
        Score score = net.scores().get(s);
        if (score.isOf(panel)) {
          int other = score.across(panel);
          if (other != from && by[other] < 0) {
            by[other] = s;
            next.add(other);
          }
        }
      }
    }
    List<Integer> way = new ArrayList<>();
    for (int at = to; at != from && by[at] >= 0; at = net.scores().get(by[at]).across(at)) {
      way.addFirst(by[at]);
    }
    return way;
  }
}
