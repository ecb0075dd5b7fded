package facetwright.workbench.card;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.scope.CallSite;
import facetwright.script.text.Reading;
import facetwright.workbench.card.text.Help;
import facetwright.workbench.card.text.Offer;
import facetwright.workbench.card.text.Offers;
import facetwright.workbench.key.Key;
import facetwright.workbench.key.Where;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextFlow;
import org.fxmisc.richtext.event.MouseOverTextEvent;

/** Help where one types: what could be written, what the argument is, what a word means. */
final class Prompting {
  private final CardText text;
  private final TextMarks marks;
  private final Layer layer;
  private final OfferList list;
  private final TextFlow written = new TextFlow();
  private final Label meaning = new Label();
  private final VBox hint = new VBox(written, meaning);
  private final VBox note = new VBox();
  private boolean hinting;

  Prompting(CardText text, TextMarks marks, Layer layer) {
    this.text = text;
    this.marks = marks;
    this.layer = layer;
    this.list = new OfferList(this::take, () -> Platform.runLater(this::placeList));
    hint.getStyleClass().add("hint");
    note.getStyleClass().add("hover-note");
    meaning.setWrapText(true);
    meaning.setMinHeight(Region.USE_PREF_SIZE);
    hint.setMouseTransparent(true);
    note.setMouseTransparent(true);
    text.area().setMouseOverTextDelay(Duration.ofMillis(400));
    text.area().addEventHandler(MouseOverTextEvent.MOUSE_OVER_TEXT_BEGIN, this::hover);
    text.area().addEventHandler(MouseOverTextEvent.MOUSE_OVER_TEXT_END, _ -> layer.hide(note));
    text.area().addEventFilter(MouseEvent.MOUSE_PRESSED, _ -> close());
    layer.heightProperty().addListener((_, _, _) -> resized());
    text.area().caretPositionProperty().addListener((_, _, _) -> Platform.runLater(this::follow));
    text.area()
        .focusedProperty()
        .addListener(
            (_, _, on) -> {
              if (!on) {
                close();
              }
            });
  }

  /** Tests watch by it. */
  OfferList list() {
    return list;
  }

  boolean isOffering() {
    return layer.shows(list);
  }

  boolean isHinting() {
    return layer.shows(hint);
  }

  boolean isNoting() {
    return layer.shows(note);
  }

  /** Offers what could be written at the caret. */
  void offer() {
    Offers offers = text.offers();
    boolean written =
        offers.all().size() == 1
            && offers
                .all()
                .getFirst()
                .word()
                .equals(text.text().substring(offers.typed().start(), offers.typed().end()));
    if (offers.all().isEmpty() || written) {
      layer.hide(list);
      return;
    }
    layer.add(list);
    list.show(offers);
    placeList();
  }

  private void placeList() {
    if (isOffering()) {
      caretBounds().ifPresent(b -> layer.show(list, besideHint(b), false));
    }
  }

  /** The caret's place, and the hint's above it. */
  private Bounds besideHint(Bounds caret) {
    if (!isHinting()) {
      return caret;
    }
    Bounds above = hint.localToScreen(hint.getLayoutBounds());
    double top = Math.min(above.getMinY(), caret.getMinY());
    return new BoundingBox(
        caret.getMinX(), top, caret.getWidth(), Math.max(above.getMaxY(), caret.getMaxY()) - top);
  }

  /** A letter has been typed. */
  void typed(char letter) {
    layer.hide(note);
    Reading reading = text.reading();
    hinting = hinting || "(,{:[".indexOf(letter) >= 0;
    showHint();
    boolean goesOn = isOffering() && (Character.isJavaIdentifierPart(letter) || letter == ' ');
    if (Offers.comeUp(reading, text.caret())
        || (goesOn && list.offers().typed().start() < text.caret())) {
      offer();
    } else {
      layer.hide(list);
    }
  }

  /** Says what the argument at the caret is. */
  void hint() {
    hinting = true;
    showHint();
  }

  private void showHint() {
    Optional<CallSite> call = CallSite.at(text.scope().get(), text.caret());
    if (!hinting || call.isEmpty()) {
      hinting = hinting && call.isPresent();
      layer.hide(hint);
      return;
    }
    Fn<?> fn = call.get().fn();
    Optional<Arg<?>> arg = call.get().arg();
    written.getChildren().setAll(Signature.pieces(fn, arg));
    meaning.setText(
        arg.map(a -> a.does() + ": " + a.kind().wanted() + ".")
            .orElseGet(() -> options(call.get())));
    meaning.setManaged(!meaning.getText().isEmpty());
    caretBounds().ifPresent(b -> layer.show(hint, b, true));
  }

  private String options(CallSite call) {
    List<String> needed =
        call.options().stream()
            .filter(Arg::needed)
            .map(Arg::name)
            .filter(n -> !call.given(text.reading()).contains(n))
            .toList();
    return needed.isEmpty() ? "" : "Still needed: " + String.join(", ", needed) + ".";
  }

  /** What stands under the text has grown or shrunk: the caret stays in sight, its notes by it. */
  private void resized() {
    layer.hide(note);
    boolean seen = text.area().isFocused() && caretBounds().isPresent();
    Platform.runLater(
        () -> {
          if (seen) {
            text.area().requestFollowCaret();
          }
          // The text moves with the next picture.
          Platform.runLater(
              () -> {
                if (isHinting()) {
                  showHint();
                }
                placeList();
              });
        });
  }

  /** The caret has moved. */
  private void follow() {
    if (isOffering()) {
      int start = list.offers().typed().start();
      boolean stays =
          text.caret() >= start
              && text.reading().line(text.caret()) == text.reading().line(start)
              && text.caret() <= text.offers().typed().end()
              && text.offers().typed().start() == start;
      if (!stays) {
        layer.hide(list);
      } else if (text.offers().all().size() != list.offers().all().size()) {
        offer();
      }
    }
    if (isHinting()) {
      showHint();
    }
  }

  /** Writes the chosen offer. */
  void take() {
    take(list.chosen());
  }

  private void take(Offer offer) {
    layer.hide(list);
    Offers now = text.offers();
    text.apply(now.edit(text.reading(), offer, text.caret()));
    if (offer.caret() < offer.written().length()) {
      hint();
    }
  }

  /** Goes on with a key while offers are shown; false for a key that is not for them. */
  boolean press(KeyEvent e) {
    if (isOffering()) {
      Key key = Key.of(Where.OFFERS, e).orElse(null);
      switch (key) {
        case OFFERS_GO -> list.step(key.sense(e));
        case OFFERS_LEAP -> list.step(7 * key.sense(e));
        case OFFERS_TAKE -> take();
        case OFFERS_CLOSE -> layer.hide(list);
        case null, default -> {
          return false;
        }
      }
      return true;
    }
    if (Key.OFFERS_CLOSE.is(e) && (isHinting() || isNoting())) {
      close();
      return true;
    }
    return false;
  }

  private void close() {
    hinting = false;
    layer.hide(list);
    layer.hide(hint);
    layer.hide(note);
  }

  private Optional<Bounds> caretBounds() {
    return text.area().getCaretBounds();
  }

  private void hover(MouseOverTextEvent e) {
    int at = e.getCharacterIndex();
    Optional<TextMark> mark = marks.at(at);
    Optional<Help> help = Help.at(text.scope().get(), at);
    if (isOffering() || (mark.isEmpty() && help.isEmpty())) {
      return;
    }
    double x = e.getScreenPosition().getX();
    double y = e.getScreenPosition().getY();
    Bounds place = new BoundingBox(x, y - 10, 1, 20);
    note.getChildren().clear();
    if (mark.isPresent()) {
      Label words = new Label(mark.get().text());
      words.setWrapText(true);
      words.setMinHeight(Region.USE_PREF_SIZE);
      note.getChildren().add(words);
    } else {
      HelpPane pane = new HelpPane();
      note.getChildren().add(pane);
      // It cannot be scrolled: so much is said as there is room for.
      for (HelpPane.Extent extent : HelpPane.Extent.values()) {
        pane.show(help.get(), extent);
        if (layer.hasRoom(note, place)) {
          break;
        }
      }
    }
    layer.show(note, place, false);
  }
}
