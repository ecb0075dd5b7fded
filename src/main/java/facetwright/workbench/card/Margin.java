package facetwright.workbench.card;

import facetwright.workbench.look.Tip;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;

/** The margin: line numbers, the findings' pins, the fault's sign. */
final class Margin implements IntFunction<Node> {
  private final CardText text;
  private final TextMarks marks;
  private final Consumer<TextMark> pressed;

  /** What the pins say that were drawn last, by line. */
  private final Map<Integer, String> drawn = new TreeMap<>();

  private final LineNumbers numbers;
  private int digits;
  private boolean waits;

  /**
   * Puts the margin beside a text.
   *
   * @param pressed what pressing a pin does
   */
  static void attach(CardText text, TextMarks marks, Consumer<TextMark> pressed) {
    text.area().setParagraphGraphicFactory(new Margin(text, marks, pressed));
  }

  private Margin(CardText text, TextMarks marks, Consumer<TextMark> pressed) {
    this.text = text;
    this.marks = marks;
    this.pressed = pressed;
    numbers = new LineNumbers(text.area());
    digits = digits();
    marks.all().addListener((_, _, _) -> refresh());
    text.area().textProperty().addListener((_, _, _) -> widen());
  }

  private int digits() {
    return Math.max(2, Integer.toString(text.area().getParagraphs().size()).length());
  }

  private void widen() {
    if (digits() != digits) {
      digits = digits();
      text.area().setParagraphGraphicFactory(null);
      text.area().setParagraphGraphicFactory(this);
    }
  }

  /**
   * Draws anew what has changed, once the text is laid out: to ask what is in view before that
   * would have it laid out twice, and all that waits for the key press would wait for it.
   */
  private void refresh() {
    Scene scene = text.area().getScene();
    if (scene != null && !waits) {
      waits = true;
      scene.addPostLayoutPulseListener(
          new Runnable() {
            @Override
            public void run() {
              waits = false;
              scene.removePostLayoutPulseListener(this);
              redraw();
            }
          });
      Platform.requestNextPulse();
    }
  }

  /** Only what is in view: the rest is drawn when it comes there. */
  private void redraw() {
    List<Integer> now = marks.all().get().stream().map(this::line).distinct().sorted().toList();
    Stream.concat(List.copyOf(drawn.keySet()).stream(), now.stream())
        .distinct()
        .filter(line -> line <= text.area().getParagraphs().size())
        .filter(line -> text.area().allParToVisibleParIndex(line - 1).isPresent())
        .filter(line -> !drawn.getOrDefault(line, "").equals(text(here(line))))
        .forEach(line -> text.area().recreateParagraphGraphic(line - 1));
  }

  private List<TextMark> here(int line) {
    return marks.all().get().stream().filter(m -> line(m) == line).toList();
  }

  private static String text(List<TextMark> here) {
    return String.join("\n", here.stream().map(TextMark::text).toList());
  }

  private int line(TextMark mark) {
    return text.reading().line(mark.at().start());
  }

  @Override
  public Node apply(int paragraph) {
    String words = ("%" + digits + "d").formatted(paragraph + 1);
    List<TextMark> here = here(paragraph + 1);
    drawn.remove(paragraph + 1);
    if (here.isEmpty()) {
      // Most lines have none: one node does for them.
      return numbers.of(paragraph, words);
    }
    Label number = new Label(words);
    number.getStyleClass().add("line-number");
    drawn.put(paragraph + 1, text(here));
    StackPane place = new StackPane(pin(here));
    place.getStyleClass().add("pin-place");
    HBox margin = new HBox(place, number);
    margin.getStyleClass().add("margin");
    margin.setAlignment(Pos.TOP_RIGHT);
    return margin;
  }

  private Node pin(List<TextMark> here) {
    TextMark first = here.getFirst();
    String more = here.size() > 1 ? "+" : "";
    Label pin = new Label(first.isFault() ? "✕" : first.number() + more);
    pin.getStyleClass().addAll("margin-pin", first.style());
    pin.setTextOverrun(OverrunStyle.CLIP);
    if (pin.getText().length() > 2) {
      pin.getStyleClass().add("long");
    }
    String words = text(here);
    Tooltip tip = new Tip(words);
    tip.setWrapText(true);
    tip.setMaxWidth(380);
    pin.setTooltip(tip);
    pin.setAccessibleRole(AccessibleRole.BUTTON);
    pin.setAccessibleText(words);
    pin.setOnMousePressed(
        e -> {
          // It may have moved along since the pin was drawn.
          pressed.accept(
              marks.all().get().stream()
                  .filter(m -> m.number() == first.number())
                  .findFirst()
                  .orElse(first));
          e.consume();
        });
    return pin;
  }
}
