package facetwright.turn.round;

import facetwright.fold.Closure;
import facetwright.fold.FoldedForm;
import facetwright.fold.Measures;
import facetwright.geom.Decimals;
import facetwright.geom.Unit;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.ToSet;
import facetwright.script.Design;
import facetwright.script.Dial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a rounding comes to, in words. */
public final class RoundingText {
  private static final int MOST_NAMED = 5;

  private final Rounding rounding;
  private final Unit unit;

  /**
   * @param unit the design's
   */
  public RoundingText(Rounding rounding, Unit unit) {
    this.rounding = rounding;
    this.unit = unit;
  }

  /** How many measures lay between marks, and how many do now. */
  public String count() {
    ToSet after = rounding.after().toSet();
    int all = ToSet.distinct(after.all()).size();
    String ruler = " of a ruler of " + ChartNotes.name(rounding.ruler());
    String was =
        isUnturned() ? "" : "; before, " + between(rounding.before().toSet(), "lay", "none lay");
    String whole =
        all == 1 ? "Of 1 measure to set, " : "Of " + all + " different measures to set, ";
    return rounding.after().isOnRuler()
        ? (all == 1
                ? "The one measure to set lies"
                : "All " + all + " different measures to set lie")
            + " on marks"
            + ruler
            + was
            + "."
        : whole + between(after, "lie", "") + " between two marks" + ruler + was + ".";
  }

  private boolean isUnturned() {
    return rounding.turns().stream().noneMatch(Rounding.Turn::isTurned);
  }

  private static String between(ToSet set, String verb, String none) {
    int form = set.formOff();
    int cuts = set.cutsOff();
    if (form + cuts == 0) {
      return none + " between marks";
    }
    String what =
        form == 0
            ? cuts + " of cuts"
            : cuts == 0 ? form + " of the form" : form + " of the form and " + cuts + " of cuts";
    return what + (form + cuts == 1 ? verb.equals("lie") ? " lies" : " " + verb : " " + verb);
  }

  /** What "measure" means for pieces that are drawn or traced; empty where there are none. */
  public Optional<String> drawn() {
    return rounding.after().chart().pieces().stream().allMatch(PieceChart::isForBoard)
        ? Optional.empty()
        : Optional.of(
            "A piece that no scoring board serves goes by the lengths of its sides, as it is drawn"
                + " panel by panel.");
  }

  /** Finished size before and after, the gap, and the sheet. */
  public List<String> effect() {
    List<String> lines = new ArrayList<>();
    Design after = rounding.after().design();
    FoldedForm was = rounding.before().design().folded();
    FoldedForm is = after.folded();
    if (is.closure() != Closure.NOT_SOLVED) {
      String change = isUnturned() ? "" : " (it was " + size(was.measures()) + ")";
      lines.add("Made, it is " + size(is.measures()) + change + ".");
      boolean meets = is.closure() != Closure.OPEN;
      String before = isUnturned() ? "" : ", where it was " + mm(was.gap()) + " mm";
      lines.add(
          meets
              ? "As designed its joins meet"
                  + (was.closure() == is.closure() ? ", as before." : ".")
              : "As designed its joins miss by " + mm(is.gap()) + " mm" + before + ".");
    }
    lines.add(
        (after.laid().fits() ? "Fits " : "Does not fit ")
            + (after.laid().sheets() == 1 ? "" : after.laid().sheets() + " sheets of ")
            + after.laid().stock().name()
            + ".");
    return lines;
  }

  private String size(Measures m) {
    return length(m.height())
        + " tall, "
        + length(m.width())
        + " wide and "
        + length(m.depth())
        + " deep";
  }

  private String length(double mm) {
    return facetwright.aim.Measure.HEIGHT.text(mm, unit);
  }

  private static String mm(double mm) {
    return Decimals.places(mm, 2);
  }

  /** What is still between marks, the farthest first, and what that does to the form. */
  public List<String> left() {
    List<String> lines = new ArrayList<>();
    Draft after = rounding.after();
    if (after.isOnRuler()) {
      return lines;
    }
    List<Measure> off =
        ToSet.distinct(after.toSet().all()).stream()
            .filter(m -> !m.isOnRuler())
            .sorted(
                (a, b) ->
                    Double.compare(
                        Math.abs(b.reading().errorMm()), Math.abs(a.reading().errorMm())))
            .toList();
    off.stream().limit(MOST_NAMED).forEach(m -> lines.add("About: " + m.offText() + "."));
    if (off.size() > MOST_NAMED) {
      lines.add(off.size() - MOST_NAMED + " more lie between marks.");
    }
    boolean board = after.chart().pieces().stream().allMatch(PieceChart::isForBoard);
    if (board) {
      lines.add(AsSet.words(after.design().folded(), Rounding.asSet(after)));
    } else {
      lines.add(
          "Set by this ruler, a side comes out up to "
              + mm(after.toSet().mostOff())
              + " mm longer or shorter than the one it meets. Prick corners through the template"
              + " where that is too much.");
    }
    return lines;
  }

  /** What in the script keeps measures between marks. */
  public List<String> constants() {
    List<String> lines = new ArrayList<>();
    if (!rounding.after().isOnRuler()) {
      rounding.after().design().dials().stream()
          .filter(this::isHeld)
          .forEach(d -> lines.add(steps(d)));
    }
    for (Constant c : rounding.constants()) {
      Measure becomes = Measure.of(c.mm(), Rounding.halves(rounding.ruler()));
      boolean told = c.becomes().contains(becomes.reading().text());
      lines.add(
          "Line "
              + c.site().line()
              + ", column "
              + c.site().column()
              + ": no dial moves the "
              + c.text()
              + " there. With "
              + c.becomes()
              + (becomes.isOnRuler() && !told && unit != rounding.ruler().unit()
                  ? " (" + becomes.text() + ")"
                  : "")
              + (c.fewer() == 1 ? " one measure" : " " + c.fewer() + " measures")
              + " more would lie on marks.");
    }
    return lines;
  }

  /** Whether a length has steps that keep it off the ruler. */
  private boolean isHeld(Dial dial) {
    return dial.step() > 0
        && rounding.turns().stream().anyMatch(t -> t.knob().name().equals(dial.name()))
        && !Measure.of(dial.value() * unit.mm(), rounding.ruler()).isOnRuler();
  }

  private String steps(Dial dial) {
    return "Line "
        + dial.site().line()
        + ": "
        + dial.name()
        + " has steps of "
        + length(dial.step() * unit.mm())
        + ", and none near "
        + length(dial.value() * unit.mm())
        + " lies on a mark. Take the step away to turn it freely.";
  }
}
