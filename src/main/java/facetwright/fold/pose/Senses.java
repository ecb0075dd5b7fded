package facetwright.fold.pose;

import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Which way scores fold in the made form, beside what the net says. Where an angle is left open and
 * nobody asked for a sense, the net's is a guess, and the form decides. Where a sense was asked
 * for, the net keeps it; a form that folds it the other way is then against what was asked.
 *
 * <p>Forms that are not solved decide nothing.
 */
public final class Senses {
  /** Nearer to flat, or to folded right over, a score has no side to be on; in degrees. */
  private static final double EITHER = 1e-6;

  /** What a maker would notice, in degrees; common practice, no source. */
  private static final double NOTICED = 0.5;

  private Senses() {}

  /** How far each score is folded in the form, in degrees: mountain positive, −180 to 180. */
  public static List<Double> folds(Net net, FoldedForm form) {
    return Dihedrals.atScores(net, form).stream().map(inside -> 180 - inside).toList();
  }

  /**
   * The sense of a fold.
   *
   * @param degrees mountain positive, −180 to 180
   * @return nothing where the score is flat or folded right over
   */
  public static Optional<Sense> of(double degrees) {
    if (Math.abs(degrees) <= EITHER || Math.abs(degrees) >= 180 - EITHER) {
      return Optional.empty();
    }
    return Optional.of(degrees > 0 ? Sense.MOUNTAIN : Sense.VALLEY);
  }

  /** The net, every score whose sense was only guessed with the one it has in the form. */
  public static Net asFolded(Net net, FoldedForm form) {
    if (form.closure() == Closure.NOT_SOLVED) {
      return net;
    }
    List<Double> folds = folds(net, form);
    List<Score> scores =
        IntStream.range(0, folds.size())
            .mapToObj(
                s -> {
                  Score score = net.scores().get(s);
                  boolean guessed =
                      score.angle() instanceof FoldAngle.ToSolve open && !open.isSenseSaid();
                  return guessed ? score.toward(of(folds.get(s)).orElse(score.sense())) : score;
                })
            .toList();
    return scores.equals(net.scores()) ? net : net.scored(scores);
  }

  /** The scores of open angle that noticeably fold against the sense asked for. */
  public static List<Integer> contrary(Net net, FoldedForm form) {
    return asked(
        net,
        form,
        (score, fold) ->
            Math.abs(fold) > NOTICED && of(fold).filter(score.sense().other()::equals).isPresent());
  }

  /** The scores of open angle for which a sense was asked, and that stay flat. */
  public static List<Integer> unfolded(Net net, FoldedForm form) {
    return asked(net, form, (_, fold) -> Math.abs(fold) <= NOTICED);
  }

  private static List<Integer> asked(
      Net net, FoldedForm form, BiPredicate<Score, Double> isSought) {
    if (form.closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    List<Double> folds = folds(net, form);
    return IntStream.range(0, folds.size())
        .filter(
            s ->
                net.scores().get(s).angle() instanceof FoldAngle.ToSolve open && open.isSenseSaid())
        .filter(s -> isSought.test(net.scores().get(s), folds.get(s)))
        .boxed()
        .toList();
  }
}
