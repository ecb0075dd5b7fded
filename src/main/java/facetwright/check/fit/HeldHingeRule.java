package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.Folding;
import facetwright.fold.making.Bodies;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.ScoreAngles;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A fold that is said to stay a hinge, and can't turn, for what lies on both its sides is glued
 * together: a lid that is glued shut.
 *
 * <p>Joined all round does not mean held: the back and front of a card with a glued pop-out turn,
 * and the pop-out with them. So the made form is asked: the hinge is turned a little either way,
 * every other fold being free to follow and every join that takes glue holding. Where neither way
 * closes, it is held. It keeps silent on forms that do not close.
 */
public final class HeldHingeRule implements Rule {
  static final String NAME = "held-hinge";

  /** The hinge is turned by so many degrees: far beyond what a form forgives. */
  private static final double TURN = 10;

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() != Closure.CLOSES) {
      return List.of();
    }
    Net net = subject.net();
    List<Finding> found = new ArrayList<>();
    for (int s = 0; s < net.scores().size(); s++) {
      Score score = net.scores().get(s);
      if (score.hinge() && !score.isOfTab(net) && isInLoop(net, s) && isHeld(subject, s)) {
        found.add(held(subject, s));
      }
    }
    return found;
  }

  /** Whether something else than a hinge holds its two sides together. */
  private static boolean isInLoop(Net net, int hinge) {
    int[] root = withoutGlue(net, hinge);
    glued(net).forEach(j -> Bodies.unite(root, j.from(), j.onto()));
    Score score = net.scores().get(hinge);
    return Bodies.find(root, score.a().panel()) == Bodies.find(root, score.b().panel());
  }

  /** What hangs together by all scores but one. */
  private static int[] withoutGlue(Net net, int hinge) {
    int[] root = IntStream.range(0, net.panels().size()).toArray();
    for (int s = 0; s < net.scores().size(); s++) {
      if (s != hinge) {
        Bodies.unite(root, net.scores().get(s).a().panel(), net.scores().get(s).b().panel());
      }
    }
    return root;
  }

  private static List<Join> glued(Net net) {
    return net.joins().stream().filter(j -> j.hold().isGlued()).toList();
  }

  private static boolean isHeld(Subject subject, int hinge) {
    double now =
        Math.toDegrees(ScoreAngles.of(subject.net(), subject.folded()).radians().get(hinge));
    return Stream.of(now + TURN, now - TURN)
        .filter(to -> Math.abs(to) <= 180)
        .noneMatch(to -> turns(subject, hinge, to));
  }

  private static boolean turns(Subject subject, int hinge, double degrees) {
    Net net = subject.net();
    List<Score> scores = new ArrayList<>();
    for (int s = 0; s < net.scores().size(); s++) {
      Score score = net.scores().get(s);
      scores.add(
          s == hinge
              ? score
                  .toward(degrees > 0 ? Sense.MOUNTAIN : Sense.VALLEY)
                  .folded(FoldAngle.degrees(Math.abs(degrees)))
              : score.folded(FoldAngle.TO_SOLVE));
    }
    Net free = net.scored(scores).joined(glued(net));
    FoldedForm turned = Folding.beside(subject.laid().with(free), net, subject.folded());
    return turned.closure() != Closure.OPEN;
  }

  private static Finding held(Subject subject, int hinge) {
    Net net = subject.net();
    Score score = net.scores().get(hinge);
    int[] root = withoutGlue(net, hinge);
    int lid = Bodies.find(root, score.b().panel());
    Optional<Join> holds =
        glued(net).stream()
            .filter(
                j ->
                    Bodies.find(root, j.from()) != Bodies.find(root, j.onto())
                        && (Bodies.find(root, j.from()) == lid
                            || Bodies.find(root, j.onto()) == lid))
            .findFirst();
    Value.Name name = subject.name(score.b().panel());
    Message by = holds.map(j -> Message.of(": %s holds it", subject.name(j))).orElse(Message.EMPTY);
    Message what =
        Message.of(
            "%s is to turn on its hinge with %s, and can't%s",
            name, subject.name(score.a().panel()), by);
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            what.plus("."),
            Message.of(
                "Leave out what glues %s all round, tuck it in instead, or take the hinge away.",
                name),
            new Place.AtScore(hinge),
            score.site())
        .telling(what);
  }
}
