package facetwright.adjust.fit;

import facetwright.adjust.Effect;
import facetwright.aim.OutcomeText;
import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What a fitting comes to, in words. */
public final class FittingText {
  private final Design was;
  private final Fitting fitting;
  private final String sheet;

  /**
   * @param was the design as it stands
   */
  public FittingText(Design was, Fitting fitting) {
    this.was = was;
    this.fitting = fitting;
    this.sheet = fitting.sheet().name();
  }

  /** How many lie on the sheet as it stands. */
  public String before() {
    return "As it stands, " + counted(fitting.before().count()) + ".";
  }

  /** How many lie there with the dials turned, or why not as many as should. */
  public List<String> after() {
    if (was.dials().isEmpty()) {
      return List.of(
          "It has no dials to turn. Make lengths of the script dials, and it can be made larger or"
              + " smaller.");
    }
    if (fitting.isMet()) {
      return List.of(
          isTurned() ? "Turned so, " + met() : "It is as large as can be: no dial is turned.");
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        fitting.copies() == 1 ? "Nor does it fit at any setting found" + nearest() : missed());
    lines.addAll(OutcomeText.hurdles(fitting.outcome()));
    lines.add(
        fitting.copies() == 1
            ? "Take a larger sheet, or widen the range of its dials."
            : "Ask for fewer, take a larger sheet, or widen the range of its dials.");
    return lines;
  }

  /** How many lie there, after it was said how many did. */
  private String met() {
    int was = fitting.before().count();
    int is = fitting.after().count();
    String many = is == 1 ? "one" : Integer.toString(is);
    if (was == is) {
      return many + (is == 1 ? " still does." : " still do.");
    }
    return was == 0 && is == 1 ? "it does." : many + (is == 1 ? " does." : " lie on it.");
  }

  private String nearest() {
    return isTurned() ? "; turned so, it comes nearest." : ".";
  }

  private String missed() {
    int is = fitting.after().count();
    String so = is == 0 ? "not even one does" : is == 1 ? "one does" : is + " do";
    return fitting.copies()
        + " do not fit at any setting found"
        + (isTurned() ? "; turned so, " + so : "")
        + ".";
  }

  /** Finished size before and after, by how much larger that is, and whether its joins meet. */
  public List<String> effect() {
    List<String> lines = new ArrayList<>(Effect.words(was, fitting.design(), isTurned()));
    if (isTurned()
        && fitting.isMet()
        && fitting.design().folded().closure() != Closure.NOT_SOLVED) {
      lines.add(
          1, "That is " + Decimals.places(100 * fitting.scale(was), 0) + " % of the size it was.");
    }
    List<String> atEnd = fitting.atEnd();
    if (fitting.isMet() && !atEnd.isEmpty()) {
      lines.add(
          "The script lets "
              + String.join(" and ", atEnd)
              + " go no further; the sheet may take more.");
    }
    return lines;
  }

  /** Whether the script has its papers made for another sheet. */
  public boolean isOtherSheet() {
    return !fitting.sheet().isOf(was.laid().stock());
  }

  /** Whether any dial is turned. */
  public boolean isTurned() {
    return !fitting.outcome().settings().isEmpty();
  }

  private String counted(int count) {
    return switch (count) {
      case 0 -> "it does not fit " + sheet;
      case 1 -> "one lies on a sheet of " + sheet;
      default -> count + " lie on a sheet of " + sheet;
    };
  }
}
