package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Senses;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Scores that the form folds against the sense the script asks for, or not at all, their angles
 * being left open. It does not look at scores whose angle is given.
 */
public final class SenseRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    List<Double> folds = Senses.folds(subject.net(), subject.folded());
    for (int s : Senses.contrary(subject.net(), subject.folded())) {
      Score score = subject.net().scores().get(s);
      found.add(
          at(
              s,
              score,
              Message.of(
                  "The score between %s and %s is to be a %s, but the form as it was found folds it"
                      + " by %s as a %s.",
                  subject.name(score.a().panel()),
                  subject.name(score.b().panel()),
                  word(score.sense()),
                  Value.foldAngle(Math.abs(folds.get(s))),
                  word(score.sense().other())),
              Message.of(
                  "Ask for a %s there, or change the lengths round it so that it can fold as"
                      + " asked.",
                  word(score.sense().other()))));
    }
    for (int s : Senses.unfolded(subject.net(), subject.folded())) {
      Score score = subject.net().scores().get(s);
      found.add(
          at(
              s,
              score,
              Message.of(
                  "The score between %s and %s is to be a %s, but the form as it was found does not"
                      + " fold it at all.",
                  subject.name(score.a().panel()),
                  subject.name(score.b().panel()),
                  word(score.sense())),
              Message.of(
                  "If it is to stay flat, give it a fold of 0. If it is to fold, another of the"
                      + " scores that meet at its ends has to be a %s: where all go one way, no"
                      + " more than one line of them folds.",
                  word(score.sense().other()))));
    }
    return found;
  }

  private static Finding at(int number, Score score, Message message, Message fix) {
    return new Finding(
        "sense", Finding.Severity.WARNING, message, fix, new Place.AtScore(number), score.site());
  }

  private static String word(Sense sense) {
    return sense.name().toLowerCase(Locale.ROOT);
  }
}
