package facetwright.workbench.card;

import facetwright.net.Net;
import facetwright.script.design.Design;
import facetwright.script.text.Reading;
import facetwright.words.Site;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;

/**
 * The text's side of pointing out: a line the user goes to selects what it made, and what is
 * selected elsewhere shows its line.
 */
final class Linking {
  private static final Set<KeyCode> GOING =
      Set.of(
          KeyCode.UP,
          KeyCode.DOWN,
          KeyCode.PAGE_UP,
          KeyCode.PAGE_DOWN,
          KeyCode.HOME,
          KeyCode.END,
          KeyCode.LEFT,
          KeyCode.RIGHT);

  private final Desk desk;
  private final CardText text;
  private final Painting painting;
  private boolean telling;
  private int told;

  private Linking(Desk desk, CardText text, Painting painting) {
    this.desk = desk;
    this.text = text;
    this.painting = painting;
  }

  /** Links a text with the desk's selection. */
  static void attach(Desk desk, CardText text, Painting painting) {
    new Linking(desk, text, painting).listen();
  }

  private void listen() {
    text.area()
        .addEventFilter(
            KeyEvent.KEY_PRESSED,
            e -> {
              if (GOING.contains(e.getCode()) && !e.isAltDown()) {
                Platform.runLater(this::gone);
              }
            });
    text.area().addEventFilter(MouseEvent.MOUSE_RELEASED, _ -> Platform.runLater(this::gone));
    text.area().textProperty().addListener((_, _, _) -> told = 0);
    desk.selection().addListener((_, _, selection) -> selected(selection));
    desk.pointed().addListener((_, _, site) -> show(site));
  }

  /** The user has gone to a place of the text. */
  private void gone() {
    Design design = desk.design().get();
    int line = text.area().getCurrentParagraph() + 1;
    if (design == null || desk.fault().get() != null || line == told) {
      return;
    }
    told = line;
    Selection selection = made(design.net(), line);
    telling = true;
    desk.selection().set(selection);
    telling = false;
    int shown = selection.site(design.net()).line();
    painting.halo().set(shown > 0 ? line : 0);
  }

  /** What a line made, or the call whose brackets the line lies in. */
  private Selection made(Net net, int line) {
    Selection own = Selection.ofLine(net, line);
    Reading reading = text.reading();
    int at = reading.lineStart(line);
    for (int i = reading.before(at); i >= 0 && own instanceof Selection.Nothing; i--) {
      if (reading.is(i, ';')) {
        break;
      }
      boolean around = reading.partner(i) > i && reading.token(reading.partner(i)).start() >= at;
      if (around && reading.is(i, '(')) {
        own = Selection.ofLine(net, reading.line(reading.token(i).start()));
      }
    }
    return own;
  }

  private void selected(Selection selection) {
    Design design = desk.design().get();
    if (!telling && design != null) {
      show(selection.site(design.net()));
    }
  }

  /** Brings a place into view and the caret to it, without telling anyone. */
  private void show(Site site) {
    if (!site.isKnown()) {
      painting.halo().set(0);
      return;
    }
    text.reading()
        .offset(site.line(), site.column())
        .ifPresent(
            at -> {
              painting.halo().set(site.line());
              told = site.line();
              if (text.area().getCurrentParagraph() != site.line() - 1) {
                text.lead(at);
              }
              bringIntoView(site.line() - 1);
            });
  }

  private void bringIntoView(int paragraph) {
    boolean seen =
        text.area()
            .allParToVisibleParIndex(paragraph)
            .filter(i -> i > 0 && i < text.area().getVisibleParagraphs().size() - 1)
            .isPresent();
    if (!seen) {
      text.area().showParagraphAtCenter(paragraph);
    }
  }
}
