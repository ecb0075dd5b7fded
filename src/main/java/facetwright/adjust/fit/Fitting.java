package facetwright.adjust.fit;

import facetwright.aim.Goal;
import facetwright.aim.Grid;
import facetwright.aim.Lie;
import facetwright.aim.Measured;
import facetwright.aim.Outcome;
import facetwright.geom.Box2;
import facetwright.geom.RoundOff;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.Stock;
import facetwright.papers.copies.CopyPlan;
import facetwright.script.Packing;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A design made as large as lets so many of it lie on one sheet, its dials on the ruler's marks.
 *
 * @param sheet the sheet to lie on
 * @param copies how many of it should, at least 1
 * @param outcome what the dials are turned to
 * @param before how the design lies there as it stands
 * @param design with its dials so, without a look for findings
 * @param after how that lies there
 */
public record Fitting(
    SheetSize sheet, int copies, Outcome outcome, OnSheet before, Design design, OnSheet after) {
  /** More than this nobody cuts from one sheet. */
  public static final int MOST = 100;

  /** A net on the sheet, and as many copies as go there. */
  public record OnSheet(Laid laid, CopyPlan plan) {
    static OnSheet of(Design design, SheetSize sheet) {
      Stock own = design.laid().stock();
      Stock stock = sheet.stock(own.weight(), own.caliper(), own.grain());
      List<Room> rooms = design.laid().rooms();
      if (2 * rooms.getLast().margin() >= Math.min(stock.width(), stock.height())) {
        throw new IllegalArgumentException(
            "the margin of the script's sheet leaves nothing of " + sheet.name());
      }
      Laid laid = SheetLayout.lay(design.net(), stock, rooms);
      return new OnSheet(laid, CopyPlan.of(laid));
    }

    private int count(Room room) {
      return CopyPlan.of(laid.net(), laid.stock(), room).count();
    }

    /** How many whole designs lie on the sheet. */
    public int count() {
      return plan.count();
    }
  }

  /**
   * Solves for the dials.
   *
   * @param turn the dials that may be turned; empty for all lengths, in proportion
   * @param grid the ruler they are set by
   * @throws IllegalArgumentException when the design has no such dial, when the margin of its sheet
   *     leaves nothing of this one, or when the number of copies is out of range; the message says
   *     which, without a full stop
   * @throws ScriptException when the script has to be given up
   */
  public static Fitting of(WhatIf what, SheetSize sheet, int copies, List<String> turn, Grid grid)
      throws ScriptException {
    if (copies < 1 || copies > MOST) {
      throw new IllegalArgumentException(
          "1 to " + MOST + " can be asked for from one sheet, not " + copies);
    }
    OnSheet before = OnSheet.of(what.design(), sheet);
    if (what.design().dials().isEmpty()) {
      Outcome asItIs = asItIs(what.design(), sheet, before, copies);
      return new Fitting(sheet, copies, asItIs, before, what.design(), before);
    }
    // What lies there as it stands need not become smaller to have more room.
    Room room =
        before.laid().rooms().stream()
            .filter(r -> before.count() >= copies && before.count(r) >= copies)
            .findFirst()
            .orElse(before.laid().wanted());
    Packing packing =
        copies == 1
            ? Packing.ONE
            : laid -> copies(laid, what.design().laid().stock().grain(), room) >= copies;
    Outcome outcome = what.fitting(packing).aim(List.of(new Goal.Fit(sheet)), turn, grid);
    Map<String, Double> dials = new LinkedHashMap<>();
    outcome.turns().forEach(t -> dials.put(t.knob().name(), t.value()));
    Design after = what.turned(dials).orElse(what.design());
    return new Fitting(sheet, copies, outcome, before, after, OnSheet.of(after, sheet));
  }

  /** A design without dials lies as it lies. */
  private static Outcome asItIs(Design design, SheetSize sheet, OnSheet before, int copies) {
    boolean fits = before.count() >= copies;
    Box2 box = before.laid().net().box();
    Lie lie = new Lie(fits, box.width(), box.height());
    Measured measured = new Measured(Map.of(), _ -> lie, _ -> Optional.empty());
    Outcome.Status status = fits ? Outcome.Status.MET : Outcome.Status.NO_DIAL;
    List<Outcome.Reached> goals = List.of(new Outcome.Reached(new Goal.Fit(sheet), status));
    return new Outcome(
        design.unit(), List.of(), goals, List.of(), "", measured, measured, 0, false);
  }

  private static int copies(Laid laid, Stock.Grain grain, Room room) {
    Stock s = laid.stock();
    Stock stock = new Stock(s.name(), s.width(), s.height(), s.weight(), s.caliper(), grain);
    return CopyPlan.of(laid.net(), stock, room).count();
  }

  /** The turned dials that stand at their greatest, so that the sheet might take a larger one. */
  List<String> atEnd() {
    return outcome.turns().stream()
        .filter(t -> t.value() >= t.knob().last() - RoundOff.PART * t.knob().range())
        .map(t -> t.knob().name())
        .toList();
  }

  /** Whether as many lie on the sheet as should. */
  public boolean isMet() {
    return after.count() >= copies;
  }

  /** How many times as large the finished form is in height, width and depth together. */
  double scale(Design from) {
    double now = sum(design);
    double was = sum(from);
    return was > 0 ? now / was : 1;
  }

  private static double sum(Design d) {
    var m = d.folded().measures();
    return m.height() + m.width() + m.depth();
  }
}
