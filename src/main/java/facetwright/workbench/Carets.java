package facetwright.workbench;

import java.time.Duration;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.skin.TextInputControlSkin;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.fxmisc.richtext.GenericStyledArea;

/**
 * Carets blink while one works, and stand, shown, once no key or button was pressed for a while: a
 * caret that blinks keeps the toolkit drawing 120 frames a second for one that changes twice.
 */
final class Carets {
  /** So long after the last key or button a caret blinks at least, and at most twice as long. */
  static final Duration BLINKS = Duration.ofSeconds(6);

  private static final String STANDS = "-rtfx-blink-rate: 0ms;";

  private final Scene scene;
  private final Later later;

  /** Counts keys and buttons, and where the keys were led to. */
  private long stirred;

  private boolean waits;

  private Carets(Scene scene, Later later) {
    this.scene = scene;
    this.later = later;
  }

  /** Sees to the carets of a scene that stands in its window. */
  static void of(Scene scene, Later later) {
    Carets carets = new Carets(scene, later);
    for (var pressed : List.of(KeyEvent.KEY_PRESSED, MouseEvent.MOUSE_PRESSED)) {
      scene.addEventFilter(pressed, _ -> carets.stir());
    }
    scene.focusOwnerProperty().addListener((_, _, _) -> carets.stir());
    scene.getWindow().focusedProperty().addListener((_, _, _) -> carets.stir());
    carets.stir();
  }

  private void stir() {
    stirred++;
    let(scene.getFocusOwner(), true);
    if (!waits) {
      await();
    }
  }

  private void await() {
    waits = true;
    long now = stirred;
    later.after(
        BLINKS,
        () -> {
          waits = false;
          Node owner = scene.getFocusOwner();
          if (now != stirred) {
            await();
          } else if (owner != null && owner.isFocused()) {
            let(owner, false);
          }
        });
  }

  /** Lets the caret of a control blink where it has the focus, or stand. */
  private static void let(Node of, boolean blink) {
    switch (of) {
      case GenericStyledArea<?, ?, ?> area ->
          area.getCaretSelectionBind().getUnderlyingCaret().setStyle(blink ? "" : STANDS);
      case ComboBox<?> box when box.isEditable() -> let(box.getEditor(), blink);
      case Spinner<?> box when box.isEditable() -> let(box.getEditor(), blink);
      case TextInputControl field when field.getSkin() instanceof TextInputControlSkin<?> skin -> {
        skin.setCaretAnimating(blink && field.isFocused());
      }
      case null, default -> {}
    }
  }
}
