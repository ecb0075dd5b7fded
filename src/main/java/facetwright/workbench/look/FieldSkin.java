package facetwright.workbench.look;

import javafx.scene.control.TextField;
import javafx.scene.control.skin.TextFieldSkin;

/**
 * How fields look: as the toolkit's, but only where the keys go does the caret blink. The toolkit's
 * own lets it blink, unseen, in each field whose text was ever set, and draws frames for it.
 */
public final class FieldSkin extends TextFieldSkin {
  public FieldSkin(TextField field) {
    super(field);
  }

  @Override
  public void setCaretAnimating(boolean on) {
    super.setCaretAnimating(on && getSkinnable().isFocused());
  }
}
