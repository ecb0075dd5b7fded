package facetwright.workbench.lens;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.pick.Picking;
import java.util.OptionalInt;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/** What the mouse does on the lens: turns the form, folds it at its slider, zooms, selects. */
final class LensHand {
  /** Radians a pixel. */
  private static final double TURN = 0.011;

  private static final double WHEEL = 1.0018;

  private final LensView lens;
  private final Desk desk;
  private final Picking picking;
  private double lastX;
  private double lastY;
  private boolean dragged;
  private boolean onWay;

  LensHand(LensView lens, Desk desk, Picking picking) {
    this.lens = lens;
    this.desk = desk;
    this.picking = picking;
  }

  /** Answers the mouse from now on. */
  void take() {
    lens.setOnMousePressed(this::press);
    lens.setOnMouseDragged(this::drag);
    lens.setOnMouseReleased(this::release);
    lens.setOnScroll(this::wheel);
    lens.setOnMouseMoved(this::point);
    lens.setOnMouseExited(_ -> picking.leave());
    lens.setOnContextMenuRequested(this::menu);
  }

  private void press(MouseEvent e) {
    lens.requestFocus();
    lens.stop();
    lastX = e.getX();
    lastY = e.getY();
    dragged = false;
    onWay = lens.way().isAt(e.getX(), e.getY());
    if (onWay) {
      fold(e);
    }
    e.consume();
  }

  private void fold(MouseEvent e) {
    lens.made().set(lens.way().value(e.getX(), e.getY()));
  }

  private void drag(MouseEvent e) {
    if (onWay) {
      fold(e);
    } else {
      dragged |= Math.hypot(e.getX() - lastX, e.getY() - lastY) > 3;
      if (dragged) {
        lens.turn(-TURN * (e.getX() - lastX), TURN * (e.getY() - lastY));
        lastX = e.getX();
        lastY = e.getY();
      }
    }
    e.consume();
  }

  private void release(MouseEvent e) {
    e.consume();
    if (!onWay && !dragged && e.getButton() == MouseButton.PRIMARY) {
      lens.select(e.getX(), e.getY());
    }
  }

  /** Offers to write what the panel under the pointer is called, or by keys the one selected. */
  private void menu(ContextMenuEvent e) {
    e.consume();
    OptionalInt panel =
        !e.isKeyboardTrigger()
            ? lens.panel(e.getX(), e.getY())
            : desk.selection().get() instanceof Selection.OfPanel(int p)
                ? OptionalInt.of(p)
                : OptionalInt.empty();
    if (!dragged && panel.isPresent()) {
      desk.selection().set(new Selection.OfPanel(panel.getAsInt()));
      picking.menu(lens, panel.getAsInt(), e.getScreenX(), e.getScreenY());
    }
  }

  /** Tells what the facet under the pointer is called. */
  private void point(MouseEvent e) {
    OptionalInt panel = lens.panel(e.getX(), e.getY());
    if (panel.isPresent() && desk.design().get() != null) {
      picking.point(panel.getAsInt());
    } else {
      picking.leave();
    }
  }

  private void wheel(ScrollEvent e) {
    lens.nearer(Math.pow(WHEEL, e.getDeltaY()));
    e.consume();
  }
}
