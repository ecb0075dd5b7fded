package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.AngleTolerance;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Opening;
import facetwright.net.Score;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/**
 * Flaps that jam for want of relief: a tuck that is set back from the ends of the edge it hangs on
 * by less than the card is thick, a hook whose cut or a tongue whose slot is narrower.
 *
 * <p>What it does not detect: whether anything stands beside a tuck that it could jam against.
 */
public final class TightFlapRule implements Rule {

  @Override
  public List<Finding> find(Subject subject) {
    double least = subject.caliper();
    List<Finding> found = new ArrayList<>();
    for (Join join : subject.net().joins()) {
      if (join instanceof Join.Lap l && l.hold() == Hold.TONGUE) {
        Join.slot(subject.net(), l)
            .filter(s -> s.passes() < least - LengthTolerance.FINE.mm())
            .ifPresent(s -> found.add(narrow(subject, l.under(), l.over(), s, l.site())));
      }
      if (join instanceof Join.Seam l && l.hold() == Hold.LATCH) {
        ShallowFlapRule.slot(subject, l)
            .filter(s -> s.passes() < least - LengthTolerance.FINE.mm())
            .ifPresent(s -> found.add(narrow(subject, l.tab(), l.b().panel(), s, l.site())));
      }
      int flap =
          switch (join) {
            case Join.Lap l when l.hold() == Hold.TUCK -> l.under();
            case Join.Seam s when s.hold() == Hold.HOOK -> s.tab();
            default -> Join.Seam.NO_TAB;
          };
      if (flap != Join.Seam.NO_TAB) {
        double relief = relief(subject, flap, join.hold());
        if (relief < least - LengthTolerance.FINE.mm()) {
          found.add(finding(subject, flap, join.hold(), relief));
        }
      }
    }
    return found;
  }

  private static Finding narrow(
      Subject subject, int tongue, int host, Opening.Slot slot, Site site) {
    return new Finding(
        "tight-flap",
        Finding.Severity.WARNING,
        Message.of(
            "The slot in %s for %s is %s wide, and the card is %s thick: the tongue jams.",
            subject.name(host),
            subject.name(tongue),
            Value.length(slot.width()),
            Value.length(subject.caliper())),
        Message.of(
            "Make the slot %s wide or more: as wide as the card by itself where sheet stands above"
                + " it.",
            Value.given(subject.caliper())),
        new Place.AtPanel(host),
        site);
  }

  static double relief(Subject subject, int flap, Hold hold) {
    for (Score score : subject.net().scores()) {
      if (score.isOf(flap)) {
        boolean isFirst = score.a().panel() == flap;
        EdgeRef foot = isFirst ? score.a() : score.b();
        EdgeRef bearer = isFirst ? score.b() : score.a();
        return hold == Hold.HOOK ? cut(subject, foot) : setBack(subject, bearer);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** How far the corner of a hook beside its score stands off the score's line. */
  private static double cut(Subject subject, EdgeRef foot) {
    Polygon2 hook = subject.panel(foot.panel()).outline();
    double before = hook.side(foot.edge() - 1).length();
    double after = hook.side(foot.edge() + 1).length();
    return Math.min(before, after);
  }

  /** How much of the edge is left free beside a score, at the nearer of its ends. */
  private static double setBack(Subject subject, EdgeRef bearer) {
    Polygon2 panel = subject.panel(bearer.panel()).outline();
    return Math.min(along(panel, bearer.edge(), -1), along(panel, bearer.edge(), 1));
  }

  private static double along(Polygon2 panel, int edge, int way) {
    Segment2 side = panel.side(edge);
    Segment2 next = panel.side(edge + way);
    double turn = Math.abs(side.direction().cross(next.direction()));
    return turn < AngleTolerance.FINE.radians() ? next.length() : 0;
  }

  private static Finding finding(Subject subject, int flap, Hold hold, double relief) {
    Message what =
        hold == Hold.HOOK
            ? Message.of(
                "The cut of %s is %s wide, and the card is %s thick: the two hooks jam.",
                subject.name(flap), Value.length(relief), Value.length(subject.caliper(flap)))
            : Message.of(
                "%s is set back from the ends of its edge by %s, and the card is %s thick: it jams"
                    + " between the walls beside it.",
                subject.name(flap), Value.length(relief), Value.length(subject.caliper(flap)));
    return new Finding(
        "tight-flap",
        Finding.Severity.WARNING,
        what,
        Message.of("Give it a relief of %s or more.", Value.given(subject.caliper(flap))),
        new Place.AtPanel(flap),
        subject.panel(flap).site());
  }
}
