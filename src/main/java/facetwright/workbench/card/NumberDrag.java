package facetwright.workbench.card;

import facetwright.script.text.Edit;
import facetwright.workbench.card.text.Stepping;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.fxmisc.richtext.CodeArea;

/** Numbers turned in place: by dragging with Alt held, or by keys. */
final class NumberDrag {
  private static final PseudoClass TURNING = PseudoClass.getPseudoClass("turning");

  /** How far the pointer goes for one step, px. */
  private static final double PIXELS = 6;

  private final CardText text;
  private CardText.Turning turning;
  private Stepping number;
  private double from;

  NumberDrag(CardText text) {
    this.text = text;
    CodeArea area = text.area();
    area.addEventFilter(MouseEvent.MOUSE_PRESSED, this::press);
    area.addEventFilter(MouseEvent.MOUSE_DRAGGED, this::drag);
    area.addEventFilter(MouseEvent.MOUSE_RELEASED, this::release);
    area.addEventFilter(MouseEvent.DRAG_DETECTED, this::keep);
    area.addEventFilter(MouseEvent.MOUSE_CLICKED, this::keep);
    area.addEventFilter(
        MouseEvent.MOUSE_MOVED, e -> shape(e.isAltDown() && at(e.getX(), e.getY()).isPresent()));
    area.addEventFilter(
        KeyEvent.KEY_RELEASED,
        e -> {
          if (e.getCode() == KeyCode.ALT && turning == null) {
            shape(false);
          }
        });
  }

  private void shape(boolean on) {
    text.area().pseudoClassStateChanged(TURNING, on);
  }

  private Optional<Stepping> at(double x, double y) {
    var index = text.area().hit(x, y).getCharacterIndex();
    return index.isPresent() ? Stepping.at(text.scope().get(), index.getAsInt()) : Optional.empty();
  }

  private void press(MouseEvent e) {
    if (e.isAltDown() && e.getButton() == MouseButton.PRIMARY) {
      at(e.getX(), e.getY())
          .ifPresent(
              n -> {
                number = n;
                turning = text.turn(n.at());
                from = e.getX();
                shape(true);
                text.area().requestFocus();
                e.consume();
              });
    }
  }

  private void drag(MouseEvent e) {
    if (turning != null) {
      turning.show(number.turned(Math.round((e.getX() - from) / PIXELS), e.isShiftDown()));
      e.consume();
    }
  }

  private void release(MouseEvent e) {
    if (turning != null) {
      turning.end();
      turning = null;
      shape(e.isAltDown());
      e.consume();
    }
  }

  private void keep(MouseEvent e) {
    if (turning != null || e.isAltDown()) {
      e.consume();
    }
  }

  /** Turns the number at the caret by steps; does nothing where none stands. */
  void turn(int steps, boolean fine) {
    Stepping.at(text.scope().get(), text.caret())
        .ifPresent(
            n -> {
              String turned = n.turned(steps, fine);
              int caret = n.at().start() + turned.length();
              text.apply(new Edit(n.at().start(), n.at().end(), turned, caret, caret));
            });
  }
}
