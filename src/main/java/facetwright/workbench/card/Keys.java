package facetwright.workbench.card;

import facetwright.script.text.Edit;
import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Typing;
import facetwright.workbench.key.Key;
import facetwright.workbench.key.Where;
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
    Key key = Key.of(Where.SCRIPT, e).orElse(null);
    if (prompting.press(e) || writes(key, e) || goes(key, e) || asks(e)) {
      e.consume();
    }
  }

  /** What changes the text. */
  private boolean writes(Key key, KeyEvent e) {
    switch (key) {
      case MEND -> fault.apply();
      case NEW_LINE -> apply(Typing::enter);
      case INDENT -> apply(key.sense(e) > 0 ? Typing::inward : Typing::outward);
      case TURN_NUMBER -> numbers.turn(key.sense(e), e.isShiftDown());
      case MOVE_LINES ->
          Typing.move(text.text(), text.selected(), key.sense(e) < 0).ifPresent(text::apply);
      case TWICE -> apply(Typing::twice);
      case null, default -> {
        if (!Key.COMMENT.is(e)) {
          return false;
        }
        apply(Typing::comment);
      }
    }
    return true;
  }

  /** What goes through the text, or changes how it is seen. */
  private boolean goes(Key key, KeyEvent e) {
    switch (key) {
      case LINE_ENDS -> toEnd(key.sense(e) < 0, e.isShiftDown());
      case LEAVE ->
          text.area()
              .requestFocusTraversal(
                  key.sense(e) > 0 ? TraversalDirection.NEXT : TraversalDirection.PREVIOUS);
      case FIND_ON -> find.go(key.sense(e) > 0);
      case OFFER -> prompting.offer();
      case HINT -> prompting.hint();
      case SCRIPT_LARGER -> size.step(1);
      case SCRIPT_SMALLER -> size.step(-1);
      case SCRIPT_USUAL -> size.usual();
      case null, default -> {
        return false;
      }
    }
    return true;
  }

  /** What the find bar does; the menu does it from elsewhere. */
  private boolean asks(KeyEvent e) {
    if (Key.AWAY.is(e) && find.isVisible()) {
      find.close();
    } else if (Key.FIND.is(e)) {
      find.open(false);
    } else if (Key.REPLACE.is(e)) {
      find.open(true);
    } else if (Key.LINE.is(e)) {
      find.openLine();
    } else {
      return false;
    }
    return true;
  }

  /** The line's ends are where they are, however often it is broken at the card's edge. */
  private void toEnd(boolean end, boolean selecting) {
    int line = text.area().getCurrentParagraph();
    String words = text.area().getParagraph(line).getText();
    int at = end ? words.length() : Typing.home(words, text.area().getCaretColumn());
    text.area().moveTo(line, at, selecting ? SelectionPolicy.ADJUST : SelectionPolicy.CLEAR);
    text.area().requestFollowCaret();
  }

  private void apply(BiFunction<String, Stretch, Edit> change) {
    text.apply(change.apply(text.text(), text.selected()));
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
