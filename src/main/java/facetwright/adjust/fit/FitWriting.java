package facetwright.adjust.fit;

import facetwright.adjust.write.WholeScript;
import facetwright.adjust.write.Writing;
import facetwright.adjust.write.Written;
import facetwright.aim.Grid;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.text.Edit;
import java.util.List;

/** Writes what a fitting came to into the script. */
public final class FitWriting {
  private FitWriting() {}

  /**
   * The script with its dials' own values as a fitting leaves them, and with its sheet.
   *
   * @param grid the ruler the dials were set by
   * @throws ScriptException when the script has to be given up
   */
  public static Written of(WhatIf what, Fitting fitting, Grid grid) throws ScriptException {
    boolean isOther = new FittingText(what.design(), fitting).isOtherSheet();
    List<Edit> more = List.of();
    if (isOther) {
      if (!sheet(what, fitting).isThere()) {
        return Written.not(Written.NO_SHEET);
      }
      more = Writing.sheet(what.source(), fitting.sheet()).stream().toList();
    }
    return WholeScript.of(
        what, fitting.outcome().values(), grid.written(what.design().unit()), more);
  }

  /** The script with its sheet alone, its dials turned beside it. */
  public static Written sheet(WhatIf what, Fitting fitting) throws ScriptException {
    return WholeScript.onSheet(what, fitting.sheet(), fitting.outcome().values());
  }
}
