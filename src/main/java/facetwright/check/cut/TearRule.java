package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.ScoreGap;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Score;
import java.util.Comparator;
import java.util.List;

/** Scores round a corner of the sheet whose angles do not agree with each other. */
public final class TearRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<ScoreGap> tears =
        subject.folded().tears().stream()
            .filter(t -> t.mm() > Mm.HAIR)
            .sorted(Comparator.comparingDouble(ScoreGap::mm).reversed())
            .toList();
    if (tears.isEmpty()) {
      return List.of();
    }
    ScoreGap worst = tears.getFirst();
    Score score = subject.net().scores().get(worst.score());
    int others = tears.size() - 1;
    return List.of(
        new Finding(
            "tear",
            subject.folded().closes() ? Finding.Severity.WARNING : Finding.Severity.ERROR,
            Message.of(
                "The card would tear or buckle by %s at %s%s: the fold angles round its end do not"
                    + " agree.",
                Value.length(worst.mm()),
                subject.name(score),
                others == 0
                    ? ""
                    : others == 1
                        ? ", and by up to as much at one other"
                        : Message.of(", and by up to as much at %s others", others)),
            Message.text("Change one of the fold angles there, or cut the score open."),
            new Place.AtScore(worst.score()),
            score.site()));
  }
}
