package facetwright.workbench.card;

import facetwright.script.text.Edit;
import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Typing;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.scene.TraversalDirection;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.fxmisc.richtext.NavigationActions.SelectionPolicy;

/** What each key does on the card. */
final class Keys {
  private final CardText text;
  private final Prompting prompting;
  private final FindBar find;
  private final FaultStrip fault;
  private final NumberDrag numbers;
  private final TextSize size;
  private KeyCode last = KeyCode.UNDEFINED;

  /** Gives the text its keys. */
  static void attach(
      CardText text,
      Prompting prompting,
      FindBar find,
      FaultStrip fault,
      NumberDrag numbers,
      TextSize size) {
    Keys keys = new Keys(text, prompting, find, fault, numbers, size);
    text.area().addEventFilter(KeyEvent.KEY_PRESSED, keys::pressed);
    text.area().addEventFilter(KeyEvent.KEY_TYPED, keys::typed);
  }

  private Keys(
      CardText text,
      Prompting prompting,
      FindBar find,
      FaultStrip fault,
      NumberDrag numbers,
      TextSize size) {
    this.text = text;
    this.prompting = prompting;
    this.find = find;
    this.fault = fault;
    this.numbers = numbers;
    this.size = size;
  }

  private void pressed(KeyEvent e) {
    last = e.getCode();
    boolean plain = !e.isShortcutDown() && !e.isAltDown() && !e.isShiftDown();
    if ((plain && prompting.press(e.getCode())) || edits(e) || goes(e) || tools(e)) {
      e.consume();
    }
  }

  private boolean edits(KeyEvent e) {
    boolean shift = e.isShiftDown();
    boolean alt = e.isAltDown();
    boolean ctrl = e.isShortcutDown();
    switch (e.getCode()) {
      case ENTER -> {
        if (alt) {
          fault.apply();
        } else if (!ctrl) {
          apply(Typing::enter);
        }
        return !ctrl;
      }
      case TAB -> {
        if (alt) {
          return false;
        }
        if (ctrl) {
          text.area()
              .requestFocusTraversal(shift ? TraversalDirection.PREVIOUS : TraversalDirection.NEXT);
        } else if (shift) {
          apply(Typing::outward);
        } else {
          apply(Typing::inward);
        }
      }
      case UP, DOWN -> {
        boolean up = e.getCode() == KeyCode.UP;
        if (ctrl && alt) {
          numbers.turn(up ? 1 : -1, shift);
        } else if (alt) {
          Typing.move(text.text(), text.selected(), up).ifPresent(text::apply);
        } else {
          return false;
        }
      }
      case SLASH, DIVIDE -> {
        if (!ctrl || alt) {
          return false;
        }
        apply(Typing::comment);
      }
      case D -> {
        if (!ctrl || !shift || alt) {
          return false;
        }
        apply(Typing::twice);
      }
      default -> {
        return false;
      }
    }
    return true;
  }

  /** Home and End go to the line's ends, however often it is broken at the card's edge. */
  private boolean goes(KeyEvent e) {
    boolean end = e.getCode() == KeyCode.END;
    if ((!end && e.getCode() != KeyCode.HOME) || e.isShortcutDown() || e.isAltDown()) {
      return false;
    }
    int line = text.area().getCurrentParagraph();
    String words = text.area().getParagraph(line).getText();
    int at = end ? words.length() : Typing.home(words, text.area().getCaretColumn());
    text.area().moveTo(line, at, e.isShiftDown() ? SelectionPolicy.ADJUST : SelectionPolicy.CLEAR);
    text.area().requestFollowCaret();
    return true;
  }

  private void apply(BiFunction<String, Stretch, Edit> change) {
    text.apply(change.apply(text.text(), text.selected()));
  }

  private boolean tools(KeyEvent e) {
    if (e.getCode() == KeyCode.F3) {
      find.go(!e.isShiftDown());
      return true;
    }
    if (e.getCode() == KeyCode.ESCAPE && find.isVisible()) {
      find.close();
      return true;
    }
    boolean shifted = e.isShiftDown() && e.getCode() != KeyCode.SPACE;
    if (!e.isShortcutDown() || e.isAltDown() || shifted) {
      return false;
    }
    switch (e.getCode()) {
      case SPACE -> {
        if (e.isShiftDown()) {
          prompting.hint();
        } else {
          prompting.offer();
        }
      }
      case F -> find.open(false);
      case H -> find.open(true);
      case G, L -> find.openLine();
      case PLUS, EQUALS, ADD -> size.step(1);
      case MINUS, SUBTRACT -> size.step(-1);
      case DIGIT0, NUMPAD0 -> size.usual();
      default -> {
        return false;
      }
    }
    return true;
  }

  private void typed(KeyEvent e) {
    String letters = e.getCharacter();
    if (letters.isEmpty() || letters.charAt(0) < ' ' || letters.charAt(0) == 127) {
      return;
    }
    e.consume();
    if (!Letters.isWritten(e, last, Letters.IS_MAC)) {
      return;
    }
    char letter = letters.charAt(0);
    boolean closes = ")]}".indexOf(letter) >= 0 && text.selected().isEmpty();
    Optional<Edit> closing =
        closes ? Typing.close(text.reading(), text.caret(), letter) : Optional.<Edit>empty();
    if (closing.isPresent()) {
      text.apply(closing.get());
    } else {
      text.area().replaceSelection(letters);
      text.area().requestFollowCaret();
    }
    prompting.typed(letter);
  }
}
