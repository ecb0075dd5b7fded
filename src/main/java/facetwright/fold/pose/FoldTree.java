package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A spanning forest over the scores, one tree a piece: which panel is carried along by which. Known
 * angles are followed first; a score of unknown angle carries a panel only where no known one does.
 */
public final class FoldTree {
  private final Net net;
  private final List<Branch> steps;
  private final List<Integer> loops;

  /** One panel carried along by another. */
  public record Branch(int score, int parent, int child) {}

  private FoldTree(Net net, List<Branch> steps, List<Integer> loops) {
    this.net = net;
    this.steps = List.copyOf(steps);
    this.loops = List.copyOf(loops);
  }

  /** The forest with one root a piece. */
  public static FoldTree of(Net net, List<Integer> roots, ScoreAngles angles) {
    List<List<Integer>> scoresOf = new ArrayList<>();
    net.panels().forEach(_ -> scoresOf.add(new ArrayList<>()));
    for (int s = 0; s < net.scores().size(); s++) {
      scoresOf.get(net.scores().get(s).a().panel()).add(s);
      scoresOf.get(net.scores().get(s).b().panel()).add(s);
    }
    boolean[] reached = new boolean[net.panels().size()];
    boolean[] carries = new boolean[net.scores().size()];
    List<Branch> steps = new ArrayList<>();
    ArrayDeque<Branch> unknown = new ArrayDeque<>();
    for (int root : roots) {
      reached[root] = true;
      ArrayDeque<Integer> open = new ArrayDeque<>(List.of(root));
      while (!open.isEmpty() || !unknown.isEmpty()) {
        if (open.isEmpty()) {
          Branch step = unknown.remove();
          if (!reached[step.child]) {
            reached[step.child] = true;
            carries[step.score] = true;
            steps.add(step);
            open.add(step.child);
          }
          continue;
        }
        int panel = open.remove();
        for (int s : scoresOf.get(panel)) {
          int next = net.scores().get(s).across(panel);
          Branch step = new Branch(s, panel, next);
          if (reached[next]) {
            continue;
          }
          if (angles.isKnown(s)) {
            reached[next] = true;
            carries[s] = true;
            steps.add(step);
            open.add(next);
          } else {
            unknown.add(step);
          }
        }
      }
    }
    List<Integer> loops = new ArrayList<>();
    for (int s = 0; s < carries.length; s++) {
      if (!carries[s]) {
        loops.add(s);
      }
    }
    return new FoldTree(net, steps, loops);
  }

  public List<Branch> steps() {
    return steps;
  }

  /** Scores that carry nothing: each closes a loop. */
  public List<Integer> loops() {
    return loops;
  }

  /** Whether a panel carries no other. */
  boolean isLeaf(int panel) {
    return steps.stream().noneMatch(s -> s.parent == panel);
  }

  /** Every panel where it lies in the net. */
  public List<Motion3> flat() {
    return Collections.nCopies(net.panels().size(), Motion3.NONE);
  }

  /** Where each panel goes while the root of its piece stays in the flat net. */
  public List<Motion3> fold(ScoreAngles angles) {
    return fold(angles, flat());
  }

  /**
   * Where each panel goes when some are held.
   *
   * @param held for each panel where it stays; {@link Motion3#NONE} where it is carried along
   */
  public List<Motion3> fold(ScoreAngles angles, List<Motion3> held) {
    List<Motion3> poses = new ArrayList<>(held);
    for (Branch step : steps) {
      if (held.get(step.child).equals(Motion3.NONE)) {
        poses.set(
            step.child,
            turn(net, step.score, step.parent, angles.foldBy(step.score))
                .then(poses.get(step.parent)));
      }
    }
    return List.copyOf(poses);
  }

  /**
   * The turn that folds what lies across a score. Seen along the side of the staying panel the
   * other lies to the right, so that a positive turn takes it down, away from the viewer: a
   * mountain.
   */
  public static Motion3 turn(Net net, int score, int staying, double angle) {
    Score s = net.scores().get(score);
    Segment2 side = net.segment(s.a().panel() == staying ? s.a() : s.b());
    return Motion3.about(flat(side.from()), flat(side.to()), angle);
  }

  private static Vec3 flat(Vec2 p) {
    return new Vec3(p.x(), p.y(), 0);
  }
}
