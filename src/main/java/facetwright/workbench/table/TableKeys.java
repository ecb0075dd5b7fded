package facetwright.workbench.table;

import facetwright.geom.Vec2;
import facetwright.script.design.Design;
import facetwright.words.Site;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * What keys do on the table: move the sheet, walk its panels and scores, and measure from corner to
 * corner.
 */
final class TableKeys {
  private static final double STEP = 60;

  /** A corner nearer than this, in mm, is the same one. */
  private static final double SAME = 1e-6;

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
    if (e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    boolean done =
        switch (e.getCode()) {
          case LEFT, RIGHT, UP, DOWN -> arrow(e.getCode());
          case PAGE_DOWN -> walk(1, e.isShiftDown());
          case PAGE_UP -> walk(-1, e.isShiftDown());
          case ENTER -> enter();
          case ESCAPE -> letGo();
          case PLUS, ADD, EQUALS -> nearer(1.25);
          case MINUS, SUBTRACT -> nearer(0.8);
          case HOME, DIGIT0, F -> whole();
          default -> false;
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
  private boolean arrow(KeyCode key) {
    int x = key == KeyCode.LEFT ? -1 : key == KeyCode.RIGHT ? 1 : 0;
    int y = key == KeyCode.DOWN ? -1 : key == KeyCode.UP ? 1 : 0;
    Design design = desk.design().get();
    if (design == null || !table.measures().get()) {
      table.move(-STEP * x, STEP * y);
      return true;
    }
    Steps steps = new Steps(design.net());
    Vec2 now = table.measurer().corner();
    table.stand(
        now == null
            ? steps.nearest(table.middle())
            : steps.corner(now, new Vec2(table.look().get().inside() ? -x : x, y), SAME));
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
    table.tell(Told.about(design.net(), Steps.spot(next), design.unit()));
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
        return arrow(KeyCode.UNDEFINED);
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
