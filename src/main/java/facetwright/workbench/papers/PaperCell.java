package facetwright.workbench.papers;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;

/** A paper in the list of papers: its name, and what it is good for. */
final class PaperCell extends ListCell<Paper> {
  /** What edges and scroll bar take beside the words, in pixels. */
  private static final double BESIDE = 72;

  @Override
  protected void updateItem(Paper paper, boolean empty) {
    super.updateItem(paper, empty);
    if (empty || paper == null) {
      setGraphic(null);
      return;
    }
    Label name = new Label(paper.name());
    name.getStyleClass().add("dial-name");
    Label what = new Label(paper.what());
    what.setWrapText(true);
    what.getStyleClass().add("quiet");
    VBox both = new VBox(1, name, what);
    both.prefWidthProperty().bind(getListView().widthProperty().subtract(BESIDE));
    setGraphic(both);
  }
}
