package facetwright.turn.fit;

import facetwright.aim.OutcomeText;
import facetwright.fold.Closure;
import facetwright.geom.Decimals;
import facetwright.script.Design;
import facetwright.turn.Effect;
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
    List<String> lines = new ArrayList<>();
    String so = (isTurned() ? "So turned, " : "As it stands, ") + counted(fitting.after().count());
    if (fitting.isMet()) {
      lines.add(isTurned() ? so + "." : "It is as large as can be: no dial is turned.");
      return lines;
    }
    lines.add(
        (fitting.copies() == 1 ? "It does" : fitting.copies() + " of it do")
            + " not fit "
            + sheet
            + " at any setting found; "
            + so.substring(0, 1).toLowerCase(java.util.Locale.ROOT)
            + so.substring(1)
            + ".");
    lines.addAll(OutcomeText.hurdles(fitting.outcome()));
    lines.add(
        fitting.copies() == 1
            ? "Take a larger sheet, or widen the range of its dials."
            : "Ask for fewer, take a larger sheet, or widen the range of its dials.");
    return lines;
  }

  /** Finished size before and after, by how much larger that is, and whether its joins meet. */
  public List<String> effect() {
    List<String> lines = new ArrayList<>(Effect.words(was, fitting.design(), isTurned()));
    if (isTurned() && fitting.design().folded().closure() != Closure.NOT_SOLVED) {
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
