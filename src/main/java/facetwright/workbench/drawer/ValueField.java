package facetwright.workbench.drawer;

import facetwright.workbench.focus.OwnUndo;
import javafx.scene.control.TextField;

/** A field that shows a value, and what is typed in its place until it is taken. */
final class ValueField extends TextField implements OwnUndo {
  private String value = "";

  /** Shows a value; what is being typed stays. */
  void show(String now) {
    boolean isTyped = isTyped();
    value = now;
    if (!isTyped) {
      setText(now);
    }
  }

  /** Whether something else than the value is typed here. */
  boolean isTyped() {
    return !getText().equals(value);
  }

  /** Puts the value back where something else was typed. */
  void putBack() {
    setText(value);
    end();
  }

  @Override
  public boolean takeBack() {
    if (!isTyped()) {
      return false;
    }
    putBack();
    return true;
  }
}
