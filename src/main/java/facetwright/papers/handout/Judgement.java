package facetwright.papers.handout;

import facetwright.check.Checks;
import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import java.util.List;
import java.util.function.Supplier;

/** The verdict on a design, as its papers tell it: the same on each. Reckoned when it is asked. */
public final class Judgement {
  private final Supplier<Verdict> verdict;

  private Judgement(Supplier<Verdict> verdict) {
    this.verdict = verdict;
  }

  /**
   * On a net on its sheets and the same net folded.
   *
   * @param findings all that is found in them, the maker's own checks among it
   */
  public static Judgement of(Laid laid, FoldedForm form, List<Finding> findings) {
    return new Judgement(() -> Verdict.of(laid, form, findings));
  }

  /** On a net that no script made: what is found in it is what the rules find. */
  public static Judgement of(Laid laid, FoldedForm form) {
    return new Judgement(() -> Verdict.of(laid, form, Checks.all(laid, form)));
  }

  /**
   * In words.
   *
   * @param unit what its lengths are told in
   */
  public String text(Unit unit) {
    return verdict.get().text(unit);
  }
}
