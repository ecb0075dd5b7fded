package facetwright.net.wrap;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.net.Ask;
import facetwright.net.Backing;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.Shapes;
import facetwright.net.draft.PanelDraft;
import facetwright.net.fitting.Lettered;
import facetwright.net.panel.PairedFlap;
import facetwright.net.panel.TuckFlap;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/** Chosen cells of a wrap, and what can be done with them. Each call returns the selection. */
public final class CellSelection {
  private static final double STEEPEST_BEVEL = 75;
  private static final double OF_PANEL = -1;

  private final WrapDraft wrap;
  private final List<WrapCell> cells;

  CellSelection(WrapDraft wrap, List<WrapCell> cells) {
    this.wrap = wrap;
    this.cells = List.copyOf(cells);
  }

  List<WrapCell> cells() {
    return cells;
  }

  /** Of these cells, those in columns "even", "odd" or "all". Column 1 is odd. */
  public CellSelection columns(String which, Site at) {
    IntPredicate test = wrap.columnTest(which, at);
    return narrowed(c -> test.test(c.column), at);
  }

  /** Of these cells, those in these columns, counted from 1. */
  public CellSelection columns(List<Integer> numbers, Site at) {
    numbers.forEach(n -> Ask.count("a column's number", n, 1, wrap.columnCount(), at));
    return narrowed(c -> numbers.contains(c.column + 1), at);
  }

  /** Of these cells, those in rows with this name, or "all". */
  public CellSelection rows(String name, Site at) {
    IntPredicate test = wrap.rowTest(name, at);
    return narrowed(c -> test.test(c.row), at);
  }

  /** Of these cells, those in these rows, counted from 1 at the bottom. */
  public CellSelection rows(List<Integer> numbers, Site at) {
    numbers.forEach(n -> Ask.count("a row's number", n, 1, wrap.rows.size(), at));
    return narrowed(c -> numbers.contains(c.row + 1), at);
  }

  private CellSelection narrowed(Predicate<WrapCell> test, Site at) {
    List<WrapCell> kept = cells.stream().filter(test).toList();
    Ask.that(!kept.isEmpty(), "no cell of the wrap is in both selections", at);
    return new CellSelection(wrap, kept);
  }

  /** Cuts the cells away. */
  public CellSelection remove(Site at) {
    CellsAgain.noteRemoved(wrap, cells, at);
    for (WrapCell c : cells) {
      c.removedSite = c.removed ? c.removedSite : at;
      c.removed = true;
    }
    Ask.that(
        wrap.all().cells.stream().anyMatch(c -> !c.removed),
        "this removes the whole wrap: choose some of its columns or rows, and leave others",
        at);
    return this;
  }

  /**
   * Pinches the free edge of each cell: two diagonal scores run from its corners at the waist to
   * the middle of the free edge, whose halves meet. The middle triangle stays a facet, the two
   * right triangles become gussets. Where card goes on beyond that edge, it is folded in half
   * between its neighbours: a fin.
   *
   * @param edge TOP or BOTTOM; null for the free one
   */
  public CellSelection gusset(Pinch pinch, CellSide edge, Site at) {
    List<WrapCell> kept = kept("pinched", at);
    CellsAgain.note(wrap, "gusset", kept, c -> c.gusset == null ? null : c.gussetSite, s -> s, at);
    for (WrapCell c : kept) {
      Ask.that(c.tab == null, named(c) + " is a tab and can't be pinched", at);
      c.gusset = pinch;
      c.gussetEdge = edge;
      c.gussetSite = at;
    }
    return this;
  }

  /** Makes the cells tabs with the usual bevel, so that they keep clear of each other. */
  public CellSelection tabs(Site at) {
    return makeTabs(OF_PANEL, at);
  }

  /**
   * Makes the cells tabs, each end cut back.
   *
   * @param bevel degrees from square, 0 to 75
   */
  public CellSelection tabs(double bevel, Site at) {
    return makeTabs(Ask.angle("a tab's bevel", bevel, 0, STEEPEST_BEVEL, at), at);
  }

  private CellSelection makeTabs(double bevel, Site at) {
    List<WrapCell> kept = kept("a tab", at);
    CellsAgain.note(wrap, "tabs", kept, c -> c.tab, WrapCell.Tab::site, at);
    for (WrapCell c : kept) {
      Ask.that(c.gusset == null, named(c) + " is pinched and can't be a tab", at);
      double width = wrap.grid().least(c.row, c.column);
      double height = wrap.grid().height(c.row, c.column);
      double back = height * Math.tan(Math.toRadians(bevel));
      double most = Math.toDegrees(Math.atan(width / 2 / height));
      Ask.that(
          2 * back <= width + LengthTolerance.FINE.mm(),
          "a bevel of "
              + Ask.text(bevel)
              + "° leaves no tab: "
              + named(c)
              + " allows at most "
              + Ask.text(RoundOff.floor(most))
              + "°",
          at);
      c.tab = new WrapCell.Tab(bevel, at);
    }
    return this;
  }

  /** Cuts a window that leaves a border all round each cell, or round a pinched cell's facet. */
  public CellSelection window(double border, Site at) {
    Ask.length("a window's border", border, at);
    for (WrapCell c : kept("given a window", at)) {
      double least = wrap.grid().size(c.row, c.column);
      Ask.that(2 * border < least, () -> Shapes.noWindow(border, named(c), least / 2), at);
      c.cutouts.add(new WrapCell.Cutout.Border(border, at));
    }
    return this;
  }

  /** Cuts a window along an outline, measured from the middle of each cell. */
  public CellSelection window(Polygon2 outline, Site at) {
    kept("given a window", at).forEach(c -> c.cutouts.add(new WrapCell.Cutout.Shape(outline, at)));
    return this;
  }

  /** Punches a hole in the middle of each panel. */
  public CellSelection hole(double diameter, Site at) {
    return hole(diameter, null, at);
  }

  /**
   * Punches a hole.
   *
   * @param place measured from the middle of each cell; null for the middle of the panel
   */
  public CellSelection hole(double diameter, Vec2 place, Site at) {
    Ask.length("a hole's diameter", diameter, at);
    for (WrapCell c : kept("punched", at)) {
      double least = wrap.grid().size(c.row, c.column);
      Ask.that(diameter < least, () -> Shapes.noHole(diameter, named(c), least), at);
      c.cutouts.add(new WrapCell.Cutout.Punch(diameter, place, at));
    }
    return this;
  }

  /** Puts paper or film behind the windows of those cells that have some. */
  public CellSelection backing(Backing with) {
    List<WrapCell> seen = kept("given a backing", with.site());
    Ask.that(
        seen.stream().anyMatch(WrapCell::hasWindow),
        () ->
            Message.of(
                "%s has no window to put a backing behind: cut one first", named(seen.getFirst())),
        with.site());
    List<WrapCell> backed = seen.stream().filter(WrapCell::hasWindow).toList();
    CellsAgain.note(wrap, "backing", backed, c -> c.backing, Backing::site, with.site());
    backed.forEach(c -> c.backing = with);
    return this;
  }

  /** Writes on each facet. */
  public CellSelection label(Lettered words) {
    kept("given a label", words.site()).forEach(c -> c.labels.add(words));
    return this;
  }

  /** Glues a decorative paper on each facet, smaller by the reveal all round. */
  public CellSelection layer(double reveal, String paper, Site at) {
    Ask.between("a reveal", reveal, 0, Ask.LONGEST, at);
    List<WrapCell> kept = kept("given a layer", at);
    CellsAgain.note(wrap, "layer", kept, c -> c.layer, PanelDraft.LayerDraft::site, at);
    for (WrapCell c : kept) {
      c.layer = new PanelDraft.LayerDraft(reveal, paper, at);
    }
    return this;
  }

  /**
   * Sets the fold of the scores on one side of each cell. The right side of the last column is the
   * seam flap's score.
   *
   * @param sense null to leave it as it is
   */
  public CellSelection fold(CellSide side, FoldAngle angle, Sense sense, Site at) {
    new CellFolds(wrap, cells).set(side, new WrapDraft.Fold(angle, sense, at));
    return this;
  }

  /**
   * Sets the fold of the row scores between the chosen cells and the rows next to them, such as
   * those between rim and wall.
   */
  public CellSelection fold(FoldAngle angle, Sense sense, Site at) {
    new CellFolds(wrap, cells).set(new WrapDraft.Fold(angle, sense, at));
    return this;
  }

  /**
   * Says that each cell lies flat under one of others when made, the first under the first.
   *
   * @param over as many
   */
  public CellSelection lap(CellSelection over, Site at) {
    Ask.that(over.wrap == wrap, "both have to be cells of one wrap", at);
    Ask.that(
        cells.size() == over.cells.size(),
        cells.size()
            + " cells can't lie under "
            + over.cells.size()
            + ": choose as many as they lie under",
        at);
    for (int i = 0; i < cells.size(); i++) {
      WrapCell mine = cells.get(i);
      WrapCell its = over.cells.get(i);
      Ask.that(mine != its, named(mine) + " can't lie under itself", at);
      wrap.laps.add(new WrapDraft.CellLap(mine, its, at));
    }
    return this;
  }

  /**
   * Hangs a flap on the free edge of each cell that is tucked in behind one of others, the first
   * behind the first.
   *
   * @param into as many
   * @param edge TOP or BOTTOM; null for the free one
   */
  public CellSelection tuck(CellSelection into, CellSide edge, TuckFlap flap, Site at) {
    CellFlap.check(wrap == into.wrap, cells, into.cells, "tucked in behind", at);
    for (int i = 0; i < cells.size(); i++) {
      wrap.flaps.add(new CellFlap.Tuck(cells.get(i), into.cells.get(i), edge, flap, at));
    }
    return this;
  }

  /** Gives the free edge of each cell and that of another, which it meets, a hook each. */
  public CellSelection hook(CellSelection others, CellSide edge, PairedFlap flap, Site at) {
    CellFlap.check(wrap == others.wrap, cells, others.cells, "hooked to", at);
    for (int i = 0; i < cells.size(); i++) {
      wrap.flaps.add(new CellFlap.Hook(cells.get(i), others.cells.get(i), edge, flap, at));
    }
    return this;
  }

  private List<WrapCell> kept(String what, Site at) {
    List<WrapCell> kept = new ArrayList<>(cells);
    kept.removeIf(c -> c.removed);
    Ask.that(!kept.isEmpty(), "the chosen cells are cut away and can't be " + what, at);
    return kept;
  }

  private String named(WrapCell c) {
    return wrap.name(c.row, c.column);
  }
}
