package facetwright.adjust.round;

import facetwright.adjust.DialChange;
import facetwright.adjust.Effect;
import facetwright.adjust.OnMarks;
import facetwright.adjust.Remark;
import facetwright.check.Summary;
import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.AsSet;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.ToSet;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.words.Sentence;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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

  /** Every dial that is a length, and where it goes. */
  public List<DialChange> dials() {
    return rounding.turns().stream().map(this::dial).toList();
  }

  private DialChange dial(Rounding.Turn turn) {
    Length was = Length.of(turn.knob().now(), unit);
    Length is = Length.of(turn.value(), unit);
    String now = reads(was, unit.isInFractions() ? Ruler.SIXTY_FOURTHS : rounding.ruler());
    if (!turn.isTurned()) {
      return new DialChange(turn.knob().name(), now, DialChange.STAYS, "");
    }
    String by = new Length(is.mm() - was.mm()).text(unit);
    return new DialChange(
        turn.knob().name(), now, reads(is, rounding.ruler()), by.startsWith("-") ? by : "+" + by);
  }

  private Telling tell() {
    return Telling.english(unit, rounding.ruler());
  }

  private String reads(Length length, Ruler ruler) {
    Measure m = Measure.of(length.mm(), ruler);
    return m.isOnRuler() ? m.reading().text() : length.text(unit);
  }

  /** How many measures lay between marks, and how many do now. */
  public String count() {
    return OnMarks.text(
        rounding.before().toSet(), rounding.after().toSet(), rounding.ruler(), rounding.isTurned());
  }

  /** Why no dial is turned although measures lie between marks, and what to do; else empty. */
  public Optional<String> unturned() {
    if (rounding.isTurned() || rounding.after().isOnRuler()) {
      return Optional.empty();
    }
    List<Dial> dials = rounding.before().design().dials();
    if (rounding.turns().isEmpty()) {
      String why = dials.isEmpty() ? "It has no dials to turn." : "None of its dials is a length.";
      return Optional.of(why + " Make lengths of the script dials, and they can be turned.");
    }
    String most = rounding.marks() == 1 ? "one mark" : rounding.marks() + " marks";
    return Optional.of(
        "No turn of its dials by "
            + most
            + " at most puts more measures on marks. Allow more marks, or take a finer ruler.");
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
    Design after = rounding.after().design();
    List<String> lines =
        new ArrayList<>(Effect.words(rounding.before().design(), after, rounding.isTurned()));
    lines.add(Summary.fits(after.laid()));
    return lines;
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
    if (off.size() == 1) {
      lines.add(off.getFirst().offText(tell()) + ".");
    } else {
      String named =
          off.stream()
              .limit(MOST_NAMED)
              .map(m -> m.offBrief(tell()))
              .collect(Collectors.joining(", "));
      lines.add((off.size() > MOST_NAMED ? "The farthest off: " : "Off the marks: ") + named + ".");
    }
    boolean board = after.chart().pieces().stream().allMatch(PieceChart::isForBoard);
    if (board) {
      lines.add(
          AsSet.text(
              after.design().laid(), after.design().folded(), Rounding.asSet(after), tell()));
    } else {
      lines.add(
          "Set by this ruler, a side comes out up to "
              + new Length(after.toSet().mostOff()).text(unit)
              + " longer or shorter than the one it meets. Prick corners through the template"
              + " where that is too much.");
    }
    return lines;
  }

  /** What in the script keeps measures between marks. */
  public List<Remark> constants() {
    List<Remark> lines = new ArrayList<>();
    if (!rounding.after().isOnRuler()) {
      rounding.after().design().dials().stream()
          .filter(this::isHeld)
          .forEach(d -> lines.add(new Remark(steps(d), d.site())));
    }
    rounding.constants().forEach(c -> lines.add(new Remark(constant(c), c.site())));
    if (!rounding.after().isOnRuler() && !rounding.files().isEmpty()) {
      lines.add(
          new Remark(
              "Numbers in "
                  + Sentence.listed(rounding.files())
                  + " stay as they are: a measure that comes from there is changed there.",
              Site.NONE));
    }
    return lines;
  }

  private String constant(Constant c) {
    Measure becomes = Measure.of(c.mm(), Rounding.halves(rounding.ruler()));
    boolean told = c.becomes().contains(becomes.reading().text());
    boolean isForeign = becomes.isOnRuler() && !told && unit != rounding.ruler().unit();
    return "Line "
        + c.site().line()
        + ", column "
        + c.site().column()
        + ": no dial moves the "
        + c.text()
        + " there. With "
        + c.becomes()
        + (isForeign ? " (" + becomes.text(tell()) + ")" : "")
        + (c.fewer() == 1 ? " one measure" : " " + c.fewer() + " measures")
        + " more would lie on marks.";
  }

  /** Whether a length has steps that keep it off the ruler. */
  private boolean isHeld(Dial dial) {
    return dial.step() > 0
        && rounding.turns().stream().anyMatch(t -> t.knob().name().equals(dial.name()))
        && !Measure.of(Length.of(dial.value(), unit).mm(), rounding.ruler()).isOnRuler();
  }

  private String steps(Dial dial) {
    return "Line "
        + dial.site().line()
        + ": "
        + dial.name()
        + " has steps of "
        + Length.of(dial.step(), unit).text(unit)
        + ", and none near "
        + Length.of(dial.value(), unit).text(unit)
        + " lies on a mark. Take the step away to turn it freely.";
  }
}
