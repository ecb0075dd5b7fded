package facetwright.workbench.card;

import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** Notes that lie over the text, each beside the place it is about. */
final class Layer extends Pane {
  private static final double GAP = 4;
  private static final double EDGE = 8;

  /** So far a note's shadow reaches, in pixels. */
  private static final double SHADOW = 16;

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
   * wanted. It is as wide as its style lets it be at most, and where it finds less height than it
   * needs, what is too much is cut off.
   */
  void show(Region note, Bounds place, boolean above) {
    double width = measured(note);
    Bounds at = here(place);
    double height = note.prefHeight(width);
    boolean up = above ? over(at) >= Math.min(height, below(at)) : isAbove(at, height);
    double tall = Math.min(height, up ? over(at) : below(at));
    double x = Math.clamp(at.getMinX(), EDGE, Math.max(EDGE, getWidth() - width - EDGE));
    note.setClip(
        tall < height
            ? new Rectangle(-SHADOW, -SHADOW, width + 2 * SHADOW, Math.max(0, tall) + SHADOW)
            : null);
    note.resizeRelocate(x, up ? at.getMinY() - GAP - tall : at.getMaxY() + GAP, width, tall);
  }

  /** Whether a note finds the height it needs below a place of the screen or above it. */
  boolean hasRoom(Region note, Bounds place) {
    Bounds at = here(place);
    return note.prefHeight(measured(note)) <= Math.max(over(at), below(at));
  }

  /** How wide a note is to be; what was written into it just now, as it will be lettered. */
  private double measured(Region note) {
    add(note);
    note.applyCss();
    return Math.min(Math.min(note.maxWidth(-1), note.prefWidth(-1)), getWidth() - 2 * EDGE);
  }

  private Bounds here(Bounds place) {
    Bounds found = screenToLocal(place);
    return found == null ? new BoundingBox(EDGE, EDGE, 1, 1) : found;
  }

  private double below(Bounds at) {
    return getHeight() - at.getMaxY() - GAP - EDGE;
  }

  private static double over(Bounds at) {
    return at.getMinY() - GAP - EDGE;
  }

  private boolean isAbove(Bounds at, double height) {
    return height > below(at) && over(at) > below(at);
  }

  void hide(Region note) {
    getChildren().remove(note);
  }

  boolean shows(Region note) {
    return getChildren().contains(note);
  }
}
