package facetwright.workbench;

import facetwright.workbench.Places.Place;
import facetwright.workbench.focus.OwnUndo;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/**
 * Undo and redo, wherever the focus is: what is being typed into a field comes first, then what was
 * done to script and dials, the latest first.
 */
final class Undoing {
  static final String UNDO = "Shortcut+Z";
  static final String REDO = "Shortcut+Shift+Z";

  private static final KeyCombination BACK = KeyCombination.valueOf(UNDO);
  private static final KeyCombination AGAIN = KeyCombination.valueOf(REDO);

  /** What other programs have for it. */
  private static final KeyCombination AGAIN_TOO = KeyCombination.valueOf("Shortcut+Y");

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
    if (BACK.match(e)) {
      undo();
    } else if (AGAIN.match(e) || AGAIN_TOO.match(e)) {
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
