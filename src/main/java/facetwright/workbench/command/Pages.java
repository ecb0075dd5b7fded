package facetwright.workbench.command;

import facetwright.workbench.focus.Reach;
import facetwright.workbench.focus.WayBack;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** Lays one page over the window: help that one reads and puts away with Esc. */
public final class Pages extends StackPane {
  private static final double MARGIN = 40;

  /** A line of what is read, with the room below it. */
  private static final double LINE = 24;

  /** What the page's own edge takes. */
  private static final double EDGE = 24;

  private static final PseudoClass WIDE = PseudoClass.getPseudoClass("wide");

  private final BorderPane page = new BorderPane();
  private final Runnable otherwise;
  private final WayBack back = new WayBack();

  /**
   * @param otherwise gives the focus a place, where it cannot go back to where it was
   */
  public Pages(Runnable otherwise) {
    this.otherwise = otherwise;
    getStylesheets().add(Pages.class.getResource("command.css").toExternalForm());
    getStyleClass().add("page-ground");
    page.getStyleClass().add("page");
    getChildren().add(page);
    setVisible(false);
    setOnMousePressed(
        e -> {
          if (e.getTarget() == this) {
            close();
          }
          e.consume();
        });
    addEventFilter(KeyEvent.KEY_PRESSED, Reach.goingRound(this));
    setOnKeyPressed(Key.AWAY.then(this::close));
  }

  /** Shows a page. */
  public void show(String title, Region content) {
    page.pseudoClassStateChanged(WIDE, false);
    put(title, content);
  }

  /** Shows a page that takes all the width there is. */
  public void showWide(String title, Region content) {
    page.pseudoClassStateChanged(WIDE, true);
    put(title, content);
  }

  private void put(String title, Region content) {
    back.remember(this);
    Label name = new Label(title);
    name.getStyleClass().add("page-title");
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    Button close = new Button("Close");
    close.setOnAction(_ -> close());
    close.setTooltip(new Tip(Key.AWAY.tip("Put this page away")));
    HBox top = new HBox(name, space, close);
    top.setAlignment(Pos.CENTER_LEFT);
    top.getStyleClass().add("page-top");
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setAccessibleText(title);
    // So that arrows read on.
    scroll.setFocusTraversable(true);
    scroll.addEventFilter(KeyEvent.KEY_PRESSED, e -> read(scroll, content, e));
    page.setTop(top);
    page.setCenter(scroll);
    page.maxHeightProperty()
        .bind(
            Bindings.min(
                heightProperty().subtract(2 * MARGIN),
                top.heightProperty().add(content.heightProperty()).add(EDGE)));
    setVisible(true);
    toFront();
    scroll.requestFocus();
  }

  /** A page on or back, less a line, so that one finds where one was. */
  private static void read(ScrollPane scroll, Region content, KeyEvent e) {
    double high = scroll.getViewportBounds().getHeight();
    double hidden = content.getHeight() - high;
    if (hidden > 0 && Key.PAGE_READ.is(e)) {
      double by = Math.max(high - LINE, high / 2) * Key.PAGE_READ.sense(e);
      scroll.setVvalue(Math.clamp(scroll.getVvalue() + by / hidden, 0, 1));
      e.consume();
    }
  }

  /** Puts the page away. */
  public void close() {
    if (isVisible()) {
      back.go(this, otherwise);
      setVisible(false);
    }
  }
}
