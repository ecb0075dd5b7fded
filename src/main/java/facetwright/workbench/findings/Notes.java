package facetwright.workbench.findings;

import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;

/**
 * What the list of findings lies in: as high as they are, up to a part of what it stands in; then
 * it scrolls.
 */
public final class Notes extends ScrollPane {
  private static final double EDGE = 2;
  private static final double PART = 0.15;

  private final FindingsList findings;

  public Notes(FindingsList findings) {
    super(findings);
    this.findings = findings;
    setFitToWidth(true);
    setMinHeight(USE_PREF_SIZE);
    getStyleClass().add("notes");
    managedProperty().bind(findings.managedProperty());
    visibleProperty().bind(findings.visibleProperty());
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double whole = findings.prefHeight(width < 0 ? getWidth() : width) + EDGE;
    double room = getParent() == null ? 0 : getParent().getLayoutBounds().getHeight() * PART;
    return Math.min(whole, Math.max(room, findings.first()));
  }
}
