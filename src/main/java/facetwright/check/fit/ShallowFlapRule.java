package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Flaps that hold without glue and reach too little way behind what holds them: they slip out. How
 * far each has to reach is common practice, no source: a tuck {@link #TUCK}, a hook and a tongue
 * {@link #HOOK} beyond their cut.
 *
 * <p>What it does not reckon: how stiff the card is, how the piece is carried, and what it weighs.
 */
public final class ShallowFlapRule implements Rule {
  /** How far a tuck reaches in at least, in mm. */
  static final double TUCK = 8;

  /** How far a hook or a tongue reaches beyond its cut at least, in mm. */
  static final double HOOK = 4;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Join join : subject.net().joins()) {
      if (join.hold().isGlued() || join.hold() == Hold.FLAP) {
        continue;
      }
      int flap =
          switch (join) {
            case Join.Seam s -> s.tab();
            case Join.Lap l -> l.under();
          };
      if (flap == Join.Seam.NO_TAB) {
        continue;
      }
      double taken = beforeIt(subject, join, flap);
      double holds = TabShape.depth(subject.foot(flap), subject.panel(flap).outline()) - taken;
      double least = join.hold() == Hold.TUCK ? TUCK : HOOK;
      if (holds < least - LengthTolerance.FINE.mm()) {
        found.add(finding(subject, join, flap, holds, least));
      }
    }
    return found;
  }

  private static Finding finding(Subject subject, Join join, int flap, double holds, double least) {
    String what =
        switch (join.hold()) {
          case TUCK -> "%s reaches in by %s: under %s it slips out by itself.";
          case HOOK -> "%s reaches %s past its cut: under %s it slips out by itself.";
          default -> "%s reaches %s through its slot: under %s it slips out by itself.";
        };
    return new Finding(
        "shallow-flap",
        Finding.Severity.WARNING,
        Message.of(what, subject.name(flap), Value.length(holds), Value.given(least)),
        Message.of(
            "Make it deeper by %s (a rule of thumb), or glue it.", Value.atLeast(least - holds)),
        new Place.AtPanel(flap),
        join.site());
  }

  /** What of it lies before the place where it begins to hold. */
  private static double beforeIt(Subject subject, Join join, int flap) {
    return switch (join) {
      case Join.Seam s when s.hold() == Hold.LATCH ->
          slot(subject, s)
              .map(o -> o.line().distance(subject.net().segment(s.b()).middle()))
              .orElse(0.0);
      case Join.Seam s when s.hold() == Hold.HOOK -> TightFlapRule.relief(subject, flap, s.hold());
      case Join.Lap l when l.hold() == Hold.TONGUE -> subject.caliper(l.over());
      default -> 0;
    };
  }

  /** The slot that a tongue comes out through: the nearest to the edge that its flap meets. */
  static Optional<Opening.Slot> slot(Subject subject, Join.Seam latch) {
    Vec2 middle = subject.net().segment(latch.b()).middle();
    return subject.panel(latch.b().panel()).openings().stream()
        .filter(Opening.Slot.class::isInstance)
        .map(Opening.Slot.class::cast)
        .min((a, b) -> Double.compare(a.line().distance(middle), b.line().distance(middle)));
  }
}
