package facetwright.check;

import facetwright.check.cut.OffSheetRule;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Stock;
import java.util.List;
import java.util.stream.Collectors;

/** A design in a few sentences: whether it closes, how large it is made, what it is cut from. */
public final class Summary {
  private Summary() {}

  /**
   * The words for a net on its sheets and the same net folded. Where the form is not solved, no
   * size is told, for none is known.
   *
   * @param findings all that {@link Checks} found in them
   * @param unit whose usual ruler sizes are read on, with "about" where they lie between its marks
   */
  public static String of(Laid laid, FoldedForm folded, List<Finding> findings, Unit unit) {
    String size =
        folded.closure() == Closure.NOT_SOLVED
            ? ""
            : (isFlat(folded) ? " Made, it lies flat: " : " Made, it is ")
                + folded.measures().size(mm -> new Length(mm).read(unit))
                + ".";
    Verdict verdict = Verdict.of(laid, folded, findings);
    boolean isToldFirst =
        verdict.leading().filter(f -> f.rule().equals(OffSheetRule.NAME)).isPresent();
    return verdict.text(unit) + size + (isToldFirst ? "" : " " + fits(laid));
  }

  /** Whether what is joined comes out with nothing inside, as at the least size that closes. */
  private static boolean isFlat(FoldedForm folded) {
    Measures m = folded.measures();
    return !folded.gaps().isEmpty()
        && Math.min(m.height(), Math.min(m.width(), m.depth())) < Mm.HAIR;
  }

  /** Whether a net fits its sheets. */
  public static String fits(Laid laid) {
    List<Stock> kinds = laid.kinds();
    return (laid.fits() ? "Fits " : "Does not fit ")
        + kinds.stream()
            .map(
                kind ->
                    (laid.sheetsOf(kind) == 1 ? "" : laid.sheetsOf(kind) + " sheets of ")
                        + kind.name()
                        + (kinds.size() == 1 ? "" : " (" + kind.text() + ")"))
            .collect(Collectors.joining(" and "))
        + ".";
  }
}
