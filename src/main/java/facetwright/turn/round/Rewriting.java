package facetwright.turn.round;

import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import facetwright.turn.write.ScriptEdit;
import facetwright.turn.write.WholeScript;
import facetwright.turn.write.Written;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes what a rounding came to into the script. */
public final class Rewriting {
  private Rewriting() {}

  /**
   * The script with its dials' own values as a rounding leaves them.
   *
   * @param withConstants whether to change the constants, too
   * @throws ScriptException when the script has to be given up
   */
  public static Written of(WhatIf what, Rounding rounding, boolean withConstants)
      throws ScriptException {
    Map<String, Double> values = new LinkedHashMap<>();
    rounding.turns().forEach(t -> values.put(t.knob().name(), t.value()));
    List<ScriptEdit> more =
        withConstants
            ? rounding.constants().stream().map(Constant::edit).toList()
            : List.<ScriptEdit>of();
    return WholeScript.of(what, values, rounding.ruler(), more);
  }
}
