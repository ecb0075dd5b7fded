package facetwright.cli.desk;

import facetwright.aim.Grid;
import facetwright.aim.Knob;
import facetwright.aim.Measure;
import facetwright.aim.Slope;
import facetwright.aim.Slopes;
import facetwright.measure.Degrees;
import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A design's dials and what one mark of each does, as a table in words. */
public final class DialsTable {
  private static final List<Measure> SHOWN =
      List.of(
          Measure.HEIGHT,
          Measure.WIDTH,
          Measure.DEPTH,
          Measure.GAP,
          Measure.NET_WIDTH,
          Measure.NET_HEIGHT);
  private static final String UNSTEADY = "~";
  private static final String UNKNOWN = "?";

  private DialsTable() {}

  public static List<String> lines(Design design, Slopes slopes) {
    Unit unit = design.unit();
    List<String> lines = new ArrayList<>();
    if (design.dials().isEmpty()) {
      lines.add(design.title() + " has no dials.");
      return lines;
    }
    if (slopes.all().isEmpty()) {
      lines.add(design.title() + " has no dials that count.");
      return words(design, lines);
    }
    lines.add(
        design.title() + ": what turning each dial up does, lengths in " + unit.symbol() + ".");
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("dial", "now", "range", "turned up by"));
    SHOWN.forEach(m -> head.add(m.word()));
    rows.add(head);
    rows.add(now(slopes, unit));
    slopes.all().forEach(s -> rows.add(row(s, unit)));
    lines.addAll(Columns.aligned(rows));
    words(design, lines);
    String all = String.join("\n", lines);
    if (all.contains(UNSTEADY)) {
      lines.add(
          "  "
              + UNSTEADY
              + " not in proportion here: half the turn does not do half as much. Try it.");
    }
    if (all.contains(UNKNOWN)) {
      lines.add(
          "  "
              + UNKNOWN
              + " not known: the fold angles are left open, or the dial can't move there.");
    }
    return lines;
  }

  /** The dials that choose a word, a line each. */
  private static List<String> words(Design design, List<String> lines) {
    design.dials().stream()
        .filter(Dial::isWord)
        .map(
            d ->
                "  "
                    + d.name()
                    + ": "
                    + DialText.text(d, d.value(), design.unit())
                    + ", one of "
                    + String.join(", ", d.words()))
        .forEach(lines::add);
    return lines;
  }

  private static List<String> now(Slopes slopes, Unit unit) {
    List<String> row = new ArrayList<>(List.of("as it is", "", "", ""));
    for (Measure m : SHOWN) {
      row.add(slopes.now().knows(m) ? m.number(slopes.now().get(m), unit) : UNKNOWN);
    }
    return row;
  }

  private static List<String> row(Slopes.OfKnob of, Unit unit) {
    Knob knob = of.knob();
    double mark = Grid.usual(unit).apart(knob, unit);
    List<String> row =
        new ArrayList<>(
            List.of(
                knob.name(),
                shown(knob, unit, knob.now()),
                shown(knob, unit, knob.from()) + " to " + shown(knob, unit, knob.to()),
                shown(knob, unit, mark)));
    for (Measure m : SHOWN) {
      Optional<Slope> slope = of.of(m);
      Optional<Double> effect = of.effect(m, mark);
      row.add(
          slope.isEmpty() || effect.isEmpty()
              ? UNKNOWN
              : (slope.get().isSteady() ? "" : UNSTEADY) + signed(m.number(effect.get(), unit)));
    }
    return row;
  }

  private static String shown(Knob knob, Unit unit, double value) {
    return Grid.usual(unit).typed(knob, unit, value)
        + (knob.counts() == Quantity.ANGLE ? Degrees.SIGN : "");
  }

  private static String signed(String number) {
    return number.equals("0") || number.startsWith("-") ? number : "+" + number;
  }
}
