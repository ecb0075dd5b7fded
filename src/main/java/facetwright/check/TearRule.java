package facetwright.check;

import facetwright.fold.ScoreGap;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.List;

/** Scores round a corner of the sheet whose angles do not agree with each other. */
final class TearRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (ScoreGap tear : subject.folded().tears()) {
      if (tear.mm() <= Mm.HAIR) {
        continue;
      }
      Score score = subject.net().scores().get(tear.score());
      found.add(
          new Finding(
              "tear",
              Mm.miss(tear.mm()),
              String.format(
                  "The card would tear or buckle by %s at %s: the fold angles round its end do not"
                      + " agree.",
                  Mm.text(tear.mm()), subject.name(score)),
              "Change one of the fold angles there, or cut the score open.",
              new Place.AtScore(tear.score()),
              score.site()));
    }
    return found;
  }
}
