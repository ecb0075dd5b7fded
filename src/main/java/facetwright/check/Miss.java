package facetwright.check;

import facetwright.check.closing.SeamLengthsRule;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.JoinGap;
import facetwright.fold.pose.Laps;
import facetwright.fold.pose.ScoreGap;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** By how much a form misses closing, in the middle of a sentence. */
final class Miss {
  private Miss() {}

  /** What misses most, why where that is known, and how much else misses. */
  static Message words(Subject subject) {
    FoldedForm form = subject.folded();
    List<JoinGap> gaps =
        form.gaps().stream()
            .filter(g -> g.mm() > 0)
            .sorted(Comparator.comparingDouble(JoinGap::mm).reversed())
            .toList();
    Optional<ScoreGap> tear = form.tears().stream().max(Comparator.comparingDouble(ScoreGap::mm));
    double worst = form.gap();
    if (tear.isPresent() && tear.get().mm() >= worst) {
      return Message.of(
          "the card would tear or buckle by %s at %s",
          Value.length(tear.get().mm()),
          subject.name(subject.net().scores().get(tear.get().score())));
    }
    JoinGap first = gaps.getFirst();
    Join join = subject.net().joins().get(first.join());
    double uneven = SeamLengthsRule.difference(subject, join);
    long others = gaps.stream().skip(1).filter(g -> g.mm() > Mm.HAIR).count();
    return Message.of(
        "%s misses by %s%s%s%s",
        subject.name(join),
        Value.length(first.mm()),
        join instanceof Join.Lap lap && Laps.isBeside(subject.net(), form, lap)
            ? ", for it lies beside it, not under it"
            : "",
        uneven > Mm.HAIR ? Message.of(", for its sides differ by %s", Value.length(uneven)) : "",
        others == 0
            ? ""
            : others == 1
                ? ", and one other join misses too"
                : Message.of(", and %s other joins miss too", others));
  }
}
