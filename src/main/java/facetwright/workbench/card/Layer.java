package facetwright.workbench.card;

import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** Notes that lie over the text, each beside the place it is about. */
final class Layer extends Pane {
  private static final double GAP = 4;
  private static final double EDGE = 8;

  Layer() {
    setPickOnBounds(false);
  }

  /** Takes a note in, so that its size can be told. */
  void add(Region note) {
    if (!getChildren().contains(note)) {
      note.setManaged(false);
      getChildren().add(note);
      note.applyCss();
    }
  }

  /**
   * Shows a note below a place of the screen, or above it where there is more room or that is
   * wanted.
   *
   * @param most the widest it may be
   */
  void show(Region note, Bounds place, double most, boolean above) {
    add(note);
    // What was written into it just now is measured as it will be lettered.
    note.applyCss();
    Bounds found = screenToLocal(place);
    Bounds at = found == null ? new BoundingBox(EDGE, EDGE, 1, 1) : found;
    double width = Math.min(Math.min(most, note.prefWidth(-1)), getWidth() - 2 * EDGE);
    double height = note.prefHeight(width);
    double below = getHeight() - at.getMaxY() - GAP - EDGE;
    double over = at.getMinY() - GAP - EDGE;
    boolean up = above ? over >= Math.min(height, below) : height > below && over > below;
    double tall = Math.min(height, up ? over : below);
    double x = Math.clamp(at.getMinX(), EDGE, Math.max(EDGE, getWidth() - width - EDGE));
    note.resizeRelocate(x, up ? at.getMinY() - GAP - tall : at.getMaxY() + GAP, width, tall);
  }

  void hide(Region note) {
    getChildren().remove(note);
  }

  boolean shows(Region note) {
    return getChildren().contains(note);
  }
}
