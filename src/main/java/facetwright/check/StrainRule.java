package facetwright.check;

import facetwright.fold.Closure;
import facetwright.fold.PanelStrain;
import facetwright.fold.solve.SolverSettings;
import java.util.List;
import java.util.Optional;

/**
 * Forms that would close only if the card bent by more than it forgives.
 *
 * <p>What it does not detect: strain that comes of windows or thickness, and whether another way to
 * share the misses would strain the card less.
 */
final class StrainRule implements Rule {
  /** Less than this is not worth a length in a message, in mm. */
  private static final double LEAST = 0.01;

  @Override
  public List<Finding> find(Subject subject) {
    Optional<PanelStrain> worst = subject.folded().worst();
    if (subject.folded().closure() != Closure.OPEN || worst.isEmpty()) {
      return List.of();
    }
    int panel = worst.get().panel();
    double part = worst.get().part();
    if (part <= SolverSettings.USUAL.card().forgivenStrain()) {
      return List.of();
    }
    double off = Math.max(LEAST, worst.get().mm(subject.net()));
    return List.of(
        new Finding(
            "strain",
            Mm.miss(off),
            String.format(
                "%s would have to bend by %s for every join to meet: its corners are %s off. Card"
                    + " forgives %s.",
                subject.named(panel),
                Mm.percentOver(part),
                Mm.text(off),
                Mm.percent(SolverSettings.USUAL.card().forgivenStrain())),
            GivenAngles.any(subject.net())
                ? "Leave fold angles out, so that they are found from the joins; or change the"
                    + " lengths round it until they agree."
                : "Change the lengths round it until they agree: scores that meet in one point fix"
                    + " each other's lengths.",
            new Place.AtPanel(panel),
            subject.panel(panel).site()));
  }
}
