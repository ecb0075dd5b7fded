package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.JoinGap;
import facetwright.fold.pose.Laps;
import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Joins that miss when folded. It keeps silent below what a hand can cut, and on what the unlike
 * lengths of a seam's sides explain, which have a rule of their own. A lap that lies beside its
 * panel is told as such.
 */
public final class GapRule implements Rule {
  /** So many joins are named. */
  private static final int NAMED = 3;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    List<JoinGap> missing = new ArrayList<>();
    for (JoinGap gap : subject.folded().gaps()) {
      Join join = subject.net().joins().get(gap.join());
      if (gap.mm() <= SeamLengthsRule.difference(subject, join) + Mm.HAIR) {
        continue;
      }
      if (join instanceof Join.Lap lap && Laps.isBeside(subject.net(), subject.folded(), lap)) {
        found.add(beside(subject, gap, lap));
      } else {
        missing.add(gap);
      }
    }
    if (!missing.isEmpty()) {
      found.addFirst(missing(subject, missing));
    }
    return found;
  }

  /** All that miss have one cause more often than not. */
  private static Finding missing(Subject subject, List<JoinGap> gaps) {
    gaps.sort(Comparator.comparingDouble(JoinGap::mm).reversed());
    JoinGap worst = gaps.getFirst();
    Join join = subject.net().joins().get(worst.join());
    int others = gaps.size() - 1;
    Message named =
        Message.join(
            ", ",
            gaps.stream()
                .skip(1)
                .limit(NAMED)
                .map(g -> subject.name(subject.net().joins().get(g.join())))
                .toList());
    Message also =
        switch (others) {
          case 0 -> Message.text(".");
          case 1 -> Message.of(", and so does %s, by %s.", named, Value.length(gaps.get(1).mm()));
          default ->
              Message.of(
                  ", and %s others miss by up to %s: %s%s.",
                  others,
                  Value.length(gaps.get(1).mm()),
                  named,
                  others > NAMED ? " and " + (others - NAMED) + " more" : "");
        };
    return new Finding(
        "gap",
        Finding.Severity.ERROR,
        Message.of(
            "When folded, %s misses by %s%s", subject.name(join), Value.length(worst.mm()), also),
        fix(subject, join),
        new Place.AtJoin(worst.join()),
        subject.site(join));
  }

  private static Message fix(Subject subject, Join join) {
    if (join instanceof Join.Lap lap && join.hold() == Join.Hold.TONGUE) {
      double off = off(subject, lap);
      if (off > Mm.HAIR) {
        return Message.of(
            "The edge that %s hangs on stays %s off %s: bring it down on that, or hang the tongue"
                + " on an edge that comes to it.",
            subject.name(lap.under()), Value.length(off), subject.name(lap.over()));
      }
      return Message.text(
          "Give the slot another inset, so that the foot of the tongue's panel comes down on it, or"
              + " move the tongue along its edge by at.");
    }
    Message reach =
        join instanceof Join.Seam(EdgeRef a, EdgeRef b, _, _, _) && a.panel() != b.panel()
            ? Message.of(
                "make %s and %s reach farther, or what lies between them smaller",
                subject.name(a.panel()), subject.name(b.panel()))
            : Message.text("change the lengths between the two until they agree");
    return GivenAngles.any(subject.net())
        ? Message.of(
            "Leave fold angles out, so that they are found from the joins. If it misses then too,"
                + " %s.",
            reach)
        : reach.capital().plus(".");
  }

  /** How far the foot of a tongue is off the plane of the panel with the slot, in mm. */
  private static double off(Subject subject, Join.Lap tongue) {
    Segment2 foot = subject.foot(tongue.under());
    Motion3 seen =
        subject
            .folded()
            .poses()
            .get(tongue.under())
            .then(subject.folded().poses().get(tongue.over()).inverse());
    return Math.max(Math.abs(seen.apply(foot.from()).z()), Math.abs(seen.apply(foot.to()).z()));
  }

  /** A lap that nothing holds can't be made, however little is missing. */
  private static Finding beside(Subject subject, JoinGap gap, Join.Lap lap) {
    Value.Name under = subject.name(lap.under());
    return new Finding(
        "gap",
        Finding.Severity.ERROR,
        Message.of(
            "When folded, %s lies beside %s, not under it, so that no glue holds it: its middle is"
                + " %s off.",
            under, subject.name(lap.over()), Value.length(gap.mm())),
        RightOver.of(subject, gap.join())
            .orElseGet(
                () ->
                    Message.of(
                        "Let %s lie under the panel where it comes to, or fold the scores between"
                            + " them by other angles.",
                        under)),
        new Place.AtJoin(gap.join()),
        subject.site(lap));
  }
}
