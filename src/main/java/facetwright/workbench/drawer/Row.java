package facetwright.workbench.drawer;

import facetwright.measure.Unit;
import facetwright.script.design.Dial;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.look.Tip;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/** One dial: its name, a way to see it over its range, and a way back to the script's value. */
abstract sealed class Row extends VBox permits DialRow, WordRow {
  final Desk desk;
  final Label name = new Label();
  final Button all = new Button("Compare");
  final Button back = new Button();
  private Dial dial;
  private Unit unit;

  /**
   * @param compare shows the dial of this name over its range
   */
  Row(Desk desk, Dial dial, Unit unit, Consumer<String> compare) {
    this.desk = desk;
    this.dial = dial;
    this.unit = unit;
    getStyleClass().add("dial");
    name.setText(dial.name());
    name.getStyleClass().add("dial-name");
    name.setTooltip(new Tip("The dial " + dial.name()));
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    SVGPath arrow = new SVGPath();
    arrow.setContent("M3 2 V7 H8 M3.4 6.6 A6 6 0 1 1 3 11");
    arrow.getStyleClass().add("sign");
    back.setGraphic(arrow);
    back.setAccessibleText("Reset " + dial.name());
    back.getStyleClass().addAll("plain", "round");
    back.setTooltip(new Tip("Back to the value in the script"));
    back.setOnAction(_ -> desk.release(this.dial.name()));
    all.setAccessibleText("Compare " + dial.name());
    all.getStyleClass().add("plain");
    all.setTooltip(new Tip("See " + dial.name() + " over its range, and pick a value"));
    all.setMinWidth(USE_PREF_SIZE);
    all.setOnAction(_ -> compare.accept(this.dial.name()));
  }

  static Row of(Desk desk, Dial dial, Unit unit, Consumer<String> compare) {
    return dial.isWord()
        ? new WordRow(desk, dial, unit, compare)
        : new DialRow(desk, dial, unit, compare);
  }

  /** Whether this row can show a dial: its name and what it counts stand in it for good. */
  final boolean isOf(Dial other, Unit otherUnit) {
    return otherUnit == unit && other.name().equals(dial.name()) && other.kind() == dial.kind();
  }

  final void show(Dial now, Unit in) {
    dial = now;
    unit = in;
    back.setVisible(desk.settings().get().containsKey(now.name()));
    shown();
  }

  /** The dial has come anew. */
  abstract void shown();

  final Dial dial() {
    return dial;
  }

  final Unit unit() {
    return unit;
  }
}
