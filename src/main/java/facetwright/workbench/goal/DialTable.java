package facetwright.workbench.goal;

import facetwright.adjust.DialChange;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;

/** Dials and where they go, a row each. */
final class DialTable extends GridPane {
  DialTable(List<DialChange> dials) {
    getStyleClass().add("turned");
    setHgap(14);
    setVgap(2);
    setMinWidth(USE_PREF_SIZE);
    addRow(0, quiet("dial"), quiet("now"), quiet("becomes"), quiet(""));
    for (DialChange dial : dials) {
      Label name = new Label(dial.name());
      Label becomes = new Label(dial.becomes());
      if (!dial.becomes().equals(DialChange.STAYS)) {
        name.getStyleClass().add("dial-name");
        becomes.getStyleClass().add("dial-name");
      }
      addRow(getRowCount(), name, new Label(dial.now()), becomes, quiet(dial.change()));
    }
  }

  private static Label quiet(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("quiet");
    return label;
  }
}
