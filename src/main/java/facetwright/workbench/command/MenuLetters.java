package facetwright.workbench.command;

import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Menu;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;

/**
 * The letters that open a menu: with Alt held, in whatever order both are let go, or after Alt or
 * F10 was pressed and let go, when letters belong to the menus until one is opened or Esc is
 * pressed.
 */
final class MenuLetters {
  private final CommandBar bar;

  /** Whether Alt is down and no other key was since. */
  private boolean alone;

  /** The key that was pressed last. */
  private KeyCode last = KeyCode.UNDEFINED;

  /** Whether letters belong to the menus. */
  private boolean chosen;

  /** Whether what the key pressed last types is not to be written. */
  private boolean swallowed;

  private MenuLetters(CommandBar bar) {
    this.bar = bar;
  }

  /** Takes the keys of the bar's window before the bar itself does. */
  static void of(CommandBar bar) {
    MenuLetters letters = new MenuLetters(bar);
    bar.sceneProperty()
        .addListener(
            (_, _, scene) -> {
              if (scene != null) {
                scene.addEventFilter(KeyEvent.ANY, letters::key);
                scene.addEventFilter(MouseEvent.MOUSE_PRESSED, _ -> letters.chosen = false);
              }
            });
  }

  private void key(KeyEvent e) {
    if (e.getEventType() == KeyEvent.KEY_PRESSED) {
      pressed(e);
    } else if (e.getEventType() == KeyEvent.KEY_TYPED) {
      if (swallowed) {
        e.consume();
      }
    } else if (e.getCode() == KeyCode.ALT) {
      released(e);
    } else if (chosen && !e.getCode().equals(last)) {
      // Some systems swallow the press of a letter that is let go after Alt.
      menu(e.getCode()).ifPresent(this::open);
    }
  }

  private void pressed(KeyEvent e) {
    KeyCode code = e.getCode();
    alone = code == KeyCode.ALT;
    last = code;
    swallowed = false;
    if (alone) {
      return;
    }
    boolean held = e.isAltDown() || e.isShortcutDown();
    boolean alt = e.isAltDown() && !e.isShortcutDown() && !e.isShiftDown() && !e.isMetaDown();
    if (alt && menu(code).isPresent()) {
      take(e);
    } else if (code == KeyCode.F10 && !held && !e.isShiftDown()) {
      chosen = !chosen;
    } else if (code == KeyCode.ESCAPE || held) {
      chosen = false;
    } else if (chosen && (code.isLetterKey() || code.isDigitKey())) {
      take(e);
    }
  }

  private void take(KeyEvent e) {
    swallowed = true;
    e.consume();
    menu(e.getCode()).ifPresent(this::open);
  }

  /** The bar would take Alt for pressed alone, and put away the menu that the letter has opened. */
  private void released(KeyEvent e) {
    if (alone) {
      chosen = !chosen;
    } else {
      e.consume();
    }
    alone = false;
  }

  private Optional<Menu> menu(KeyCode letter) {
    String begins = "_" + letter.getChar().toUpperCase(Locale.ROOT);
    return bar.getMenus().stream().filter(m -> m.getText().startsWith(begins)).findFirst();
  }

  private void open(Menu menu) {
    chosen = false;
    menu.show();
  }
}
