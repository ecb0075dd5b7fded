package facetwright.check;

import facetwright.fold.JoinGap;
import facetwright.net.Join;
import java.util.ArrayList;
import java.util.List;

/**
 * Joins that miss when folded. It keeps silent below what a hand can cut, and on what the unlike
 * lengths of a seam's sides explain, which have a rule of their own.
 */
final class GapRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (JoinGap gap : subject.folded().gaps()) {
      Join join = subject.net().joins().get(gap.join());
      if (gap.mm() <= SeamLengthsRule.difference(subject, join) + Mm.HAIR) {
        continue;
      }
      String name = subject.name(join);
      found.add(
          new Finding(
              "gap",
              Mm.miss(gap.mm()),
              "When folded, " + name + " misses by " + Mm.text(gap.mm()) + ".",
              GivenAngles.any(subject.net())
                  ? "Leave fold angles out, so that they are found from the joins. If it misses"
                      + " then too, change the lengths between the two until they agree."
                  : "Change the lengths between the two until they agree.",
              new Place.AtJoin(gap.join()),
              subject.site(join)));
    }
    return found;
  }
}
