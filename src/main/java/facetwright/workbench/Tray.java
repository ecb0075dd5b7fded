package facetwright.workbench;

import java.util.function.DoubleSupplier;
import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/**
 * What lies under the table: as high as it needs to be, up to a part of what it stands in; then it
 * scrolls, and the net keeps its room.
 */
final class Tray extends ScrollPane {
  private static final double EDGE = 2;

  private final Region content;
  private final double part;
  private final DoubleSupplier least;

  /**
   * @param part of the height of what it stands in that it takes at most
   * @param least how high it may be at any rate, in pixels
   */
  Tray(Region content, double part, DoubleSupplier least) {
    super(content);
    this.content = content;
    this.part = part;
    this.least = least;
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setMinHeight(USE_PREF_SIZE);
    getStyleClass().add("tray");
    managedProperty().bind(content.managedProperty());
    visibleProperty().bind(content.visibleProperty());
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double whole = content.prefHeight(width < 0 ? getWidth() : width) + EDGE;
    double room = getParent() == null ? 0 : getParent().getLayoutBounds().getHeight() * part;
    return Math.ceil(Math.min(whole, Math.max(room, least.getAsDouble())));
  }
}
