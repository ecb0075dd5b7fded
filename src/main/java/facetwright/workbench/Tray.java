package facetwright.workbench;

import facetwright.workbench.focus.Reach;
import facetwright.workbench.key.Key;
import java.util.function.DoubleSupplier;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;

/**
 * What lies under the table: as high as it needs to be, up to a part of what it stands in; then it
 * scrolls, and the net keeps its room. What has the focus is scrolled into sight; Page Up and Page
 * Down scroll what has no focus to be given.
 */
final class Tray extends ScrollPane {
  private static final double EDGE = 2;

  /** So much stays in sight from one page to the next. */
  private static final double PAGE = 0.8;

  private final Region content;
  private final DoubleSupplier part;
  private final DoubleSupplier least;

  /**
   * @param part of the height of what it stands in that it takes at most
   * @param least how high it may be at any rate, in pixels
   */
  Tray(Region content, DoubleSupplier part, DoubleSupplier least) {
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
    sceneProperty()
        .flatMap(Scene::focusOwnerProperty)
        .addListener((_, _, owner) -> Platform.runLater(() -> show(owner)));
    // What it holds grows and shrinks under the focus.
    content.heightProperty().addListener((_, _, _) -> Platform.runLater(this::showOwner));
    addEventHandler(KeyEvent.KEY_PRESSED, this::page);
  }

  private void showOwner() {
    show(getScene() == null ? null : getScene().getFocusOwner());
  }

  /** Scrolls no further than it takes to see a node of it whole, or its top. */
  @SuppressWarnings("ReferenceEquality") // A node is no other.
  private void show(Node node) {
    double hidden = content.getHeight() - getViewportBounds().getHeight();
    if (node == null || hidden <= 0 || !Reach.isIn(node, content) || node == content) {
      return;
    }
    Bounds at = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
    double top = getVvalue() * hidden;
    double least = at.getMaxY() + EDGE - getViewportBounds().getHeight();
    scroll(Math.min(Math.max(top, least), at.getMinY() - EDGE), hidden);
  }

  private void scroll(double top, double hidden) {
    setVvalue(Math.clamp(top / hidden, 0, 1));
  }

  private void page(KeyEvent e) {
    double high = getViewportBounds().getHeight();
    double hidden = content.getHeight() - high;
    if (hidden > 0 && Key.TRAY_READ.is(e)) {
      scroll(getVvalue() * hidden + PAGE * Key.TRAY_READ.sense(e) * high, hidden);
      e.consume();
    }
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double whole = content.prefHeight(width < 0 ? getWidth() : width) + EDGE;
    double room =
        getParent() == null ? 0 : getParent().getLayoutBounds().getHeight() * part.getAsDouble();
    return Math.ceil(Math.min(whole, Math.max(room, least.getAsDouble())));
  }
}
