package facetwright.check;

import facetwright.fold.JoinGap;
import facetwright.net.Join;
import java.util.ArrayList;
import java.util.List;

/**
 * Joins that miss when folded. It keeps silent on seams whose sides differ in length, which have a
 * rule of their own, and below what a hand can cut.
 */
final class GapRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (JoinGap gap : subject.folded().gaps()) {
      Join join = subject.net().joins().get(gap.join());
      if (gap.mm() <= Mm.HAIR || SeamLengthsRule.difference(subject, join) > Mm.HAIR) {
        continue;
      }
      String name = subject.name(join);
      found.add(
          new Finding(
              "gap",
              Mm.miss(gap.mm()),
              "When folded, " + name + " misses by " + Mm.text(gap.mm()) + ".",
              "Look at the fold angles and lengths between the two: round a closed form they"
                  + " have to agree.",
              new Place.AtJoin(gap.join()),
              subject.site(join)));
    }
    return found;
  }
}
