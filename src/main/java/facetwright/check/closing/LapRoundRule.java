package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Tubes closed by a lap that can't close: folds that do not come to 360° (the turning of a closed
 * polygon, elementary), walls that by their folds do not lead back to the panel that they began at,
 * and a wall wider than all that would lead back (Euclid, Elements I.20, for three; for more from
 * memory).
 *
 * <p>What it does not detect: tubes of which two folds or more are left open, but for the last. It
 * keeps silent where the form can be made, and of a lap that lies beside its panel.
 */
final class LapRoundRule implements CauseRule {
  private static final String NAME = "lap-round";

  /** Angles that differ by less are alike, in degrees. */
  private static final double NOTHING = 0.01;

  /** What is just wide enough to hold does by no more than rounding, in mm. */
  private static final double SURE = 0.02;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    Closure closure = subject.folded().closure();
    if (closure == Closure.OPEN || closure == Closure.NOT_SOLVED) {
      for (LapChain chain : LapChain.all(subject)) {
        found(subject, chain).ifPresent(found::add);
      }
    }
    return found;
  }

  private static Optional<Finding> found(Subject subject, LapChain chain) {
    Optional<Finding> wide = wide(subject, chain);
    List<Double> folds = whole(chain.folds());
    if (wide.isPresent() || folds.isEmpty()) {
      return wide;
    }
    double sum = folds.stream().mapToDouble(f -> f).sum();
    if (Math.abs(Math.abs(sum) - 360) > NOTHING) {
      return Math.abs(sum - 180 * Math.rint(sum / 180)) > NOTHING
          ? Optional.of(astray(subject, chain, folds, Math.abs(sum)))
          : Optional.empty();
    }
    double off = Math.abs(chain.off(folds));
    return off > subject.caliper() + Mm.HAIR
        ? Optional.of(off(subject, chain, folds, off))
        : Optional.empty();
  }

  /** The folds, one that is left open such that all come to 360°; empty where more are. */
  private static List<Double> whole(List<Double> folds) {
    int open =
        IntStream.range(0, folds.size()).filter(i -> folds.get(i).isNaN()).findFirst().orElse(-1);
    if (open < 0) {
      return folds;
    }
    List<Double> whole = new ArrayList<>(folds);
    whole.set(open, 0.0);
    double sum = whole.stream().mapToDouble(f -> f).sum();
    whole.set(open, Math.copySign(360, sum) - sum);
    return sum == 0 || whole.stream().anyMatch(f -> f.isNaN() || Math.abs(f) > 180)
        ? List.of()
        : whole;
  }

  private static Optional<Finding> wide(Subject subject, LapChain chain) {
    return IntStream.range(0, chain.walls().size())
        .filter(i -> chain.surplus(i) > Mm.HAIR)
        .mapToObj(
            i -> {
              double width = chain.lengths().get(i);
              return finding(
                  subject,
                  chain,
                  Message.of(
                      "%s is %s wide: so wide the others do not lead round it, back to %s, for %s"
                          + " to lie under that",
                      subject.name(chain.walls().get(i)),
                      Value.length(width),
                      over(subject, chain),
                      under(subject, chain)),
                  Message.of(
                      "Make it at most %s wide%s.",
                      Value.atMost(width - chain.surplus(i) - SURE),
                      chain.folds().stream().allMatch(f -> f.isNaN())
                          ? ""
                          : ", and leave the fold angles out, so that they are found"));
            })
        .findFirst();
  }

  private static Finding astray(Subject subject, LapChain chain, List<Double> folds, double sum) {
    double each = 360.0 / folds.size();
    boolean areAlike = folds.stream().allMatch(f -> Math.abs(f - folds.getFirst()) < NOTHING);
    List<Double> even = Collections.nCopies(folds.size(), Math.copySign(each, folds.getFirst()));
    boolean isEven =
        areAlike
            && each <= 180
            && Math.abs(chain.off(even)) < Mm.LEAST
            && chain.lands(LapChain.end(even, chain.lengths(), chain.walls().size()).x());
    return finding(
        subject,
        chain,
        Message.of(
            "from %s round to %s, which is to lie under it, the %s folds come to %s, and have to"
                + " come to 360°",
            over(subject, chain), under(subject, chain), folds.size(), Value.angle(sum)),
        isEven
            ? Message.of("Fold each by %s.", Value.angle(each))
            : last(subject, chain, folds).orElseGet(() -> free()));
  }

  private static Finding off(Subject subject, LapChain chain, List<Double> folds, double off) {
    Message why =
        Message.of(
            "from %s round to %s, which is to lie under it, the folds come to 360°, but the walls"
                + " between lead to %s off it",
            over(subject, chain), under(subject, chain), Value.length(off));
    for (int i = chain.walls().size() - 1; i >= 0; i--) {
      OptionalDouble wide = chain.width(folds, i);
      if (wide.isPresent()) {
        Message fix =
            Message.of(
                "Make %s measure %s across, from score to score, not %s.",
                subject.name(chain.walls().get(i)),
                Value.length(wide.getAsDouble()),
                Value.length(chain.lengths().get(i)));
        return finding(subject, chain, why, fix);
      }
    }
    return finding(subject, chain, why, last(subject, chain, folds).orElseGet(() -> free()));
  }

  /** The last two folds such that it lies where it should. */
  private static Optional<Message> last(Subject subject, LapChain chain, List<Double> folds) {
    int n = chain.scores().size();
    return chain
        .lastFolds(folds)
        .map(
            two ->
                Message.of(
                    "Fold %s by %s, and %s by %s.",
                    subject.name(chain.scores().get(n - 2)),
                    Value.angle(two.getFirst()),
                    subject.name(chain.scores().get(n - 1)),
                    Value.angle(two.getLast())));
  }

  private static Message free() {
    return Message.text("Leave the fold angles out, so that they are found from what has to meet.");
  }

  private static Value.Name over(Subject subject, LapChain chain) {
    return subject.name(chain.lap().over());
  }

  private static Value.Name under(Subject subject, LapChain chain) {
    return subject.name(chain.lap().under());
  }

  private static Finding finding(Subject subject, LapChain chain, Message why, Message fix) {
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            why.capital().plus("."),
            fix,
            new Place.AtPanel(chain.lap().under()),
            subject.site(chain.lap()))
        .telling(why);
  }
}
