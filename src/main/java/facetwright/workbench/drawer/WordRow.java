package facetwright.workbench.drawer;

import facetwright.measure.Unit;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.look.Tip;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** A dial that chooses: a box to tick for on and off, a list for words. */
final class WordRow extends Row {
  private final CheckBox tick = new CheckBox();
  private final ComboBox<String> words = new ComboBox<>();
  private boolean showing;

  WordRow(Desk desk, Dial dial, Unit unit, Consumer<String> compare) {
    super(desk, dial, unit, compare);
    boolean isSwitch = dial.kind() == Dial.Kind.SWITCH;
    Control control = isSwitch ? tick : words;
    control.setAccessibleText(dial.name());
    control.setTooltip(
        new Tip(
            isSwitch
                ? "Turn " + dial.name() + " on or off (Space)"
                : "Choose one for " + dial.name() + " (Up and Down)"));
    name.setLabelFor(control);
    words.setMinWidth(USE_PREF_SIZE);
    tick.setMinWidth(USE_PREF_SIZE);
    tick.selectedProperty().addListener((_, _, on) -> chosen(on ? 1 : 0));
    words
        .getSelectionModel()
        .selectedIndexProperty()
        .addListener((_, _, at) -> chosen(at.intValue()));
    HBox top = new HBox(4, name, all);
    Region between = new Region();
    HBox.setHgrow(between, Priority.ALWAYS);
    HBox below = new HBox(6, (Node) control, between, back);
    top.setAlignment(Pos.CENTER_LEFT);
    below.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(top, below);
    show(dial, unit);
  }

  @Override
  void shown() {
    showing = true;
    int at = (int) DialText.wanted(dial(), desk.settings().get(), unit());
    List<String> all = dial().words();
    if (!words.getItems().equals(all)) {
      words.getItems().setAll(all);
    }
    words.getSelectionModel().select(at);
    tick.setSelected(at == 1);
    tick.setText(all.get(at));
    showing = false;
  }

  private void chosen(int at) {
    if (!showing && at >= 0) {
      desk.turn(dial().name(), dial().words().get(at));
    }
  }
}
