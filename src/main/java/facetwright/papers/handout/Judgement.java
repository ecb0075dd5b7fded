package facetwright.papers.handout;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.PanelStrain;
import facetwright.language.Language;
import facetwright.language.Telling;
import facetwright.measure.Unit;
import facetwright.message.Value;
import facetwright.net.sheet.Laid;
import java.util.List;
import java.util.function.Supplier;

/** The verdict on a design, as its papers tell it: the same on each. Reckoned when it is asked. */
public final class Judgement {
  private final Supplier<Verdict> verdict;

  private final FoldedForm form;

  private Judgement(FoldedForm form, Supplier<Verdict> verdict) {
    this.form = form;
    this.verdict = verdict;
  }

  /**
   * On a net on its sheets and the same net folded.
   *
   * @param findings all that is found in them, the maker's own checks among it
   */
  public static Judgement of(Laid laid, FoldedForm form, List<Finding> findings) {
    return new Judgement(form, () -> Verdict.of(laid, form, findings));
  }

  /**
   * In English: what the rules find.
   *
   * @param unit what its lengths are told in
   */
  public String text(Unit unit) {
    return verdict.get().text(unit);
  }

  /** In words: what it comes to, and to a reader of English, what the rules find. */
  public String text(Telling tell) {
    if (tell.phrases().language() == Language.ENGLISH) {
      return text(tell.unit());
    }
    return tell.say(
        "handout.verdict",
        "how",
        how(verdict.get().outcome()),
        "gap",
        tell.figures(Verdict.within(form).text(tell.unit())),
        "bend",
        tell.figures(
            Value.share(form.worst().map(PanelStrain::part).orElse(0.0)).text(tell.unit())),
        "forgiven",
        tell.figures(Verdict.forgiven().text(tell.unit())));
  }

  private String how(Verdict.Outcome outcome) {
    return switch (outcome) {
      case FAILS -> "fails";
      case UNKNOWN -> "unknown";
      case CLOSES ->
          switch (form.closure()) {
            case CLOSES_WITH_STRAIN -> "bends";
            case FORGIVEN -> "hardly";
            case CLOSES, OPEN, IN_ITSELF, NOT_SOLVED -> form.gaps().isEmpty() ? "free" : "meets";
          };
    };
  }
}
