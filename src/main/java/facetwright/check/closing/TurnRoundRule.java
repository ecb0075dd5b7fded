package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tubes whose given folds do not lead once round: all of them come to 360°, that of the seam with
 * them (the turning of a closed polygon, elementary).
 *
 * <p>What it does not detect: tubes that a lap closes (see {@link LapRoundRule}), those of which a
 * fold is left open, and unlike walls of which the wrong ones have the folds. It keeps silent where
 * the form can be made.
 */
final class TurnRoundRule implements CauseRule {
  private static final String NAME = "turn-round";

  /** Widths that differ by less are alike. */
  private static final LengthTolerance SAME = LengthTolerance.FINE;

  /** Angles that differ by less are alike, in degrees. */
  private static final double NOTHING = 0.01;

  /**
   * A tube that does not come round.
   *
   * @param folds those given, in degrees, turned the way of most of them
   */
  private record Astray(Tube tube, List<Double> folds) {
    private double sum() {
      return folds.stream().mapToDouble(f -> f).sum();
    }

    private int walls() {
      return tube.sides().size();
    }

    /** Whether the folds alone keep it from closing, whatever else does. */
    private boolean isSure(Subject subject) {
      double left = 360 - sum();
      if (isWhole()) {
        return Math.abs(left) > NOTHING;
      }
      boolean isOff = isOfOneFold() && Math.abs(folds.getFirst() - 360.0 / walls()) > NOTHING;
      return left <= 0 || left >= 180 || (isOff && isEven(subject));
    }

    private boolean isEven(Subject subject) {
      double width = Tube.width(subject, tube.sides().getFirst());
      return tube.sides().stream()
          .allMatch(s -> Math.abs(Tube.width(subject, s) - width) < SAME.mm());
    }

    /** Whether the seam's fold is given, too. */
    private boolean isWhole() {
      return folds.size() == walls();
    }

    private boolean isOfOneFold() {
      return folds.stream().allMatch(f -> Math.abs(f - folds.getFirst()) < 1e-9);
    }
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    return astray(subject).stream()
        .map(
            a -> {
              int wall = a.tube.sides().getFirst().panel();
              return new Finding(
                      NAME,
                      Finding.Severity.ERROR,
                      why(subject, a).capital().plus("."),
                      fix(subject, a),
                      new Place.AtPanel(wall),
                      subject.panel(wall).site())
                  .telling(why(subject, a));
            })
        .toList();
  }

  private static Message why(Subject subject, Astray a) {
    Message folds =
        a.isOfOneFold()
            ? Message.of("%s folds of %s", a.folds.size(), Value.angle(a.folds.getFirst()))
            : Message.of("its %s folds", a.folds.size());
    double left = 360 - a.sum();
    return Message.of(
        "round the tube with %s %s come to %s%s; all %s have to come to 360°%s",
        subject.name(a.tube.sides().getFirst().panel()),
        folds,
        Value.angle(a.sum()),
        a.isWhole() ? "" : " before its seam",
        a.walls(),
        a.isWhole() || left <= 0
            ? ""
            : Message.of(", and with %s at the seam its sides do not meet", Value.angle(left)));
  }

  private static Message fix(Subject subject, Astray a) {
    return a.isEven(subject)
        ? Message.of(
            "Fold each by %s, for %s walls that are alike.",
            Value.angle(360.0 / a.walls()), a.walls())
        : Message.text(
            "Leave the fold angles out, so that they are found from the seam; or give such as come"
                + " to 360° with the seam's.");
  }

  private static List<Astray> astray(Subject subject) {
    if (subject.folded().closure() != Closure.OPEN) {
      return List.of();
    }
    return Tube.all(subject).stream().flatMap(t -> astray(subject, t).stream()).toList();
  }

  private static Optional<Astray> astray(Subject subject, Tube tube) {
    List<Double> folds = new ArrayList<>();
    for (int i = 0; i < tube.sides().size(); i++) {
      EdgeRef one = tube.sides().get(i);
      EdgeRef two = tube.next().get(i);
      Optional<Score> score = score(subject, one, two).or(() -> ofTab(subject, one, two));
      if (score.isPresent() && score.get().angle() instanceof FoldAngle.Known(double d, _)) {
        folds.add(score.get().sense() == Sense.MOUNTAIN ? d : -d);
      }
    }
    double sum = folds.stream().mapToDouble(f -> f).sum();
    List<Double> turned = folds.stream().map(f -> sum < 0 ? -f : f).toList();
    Astray astray = new Astray(tube, turned);
    return folds.size() >= tube.sides().size() - 1 && astray.isSure(subject)
        ? Optional.of(astray)
        : Optional.empty();
  }

  private static Optional<Score> score(Subject subject, EdgeRef one, EdgeRef two) {
    return subject.net().scores().stream()
        .filter(
            s ->
                (s.a().equals(one) && s.b().equals(two))
                    || (s.a().equals(two) && s.b().equals(one)))
        .findFirst();
  }

  /** The score of the tab that a seam is glued by. */
  private static Optional<Score> ofTab(Subject subject, EdgeRef one, EdgeRef two) {
    for (Join join : subject.net().joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, int tab, _, _)
          && ((a.equals(one) && b.equals(two)) || (a.equals(two) && b.equals(one)))
          && tab != Join.Seam.NO_TAB) {
        return subject.net().scores().stream().filter(s -> s.isOf(tab)).findFirst();
      }
    }
    return Optional.empty();
  }
}
