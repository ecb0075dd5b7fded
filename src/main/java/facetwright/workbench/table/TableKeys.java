package facetwright.workbench.table;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.script.design.Design;
import facetwright.words.Site;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.key.Key;
import facetwright.workbench.key.Where;
import javafx.scene.input.KeyEvent;

/**
 * What keys do on the table: move the sheet, walk its panels and scores, and measure from corner to
 * corner.
 */
final class TableKeys {
  private static final double STEP = 60;

  /** A corner nearer than this is the same one. */
  private static final LengthTolerance SAME = LengthTolerance.FINE;

  private final TableView table;
  private final Desk desk;
  private Runnable toScript = () -> {};

  TableKeys(TableView table, Desk desk) {
    this.table = table;
    this.desk = desk;
  }

  /** Who goes on in the script. */
  void onScript(Runnable going) {
    toScript = going;
  }

  void pressed(KeyEvent e) {
    Key key = Key.of(Where.TABLE, e).orElse(null);
    boolean done =
        switch (key) {
          case TABLE_MOVE -> arrow(Key.across(e), Key.down(e));
          case TABLE_PANEL -> walk(key.sense(e), false);
          case TABLE_SCORE -> walk(key.sense(e), true);
          case TABLE_GO -> enter();
          case TABLE_LET_GO -> letGo();
          case TABLE_NEARER -> nearer(1.25);
          case TABLE_FARTHER -> nearer(0.8);
          case TABLE_WHOLE -> whole();
          case null, default -> false;
        };
    if (done) {
      e.consume();
    }
  }

  private boolean nearer(double factor) {
    table.zoom(factor);
    return true;
  }

  private boolean whole() {
    table.fit();
    return true;
  }

  /** Moves the sheet; while one measures, goes to the next corner that way. */
  private boolean arrow(int x, int down) {
    Design design = desk.design().get();
    if (design == null || !table.measures().get()) {
      table.move(-STEP * x, -STEP * down);
      return true;
    }
    Steps steps = new Steps(design.net());
    Vec2 now = table.measurer().corner();
    table.stand(
        now == null
            ? steps.nearest(table.middle())
            : steps.corner(now, new Vec2(table.look().get().inside() ? -x : x, -down), SAME.mm()));
    return true;
  }

  private boolean walk(int by, boolean scores) {
    Design design = desk.design().get();
    if (design == null) {
      return false;
    }
    Steps steps = new Steps(design.net());
    Selection now = desk.selection().get();
    Selection next = scores ? steps.score(now, by) : steps.panel(now, by);
    desk.selection().set(next);
    table.bring(steps.middle(next));
    table.tell(table.about(Steps.spot(next)));
    return true;
  }

  /** Takes the corner one measures from or to; else goes to the line of what is selected. */
  private boolean enter() {
    Design design = desk.design().get();
    if (design == null) {
      return false;
    }
    if (table.measures().get()) {
      Vec2 corner = table.measurer().corner();
      if (corner == null) {
        return arrow(0, 0);
      }
      table.choose(corner);
      return true;
    }
    Site site = desk.selection().get().site(design.net());
    if (!site.isKnown()) {
      return false;
    }
    desk.pointTo(site);
    toScript.run();
    return true;
  }

  private boolean letGo() {
    boolean some = table.measures().get() || !(desk.selection().get() instanceof Selection.Nothing);
    table.measures().set(false);
    desk.selection().set(Selection.nothing());
    return some;
  }
}
