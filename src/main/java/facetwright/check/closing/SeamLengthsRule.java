package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import java.util.ArrayList;
import java.util.List;

/** Seams whose two sides are not of one length. */
public final class SeamLengthsRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (int j = 0; j < subject.net().joins().size(); j++) {
      Join join = subject.net().joins().get(j);
      double miss = difference(subject, join);
      if (miss <= Mm.HAIR || !(join instanceof Join.Seam seam)) {
        continue;
      }
      boolean aIsShort = length(subject, seam.a()) < length(subject, seam.b());
      EdgeRef shorter = aIsShort ? seam.a() : seam.b();
      EdgeRef longer = aIsShort ? seam.b() : seam.a();
      found.add(
          new Finding(
              "seam-lengths",
              subject.folded().closes() ? Finding.Severity.WARNING : Finding.Severity.ERROR,
              Message.of(
                  "The seam between %s and %s: its sides differ by %s. That of %s is %s long, that"
                      + " of %s %s.",
                  subject.named(seam.a().panel()),
                  subject.named(seam.b().panel()),
                  Value.length(miss),
                  subject.name(shorter.panel()),
                  Value.length(length(subject, shorter)),
                  subject.name(longer.panel()),
                  Value.length(length(subject, longer))),
              Message.of(
                  "Make that side of %s %s longer, or that of %s %s shorter.",
                  subject.name(shorter.panel()),
                  Value.length(miss),
                  subject.name(longer.panel()),
                  Value.length(miss)),
              new Place.AtJoin(j),
              subject.site(seam)));
    }
    return found;
  }

  /** By how much the sides of a join differ, 0 for a lap. */
  public static double difference(Subject subject, Join join) {
    return switch (join) {
      case Join.Seam s -> Math.abs(length(subject, s.a()) - length(subject, s.b()));
      case Join.Lap _ -> 0;
    };
  }

  private static double length(Subject subject, EdgeRef side) {
    return subject.net().segment(side).length();
  }
}
