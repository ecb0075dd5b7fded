package facetwright.adjust.round;

import facetwright.adjust.write.OtherUnit;
import facetwright.adjust.write.WholeScript;
import facetwright.adjust.write.Written;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.text.Edit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes what a rounding came to into the script. */
public final class Rewriting {
  private Rewriting() {}

  /**
   * The script with its dials' own values as a rounding leaves them. Rounded to a ruler of inches a
   * metric design becomes one in inches, and the other way round, where that leaves it as it is.
   *
   * @param withConstants whether to change the constants, too
   * @throws ScriptException when the script has to be given up
   */
  public static Written of(WhatIf what, Rounding rounding, boolean withConstants)
      throws ScriptException {
    Map<String, Double> values = new LinkedHashMap<>();
    rounding.turns().forEach(t -> values.put(t.knob().name(), t.value()));
    List<Edit> more =
        withConstants
            ? rounding.constants().stream().map(Constant::edit).toList()
            : List.<Edit>of();
    Written written = WholeScript.of(what, values, rounding.ruler(), more);
    Ruler ruler = rounding.ruler();
    Unit own = what.design().unit();
    if (!written.isThere() || ruler.unit().isMetric() == own.isMetric()) {
      return written;
    }
    Optional<String> other = OtherUnit.of(what, written.text(), ruler, values.keySet());
    String becomes = ruler.unit().plural();
    return other
        .map(
            text ->
                written.noted(
                    text,
                    "The script becomes one in "
                        + becomes
                        + ", its sizes told in "
                        + becomes
                        + "; numbers that lie on no mark stay as they are, in quotes with their"
                        + " unit."))
        .orElseGet(
            () ->
                written.noted(
                    written.text(),
                    "The script stays in "
                        + own.plural()
                        + ": counted in "
                        + becomes
                        + " it would not make the same design, as where it"
                        + (rounding.files().isEmpty() ? "" : ", or a file that it uses,")
                        + " reckons with a plain number as a length. What lies on marks is written"
                        + " in "
                        + becomes
                        + ", in quotes."
                        + plain(withConstants ? rounding.constants() : List.of(), own)));
  }

  /** What can't be put in quotes. */
  private static String plain(List<Constant> constants, Unit own) {
    List<String> plain =
        constants.stream()
            .filter(Constant::staysPlain)
            .map(c -> c.becomes() + " in line " + c.site().line())
            .toList();
    return plain.isEmpty()
        ? ""
        : " But "
            + String.join(", ", plain)
            + (plain.size() == 1 ? " stays a plain number" : " stay plain numbers")
            + " of "
            + own.plural()
            + ", for the script may reckon with "
            + (plain.size() == 1 ? "it." : "them.");
  }
}
