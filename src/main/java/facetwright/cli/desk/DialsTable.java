package facetwright.cli.desk;

import facetwright.aim.Grid;
import facetwright.aim.Knob;
import facetwright.aim.Measure;
import facetwright.aim.Slope;
import facetwright.aim.Slopes;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
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
    if (slopes.all().isEmpty()) {
      lines.add(design.title() + " has no dials.");
      return lines;
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

  private static List<String> now(Slopes slopes, Unit unit) {
    List<String> row = new ArrayList<>(List.of("as it is", "", "", ""));
    for (Measure m : SHOWN) {
      row.add(slopes.now().knows(m) ? m.number(slopes.now().get(m), unit) : UNKNOWN);
    }
    return row;
  }

  private static List<String> row(Slopes.OfKnob of, Unit unit) {
    Knob knob = of.knob();
    Grid grid = Grid.usual(unit);
    double mark = grid.apart(knob, unit);
    List<String> row =
        new ArrayList<>(
            List.of(
                knob.name(),
                grid.typed(knob, unit, knob.now()),
                grid.typed(knob, unit, knob.from()) + " to " + grid.typed(knob, unit, knob.to()),
                grid.typed(knob, unit, mark)));
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

  private static String signed(String number) {
    return number.equals("0") || number.startsWith("-") ? number : "+" + number;
  }
}
