package facetwright.workbench;

import facetwright.workbench.Places.Place;
import facetwright.workbench.focus.OwnUndo;
import facetwright.workbench.key.Key;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;

/**
 * Undo and redo, wherever the focus is: what is being typed into a field comes first, then what was
 * done to script and dials, the latest first.
 */
final class Undoing {
  private final House house;

  private Undoing(House house) {
    this.house = house;
  }

  /** Takes the keys before any control does. */
  static Undoing in(House house) {
    Undoing undoing = new Undoing(house);
    house.addEventFilter(KeyEvent.KEY_PRESSED, undoing::pressed);
    return undoing;
  }

  private void pressed(KeyEvent e) {
    if (Key.UNDO.is(e)) {
      undo();
    } else if (Key.REDO.is(e)) {
      redo();
    } else {
      return;
    }
    e.consume();
  }

  void undo() {
    switch (house.getScene().getFocusOwner()) {
      case OwnUndo own when own.takeBack() -> {}
      case TextInputControl field when isOwn(field) && field.isUndoable() -> field.undo();
      case null, default -> {
        show();
        house.desk().undo();
      }
    }
  }

  void redo() {
    if (house.getScene().getFocusOwner() instanceof TextInputControl field
        && isOwn(field)
        && field.isRedoable()) {
      field.redo();
    } else {
      show();
      house.desk().redo();
    }
  }

  /** Whether what is typed there is of no design, such as a word to look for. */
  private static boolean isOwn(TextInputControl field) {
    return !(field instanceof OwnUndo);
  }

  /** On the shelf one would not see what changes. */
  private void show() {
    if (house.places().now().get() == Place.SHELF) {
      house.places().now().set(Place.TABLE);
    }
  }
}
