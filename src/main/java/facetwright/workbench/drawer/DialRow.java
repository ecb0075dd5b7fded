package facetwright.workbench.drawer;

import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A dial that counts: a slider over its range, and its value to type. */
final class DialRow extends Row {
  private final Slider slider = new Slider();
  private final ValueField field = new ValueField();
  private final Label least = new Label();
  private final Label most = new Label();
  private boolean showing;
  private boolean isHeld;

  DialRow(Desk desk, Dial dial, Unit unit, Consumer<String> compare) {
    super(desk, dial, unit, compare);
    name.setLabelFor(field);
    field.setPrefColumnCount(5);
    field.setAccessibleText("Value of " + dial.name());
    field.setTooltip(
        new Tip(
            Key.DIAL_TAKE.tip("Type a value of " + dial.name())
                + "; Up and Down turn it by a step"));
    slider.setAccessibleText(dial.name());
    slider.setTooltip(
        new Tip("Turn " + dial.name() + " (arrows); " + Key.UNDO.text() + " turns it back"));
    Label counts = new Label(dial.sign(unit));
    counts.getStyleClass().add("quiet");
    HBox top = new HBox(4, name, all, field, counts);
    top.setAlignment(Pos.CENTER_LEFT);
    least.getStyleClass().add("quiet");
    most.getStyleClass().add("quiet");
    least.setMinWidth(USE_PREF_SIZE);
    most.setMinWidth(USE_PREF_SIZE);
    HBox.setHgrow(slider, Priority.ALWAYS);
    // Its place is kept, so that nothing moves when the dial is turned.
    HBox below = new HBox(6, least, slider, most, back);
    below.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(top, below);
    slider.valueProperty().addListener((_, _, v) -> slid(v.doubleValue()));
    slider.valueChangingProperty().addListener((_, _, changing) -> desk.hold(changing));
    field.setOnAction(_ -> typed());
    field.focusedProperty().addListener((_, _, focused) -> left(focused));
    slider.focusedProperty().addListener((_, _, focused) -> held(focused && isHeld));
    field.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    // The slider takes its keys itself.
    slider.addEventFilter(KeyEvent.KEY_PRESSED, e -> held(Key.SLIDE.is(e)));
    for (Node part : List.of(field, slider)) {
      part.addEventFilter(KeyEvent.KEY_RELEASED, _ -> held(false));
    }
    show(dial, unit);
  }

  @Override
  void shown() {
    Dial now = dial();
    Unit in = unit();
    showing = true;
    slider.setMin(now.from());
    slider.setMax(now.to());
    slider.setBlockIncrement(DialText.step(now, in));
    if (!slider.isValueChanging()) {
      slider.setValue(wanted());
    }
    least.setText(DialText.text(now, now.from(), in));
    most.setText(DialText.text(now, now.to(), in));
    field.show(DialText.standing(now, desk.settings().get(), in));
    showing = false;
  }

  /** What the dial is turned to; its design may come later. */
  private double wanted() {
    return DialText.wanted(dial(), desk.settings().get(), unit());
  }

  private void slid(double value) {
    if (showing) {
      return;
    }
    double near = DialText.snapped(dial(), value, unit());
    if (Math.abs(near - wanted()) > RoundOff.PART) {
      field.putBack();
      desk.turn(dial().name(), DialText.text(dial(), near, unit()));
    }
  }

  /** While a key is held, the dial is turned in one step. */
  private void held(boolean on) {
    if (on != isHeld) {
      isHeld = on;
      desk.hold(on);
    }
  }

  private void pressed(KeyEvent e) {
    if (Key.DIAL_LEAVE.is(e) && field.takeBack()) {
      e.consume();
    } else if (Key.DIAL_TURN.is(e)) {
      held(true);
      slid(wanted() + Key.DIAL_TURN.sense(e) * DialText.step(dial(), unit()));
      e.consume();
    }
  }

  private void left(boolean focused) {
    if (!focused) {
      held(false);
      typed();
    }
  }

  /** Takes what was typed; the field then says it as dials say it. */
  private void typed() {
    String text = field.getText().strip();
    if (field.isTyped() && !text.isEmpty()) {
      desk.turn(dial().name(), text);
    }
    field.putBack();
  }
}
