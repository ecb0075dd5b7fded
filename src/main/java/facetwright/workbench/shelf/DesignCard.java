package facetwright.workbench.shelf;

import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import facetwright.workbench.picture.Picture;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One design as a card: picture, title, size, tags, notes, and what can be done with it. */
final class DesignCard extends VBox {
  private static final double WIDE = 232;
  private static final double HIGH = 168;
  private static final double MARGIN = 14;

  private final Entry entry;
  private final Runnable usual;
  private final Canvas canvas = new Canvas(WIDE, HIGH);
  private final Label size = new Label("Drawing it …");

  /**
   * @param open opens the file itself; null for designs of the library
   * @param start starts from a copy
   */
  DesignCard(Entry entry, Runnable open, Runnable start) {
    this.entry = entry;
    this.usual = open == null ? start : open;
    getStyleClass().add("design-card");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(
        entry.title()
            + ". "
            + String.join(", ", entry.header().tags())
            + ". "
            + entry.header().notes());
    Label title = new Label(entry.title());
    title.getStyleClass().add("design-title");
    size.getStyleClass().add("quiet");
    Label tags = new Label(String.join(" · ", entry.header().tags()));
    tags.getStyleClass().addAll("quiet", "tags");
    Label notes = new Label(entry.header().notes());
    notes.setWrapText(true);
    notes.getStyleClass().add("design-notes");
    if (!entry.header().notes().isEmpty()) {
      Tooltip all = new Tip(entry.header().notes());
      all.setWrapText(true);
      all.setMaxWidth(420);
      Tooltip.install(notes, all);
    }
    notes.setMinHeight(0);
    notes.setMaxHeight(Double.MAX_VALUE);
    notes.setAlignment(Pos.TOP_LEFT);
    VBox.setVgrow(notes, Priority.ALWAYS);
    HBox buttons = new HBox(8);
    buttons.setAlignment(Pos.CENTER_LEFT);
    buttons.setMinHeight(Region.USE_PREF_SIZE);
    if (open != null) {
      buttons.getChildren().add(button("Open", "Opens " + entry.file(), open));
    }
    buttons
        .getChildren()
        .add(button("Start from this", "Opens a copy without a file; this one stays", start));
    StackPane glass = new StackPane(canvas);
    glass.getStyleClass().add("design-glass");
    glass.setMinHeight(Region.USE_PREF_SIZE);
    getChildren().addAll(glass, title, size, tags, notes, buttons);
    setOnMouseClicked(
        e -> {
          requestFocus();
          if (e.getClickCount() == 2) {
            usual.run();
          }
        });
    setOnKeyPressed(
        e -> {
          if (e.getTarget() == this && Key.CARD_TAKE.is(e)) {
            usual.run();
            e.consume();
          }
        });
  }

  private static Button button(String name, String tip, Runnable action) {
    Button button = new Button(name);
    button.setTooltip(new Tip(tip));
    button.setOnAction(_ -> action.run());
    button.setMinWidth(Region.USE_PREF_SIZE);
    return button;
  }

  Entry entry() {
    return entry;
  }

  void show(Picture picture) {
    size.setText(picture.size());
    picture.paint(canvas.getGraphicsContext2D(), WIDE, HIGH, MARGIN);
  }
}
