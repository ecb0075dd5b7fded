package facetwright.check;

import facetwright.net.EdgeRef;
import facetwright.net.Join;
import java.util.ArrayList;
import java.util.List;

/** Seams whose two sides are not of one length. */
final class SeamLengthsRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (int j = 0; j < subject.net().joins().size(); j++) {
      Join join = subject.net().joins().get(j);
      double miss = difference(subject, join);
      if (miss <= Mm.HAIR) {
        continue;
      }
      Join.Seam seam = (Join.Seam) join;
      found.add(
          new Finding(
              "seam-lengths",
              Mm.miss(miss),
              String.format(
                  "The two sides of %s differ by %s: %s is %s long, %s is %s.",
                  subject.name(seam),
                  Mm.text(miss),
                  subject.name(seam.a().panel()),
                  Mm.text(length(subject, seam.a())),
                  subject.name(seam.b().panel()),
                  Mm.text(length(subject, seam.b()))),
              "Give both sides the same length.",
              new Place.AtJoin(j),
              subject.site(seam)));
    }
    return found;
  }

  /** By how much the sides of a join differ, 0 for a lap. */
  static double difference(Subject subject, Join join) {
    return switch (join) {
      case Join.Seam s -> Math.abs(length(subject, s.a()) - length(subject, s.b()));
      case Join.Lap _ -> 0;
    };
  }

  private static double length(Subject subject, EdgeRef side) {
    return subject.net().segment(side).length();
  }
}
