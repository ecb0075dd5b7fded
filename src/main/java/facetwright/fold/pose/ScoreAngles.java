package facetwright.fold.pose;

import facetwright.geom.AngleTolerance;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How far every score of a net is folded: the one value that a folding needs besides the net.
 * Whoever finds angles that the net leaves open hands them over as one of these.
 *
 * @param radians for each score its angle, mountain positive and valley negative, −π to π; not a
 *     number where it is not known
 */
public record ScoreAngles(List<Double> radians) implements Serializable {
  /** So near to 180° the side that a panel comes from can't be seen. */
  private static final AngleTolerance RIGHT_OVER = AngleTolerance.UNSEEN;

  public ScoreAngles {
    radians = List.copyOf(radians);
  }

  /** The angles the net itself gives. */
  public static ScoreAngles nominal(Net net) {
    return new ScoreAngles(net.scores().stream().map(ScoreAngles::nominal).toList());
  }

  /** The angles by which a form has a net folded; one right over goes the way its sense says. */
  public static ScoreAngles of(Net net, FoldedForm form) {
    return new ScoreAngles(
        net.scores().stream()
            .map(
                s -> {
                  double angle =
                      Dihedrals.turn(
                          form.poses().get(s.a().panel()),
                          net.segment(s.a()),
                          form.poses().get(s.b().panel()));
                  boolean rightOver = Math.PI - Math.abs(angle) < RIGHT_OVER.radians();
                  return rightOver
                      ? Math.copySign(angle, s.sense() == Sense.MOUNTAIN ? 1 : -1)
                      : angle;
                })
            .toList());
  }

  private static double nominal(Score score) {
    return switch (score.angle()) {
      case FoldAngle.Known(double degrees, _) ->
          Math.toRadians(score.sense() == Sense.MOUNTAIN ? degrees : -degrees);
      case FoldAngle.ToSolve _ -> Double.NaN;
    };
  }

  public boolean isKnown(int score) {
    return !Double.isNaN(radians.get(score));
  }

  /** The angle to fold by: 0 where it is not known. */
  public double foldBy(int score) {
    return isKnown(score) ? radians.get(score) : 0;
  }

  /** The same angles with one of them given. */
  public ScoreAngles with(int score, double angle) {
    List<Double> changed = new ArrayList<>(radians);
    changed.set(score, angle);
    return new ScoreAngles(changed);
  }

  /** These where they are known, and others, of as many scores, where not. */
  public ScoreAngles orElse(ScoreAngles others) {
    return new ScoreAngles(
        IntStream.range(0, radians.size())
            .mapToObj(s -> isKnown(s) ? radians.get(s) : others.radians.get(s))
            .toList());
  }

  /** Every known angle taken the given part of the way. */
  public ScoreAngles times(double part) {
    return new ScoreAngles(radians.stream().map(a -> a * part).toList());
  }
}
