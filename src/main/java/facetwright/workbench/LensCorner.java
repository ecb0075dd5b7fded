package facetwright.workbench;

import facetwright.workbench.command.Commands;
import facetwright.workbench.focus.Parts.Part;
import facetwright.workbench.lens.LensView;
import facetwright.workbench.look.Tip;
import facetwright.workbench.table.TableView;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** Table and lens: the one large, the other small in the corner; they can swap places. */
final class LensCorner extends Region {
  private static final double SMALL = 300;
  private static final double LEAST = 180;
  private static final double OFF = 14;
  private static final double BUTTONS = 34;

  private final TableView table;
  private final LensView lens;
  private final HBox buttons = new HBox(6);
  private final Button play = new Button("Fold");
  private final ToggleButton swap = new ToggleButton("Swap");
  private final BooleanProperty swapped = new SimpleBooleanProperty();

  LensCorner(TableView table, LensView lens) {
    this.table = table;
    this.lens = lens;
    getStyleClass().add("corner");
    play.setOnAction(_ -> lens.play());
    ToggleButton angles = new ToggleButton("Angles");
    angles.setTooltip(
        new Tip("Write the angles at scores and corners on the made form, for teaching"));
    angles.selectedProperty().bindBidirectional(lens.teaching());
    swap.selectedProperty().bindBidirectional(swapped);
    buttons.getChildren().addAll(play, angles, swap);
    buttons.setAlignment(Pos.CENTER);
    getChildren().addAll(table, lens, buttons);
    swapped.addListener(
        (_, _, now) -> {
          lens.round().set(!now);
          (now ? table : lens).toFront();
          buttons.toFront();
          table.fit();
          requestLayout();
        });
    lens.setOnMouseClicked(
        e -> {
          if (e.getClickCount() == 2) {
            swapped.set(!swapped.get());
          }
        });
  }

  /** Lets the buttons tell what they do, and their keys. */
  void explain(Commands commands) {
    commands.explain(play, "play");
    commands.explain(swap, "swap");
  }

  /** The folded form with its buttons. */
  Part form() {
    return Part.of(lens, buttons);
  }

  /** Whether the folded form is the large one. */
  BooleanProperty swapped() {
    return swapped;
  }

  @Override
  protected void layoutChildren() {
    double high = Math.max(BUTTONS, Math.rint(buttons.prefHeight(-1)) + 4);
    double room = Math.max(0, Math.min(getWidth(), getHeight() - high));
    double small = Math.rint(Math.min(Math.clamp(room * 0.55, LEAST, SMALL), room - OFF));
    double x = Math.rint(getWidth() - small - OFF);
    double y = Math.rint(getHeight() - small - OFF - high);
    Region large = swapped.get() ? lens : table;
    Region little = swapped.get() ? table : lens;
    large.resizeRelocate(0, 0, getWidth(), getHeight());
    little.resizeRelocate(x, y, small, small);
    double wide = Math.rint(buttons.prefWidth(-1));
    double left = Math.min(x + (small - wide) / 2, getWidth() - wide - OFF);
    buttons.resizeRelocate(Math.rint(Math.max(0, left)), y + small + 3, wide, high);
    lens.kept().set(getWidth() - Math.min(x, buttons.getLayoutX()));
    table.kept().set(swapped.get() ? 0 : small + OFF);
  }
}
