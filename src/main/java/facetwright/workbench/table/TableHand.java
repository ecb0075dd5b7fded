package facetwright.workbench.table;

import facetwright.geom.Vec2;
import facetwright.script.design.Design;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/**
 * What the mouse does on the table: the wheel zooms, dragging moves, pointing tells, a click
 * selects or measures.
 */
final class TableHand {
  /** How near a line or corner the pointer counts as on it, in pixels. */
  private static final double REACH = 6;

  private static final double WHEEL = 1.0018;

  private final TableView table;
  private final Desk desk;
  private Spot under = new Spot.Bare();
  private double lastX;
  private double lastY;
  private boolean dragged;

  TableHand(TableView table, Desk desk) {
    this.table = table;
    this.desk = desk;
    table.setOnScroll(this::wheel);
    table.setOnMousePressed(this::press);
    table.setOnMouseDragged(this::drag);
    table.setOnMouseReleased(this::release);
    table.setOnMouseMoved(this::move);
    table.setOnContextMenuRequested(this::menu);
    table.setOnMouseExited(
        _ -> {
          point(new Spot.Bare(), "");
          table.selected("");
        });
  }

  /** What the pointer is on. */
  Spot under() {
    return under;
  }

  /** What it was on is there no more. */
  void forget() {
    under = new Spot.Bare();
  }

  private double reach() {
    return REACH * table.pixel();
  }

  private void wheel(ScrollEvent e) {
    if (e.getDeltaY() != 0) {
      table.zoom(Math.pow(WHEEL, e.getDeltaY()), e.getX(), e.getY());
    }
    e.consume();
  }

  private void press(MouseEvent e) {
    table.requestFocus();
    lastX = e.getX();
    lastY = e.getY();
    dragged = false;
  }

  private void drag(MouseEvent e) {
    if (!dragged && Math.hypot(e.getX() - lastX, e.getY() - lastY) < 4) {
      return;
    }
    dragged = true;
    table.move(e.getX() - lastX, e.getY() - lastY);
    lastX = e.getX();
    lastY = e.getY();
  }

  private void release(MouseEvent e) {
    Design design = desk.design().get();
    if (dragged || design == null || e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    Vec2 place = table.place(e.getX(), e.getY());
    if (table.measures().get()) {
      table.choose(Measuring.snapped(design.net(), place, reach()));
      return;
    }
    if (e.getClickCount() == 2) {
      table.fit();
      return;
    }
    desk.selection()
        .set(
            switch (Spot.at(design.net(), place, reach())) {
              case Spot.OnPanel(int p) -> new Selection.OfPanel(p);
              case Spot.OnScore(int s) -> new Selection.OfScore(s);
              case Spot.OnCut(var side) -> new Selection.OfPanel(side.panel());
              case Spot.Bare _ -> Selection.nothing();
            });
  }

  /** Offers the words of the panel under the pointer, or by keys of the one selected. */
  private void menu(ContextMenuEvent e) {
    Design design = desk.design().get();
    if (design == null || dragged || table.measures().get()) {
      return;
    }
    Spot spot =
        e.isKeyboardTrigger()
            ? Steps.spot(desk.selection().get())
            : Spot.at(design.net(), table.place(e.getX(), e.getY()), 0);
    if (spot instanceof Spot.OnPanel(int p)) {
      desk.selection().set(new Selection.OfPanel(p));
      table.menu(p, e.getScreenX(), e.getScreenY());
      e.consume();
    }
  }

  private void move(MouseEvent e) {
    Design design = desk.design().get();
    if (design == null) {
      return;
    }
    Vec2 place = table.place(e.getX(), e.getY());
    if (table.measures().get()
        && table.measurer().follow(Measuring.snapped(design.net(), place, reach()))) {
      table.paint();
    }
    Spot spot = Spot.at(design.net(), place, reach());
    String from = SpotText.from(design.laid().sheet(0), place, design.unit());
    String what = table.about(spot);
    point(spot, what.isEmpty() ? from : what + "    " + from);
  }

  private void point(Spot spot, String words) {
    table.tell(words);
    if (!spot.equals(under)) {
      under = spot;
      table.paint();
    }
  }
}
