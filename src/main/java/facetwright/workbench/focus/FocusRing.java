package facetwright.workbench.focus;

import javafx.scene.layout.Region;

/** A frame round something painted, that shows while it has the focus. */
public final class FocusRing extends Region {
  /**
   * @param of what it lies in, as a child, over all that is painted there
   */
  public FocusRing(Region of) {
    this(of, of);
  }

  /**
   * @param of whose focus it shows
   * @param in what it lies in, as a child
   */
  public FocusRing(Region of, Region in) {
    getStyleClass().add("focus-ring");
    setManaged(false);
    setMouseTransparent(true);
    visibleProperty().bind(of.focusedProperty());
    in.layoutBoundsProperty()
        .addListener((_, _, now) -> resizeRelocate(0, 0, now.getWidth(), now.getHeight()));
  }
}
