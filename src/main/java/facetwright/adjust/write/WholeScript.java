package facetwright.adjust.write;

import facetwright.measure.Ruler;
import facetwright.net.sheet.SheetSize;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.text.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A script written anew. Each is run once to see that it comes to what was meant, for a script can
 * reckon with its numbers as it likes.
 */
public final class WholeScript {
  private WholeScript() {}

  /**
   * The script with its dials' own values as they are turned. An aim of its own, which would turn
   * them again, becomes a comment.
   *
   * @param values where dials go, by name, in the design's unit; those not named stay
   * @param ruler fractions of it are written as such
   * @param more what else is to be changed
   * @throws ScriptException when the script has to be given up
   */
  public static Written of(WhatIf what, Map<String, Double> values, Ruler ruler, List<Edit> more)
      throws ScriptException {
    List<Dial> dials = what.design().dials();
    Optional<List<Edit>> turned =
        Writing.dials(what.source(), dials, values, ruler, what.design().unit());
    if (turned.isEmpty()) {
      return Written.not(Written.NOT_PLAIN);
    }
    List<Edit> edits = new ArrayList<>(turned.get());
    edits.addAll(more);
    if (what.hasAim()) {
      edits.addAll(Writing.withoutAim(what.source()));
    }
    String text = Edit.all(what.source(), edits);
    Optional<Design> design = what.written(text);
    return design.isPresent() && Writing.stand(design.get().dials(), dials, values)
        ? Written.as(text)
        : Written.not(Written.NOT_TAKEN);
  }

  /**
   * The script with another sheet in it.
   *
   * @param values where dials are turned, as above
   * @throws ScriptException when the script has to be given up
   */
  public static Written onSheet(WhatIf what, SheetSize sheet, Map<String, Double> values)
      throws ScriptException {
    Optional<Edit> edit = Writing.sheet(what.source(), sheet);
    if (edit.isEmpty()) {
      return Written.not(Written.NO_SHEET);
    }
    String text = Edit.all(what.source(), List.of(edit.get()));
    Optional<Design> design = what.rewritten(text, values);
    return design.isPresent() && sheet.isOf(design.get().laid().stock())
        ? Written.as(text)
        : Written.not(Written.NO_SHEET);
  }
}
