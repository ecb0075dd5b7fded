package facetwright.workbench.goal;

import facetwright.aim.Grid;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.ComboBox;

/** The ruler at hand: of the design's unit unless another is chosen, and then that one. */
final class RulerBox {
  private final ComboBox<String> box;
  private Unit unit = Unit.MM;

  RulerBox(ComboBox<String> box) {
    this.box = box;
    box.getEditor().setPrefColumnCount(5);
    of(Unit.MM);
  }

  /** Lets the rulers of a design's unit stand first; the usual one is chosen where none was. */
  void of(Unit design) {
    if (box.getItems().isEmpty() || design != unit) {
      List<Ruler> all = new ArrayList<>(Ruler.common(design));
      all.addAll(Ruler.common(design.counterpart()));
      boolean isUsual = box.getItems().isEmpty() || text().equals(usual(unit));
      String before = text();
      unit = design;
      box.getItems().setAll(all.stream().map(Ruler::name).toList());
      put(isUsual ? usual(design) : before);
    }
  }

  private static String usual(Unit unit) {
    return Ruler.usual(unit).name();
  }

  private void put(String text) {
    box.setValue(text);
    box.getEditor().setText(text);
  }

  private String text() {
    return box.getEditor().getText().strip();
  }

  /**
   * As it is chosen or typed.
   *
   * @throws IllegalArgumentException when it is none, without a full stop
   */
  Ruler ruler() {
    return Ruler.parse(text(), unit);
  }

  /**
   * The lines dials are set by.
   *
   * @throws IllegalArgumentException as above
   */
  Grid grid() {
    return text().equals(usual(unit)) ? Grid.usual(unit) : Grid.read(text(), unit);
  }
}
