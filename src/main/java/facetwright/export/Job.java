package facetwright.export;

import facetwright.fold.Closure;
import facetwright.fold.FoldedForm;
import facetwright.geom.Unit;
import facetwright.net.Laid;
import java.util.Objects;

/**
 * A finished design to be written.
 *
 * @param title of the design
 * @param author who made it, blank where not said
 * @param unit words on the pages give measures in it
 * @param laid the net on its sheets
 * @param form the folded form of the same net
 * @param order how many pieces, the printer's paper, the maker's ruler
 */
public record Job(String title, String author, Unit unit, Laid laid, FoldedForm form, Order order) {

  /**
   * @throws IllegalArgumentException when the form is not one of this net
   */
  public Job {
    Objects.requireNonNull(title);
    Objects.requireNonNull(author);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(order);
    if (isSolved(form) && form.poses().size() != laid.net().panels().size()) {
      throw new IllegalArgumentException(
          "the folded form has %d panels, the net %d"
              .formatted(form.poses().size(), laid.net().panels().size()));
    }
  }

  /** For one piece, on the usual paper. */
  public Job(String title, String author, Unit unit, Laid laid, FoldedForm form) {
    this(title, author, unit, laid, form, Order.usual(unit));
  }

  /** Whether it is known where each panel ends up. */
  boolean isSolved() {
    return isSolved(form);
  }

  private static boolean isSolved(FoldedForm form) {
    return form.closure() != Closure.NOT_SOLVED;
  }
}
