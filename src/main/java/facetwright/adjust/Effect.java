package facetwright.adjust;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;

/** What turning dials does to a finished form, in words. */
public final class Effect {
  private Effect() {}

  /**
   * Its size and its joins, and what both were; nothing where they are not known.
   *
   * @param isTurned whether anything was turned, so that before is not after
   */
  public static List<String> words(Design before, Design after, boolean isTurned) {
    List<String> lines = new ArrayList<>();
    FoldedForm was = before.folded();
    FoldedForm is = after.folded();
    Unit unit = after.unit();
    if (is.closure() == Closure.NOT_SOLVED) {
      return List.of("Whether it closes is not known, before or after.");
    }
    String change = isTurned ? " (it was " + size(was.measures(), unit) + ")" : "";
    lines.add("Made, it is " + size(is.measures(), unit) + change + ".");
    boolean meets = meets(is);
    boolean met = meets(was);
    if (is.closure() == Closure.IN_ITSELF) {
      lines.add("As designed its joins meet, but panels pass through each other.");
      return lines;
    }
    String bends =
        is.closure() == Closure.CLOSES_WITH_STRAIN
            ? " if the card bends by " + percent(is.strain())
            : "";
    if (meets) {
      String as =
          !met
              ? ", where they missed by " + text(was.gap(), unit)
              : isTurned && was.closure() == is.closure() ? ", as before" : "";
      lines.add("As designed its joins meet" + bends + as + ".");
    } else {
      String as =
          !isTurned
              ? ""
              : met ? ", where they met" : ", where they missed by " + text(was.gap(), unit);
      lines.add("As designed its joins miss by " + text(is.gap(), unit) + as + ".");
    }
    return lines;
  }

  private static boolean meets(FoldedForm form) {
    return form.closure() != Closure.OPEN && form.closure() != Closure.FORGIVEN;
  }

  private static String size(Measures m, Unit unit) {
    return m.size(mm -> text(mm, unit));
  }

  private static String text(double mm, Unit unit) {
    return new Length(mm).text(unit);
  }

  private static String percent(double part) {
    return facetwright.words.Decimals.places(100 * part, 2) + " %";
  }
}
