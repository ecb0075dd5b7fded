package facetwright.workbench;

import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Lets files be dragged into the window. */
final class Dropping {
  private final House house;

  private Dropping(House house) {
    this.house = house;
  }

  /** Lets a window take files. */
  static void into(House house) {
    Dropping dropping = new Dropping(house);
    house.addEventFilter(DragEvent.DRAG_OVER, dropping::over);
    house.addEventFilter(DragEvent.DRAG_DROPPED, dropping::dropped);
  }

  private void over(DragEvent e) {
    if (e.getDragboard().hasFiles()) {
      e.acceptTransferModes(TransferMode.COPY);
      e.consume();
    }
  }

  private void dropped(DragEvent e) {
    if (e.getDragboard().hasFiles()) {
      house.dropped(e.getDragboard().getFiles());
      e.setDropCompleted(true);
      e.consume();
    }
  }
}
