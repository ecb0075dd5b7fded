package facetwright.workbench;

import facetwright.workbench.card.ScriptCard;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.drawer.DialDrawer;
import facetwright.workbench.findings.FindingsList;
import facetwright.workbench.lens.LensView;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import facetwright.workbench.table.TableLook;
import facetwright.workbench.table.TableView;
import java.util.concurrent.Executor;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The place where one works: table and lens, drawer, findings and script. */
public final class Room extends BorderPane {
  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  private final TableView table;
  private final LensView lens;
  private final ScriptCard card;
  private final DialDrawer drawer;
  private final BooleanProperty dark = new SimpleBooleanProperty();

  /**
   * @param aside runs work beside the window
   * @param ui runs work on the window's thread
   */
  public Room(Desk desk, Executor aside, Executor ui) {
    Pen.Type.ready();
    getStylesheets().add(Room.class.getResource("room.css").toExternalForm());
    getStyleClass().add("room");
    table = new TableView(desk);
    lens = new LensView(desk, aside, ui);
    card = new ScriptCard(desk);
    drawer = new DialDrawer(desk);
    FindingsList findings = new FindingsList(desk);
    dark.addListener(
        (_, _, on) -> {
          pseudoClassStateChanged(DARK, on);
          table.shade().set(Shade.of(on));
          lens.shade().set(Shade.of(on));
        });
    setTop(new VerdictBar(desk));
    LensCorner corner = new LensCorner(table, lens);
    corner.swapped().addListener((_, _, _) -> table.requestLayout());
    Node top = corner;
    ScrollPane notes = new ScrollPane(findings);
    notes.setFitToWidth(true);
    notes.getStyleClass().add("notes");
    notes.managedProperty().bind(findings.managedProperty());
    notes.visibleProperty().bind(findings.visibleProperty());
    notes.setMaxHeight(150);
    VBox left = new VBox(strip(), top, told(), drawer, notes);
    VBox.setVgrow(top, Priority.ALWAYS);
    SplitPane split = new SplitPane(left, card);
    split.setOrientation(Orientation.HORIZONTAL);
    split.setDividerPositions(0.66);
    SplitPane.setResizableWithParent(card, false);
    setCenter(split);
  }

  private Node told() {
    Label told = new Label();
    told.getStyleClass().add("told");
    told.setMaxWidth(Double.MAX_VALUE);
    told.textProperty().bind(table.told());
    return told;
  }

  /** What shows on the table. */
  private Node strip() {
    CheckBox layers = new CheckBox("Layers");
    CheckBox names = new CheckBox("Names");
    CheckBox glue = new CheckBox("Glue");
    ToggleButton inside = new ToggleButton("Inside up");
    ToggleButton measure = new ToggleButton("Measure");
    layers.setSelected(true);
    names.setSelected(true);
    glue.setSelected(true);
    inside.setTooltip(new Tooltip("Turn the sheet over: the inside of the card lies up"));
    measure.setTooltip(new Tooltip("Measure between two points; Esc ends it"));
    Runnable look =
        () -> {
          table
              .look()
              .set(
                  new TableLook(
                      inside.isSelected(),
                      layers.isSelected(),
                      names.isSelected(),
                      glue.isSelected()));
          lens.layers().set(layers.isSelected());
        };
    for (CheckBox box : new CheckBox[] {layers, names, glue}) {
      box.selectedProperty().addListener((_, _, _) -> look.run());
    }
    inside.selectedProperty().addListener((_, _, _) -> look.run());
    measure
        .selectedProperty()
        .addListener(
            (_, _, on) -> {
              table.measures().set(on);
              table.requestFocus();
            });
    table.measures().addListener((_, _, on) -> measure.setSelected(on));
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox strip = new HBox(10, inside, measure, space, layers, names, glue);
    strip.getStyleClass().add("strip");
    strip.setAlignment(Pos.CENTER_LEFT);
    return strip;
  }

  /** Whether the room is dark. */
  public BooleanProperty dark() {
    return dark;
  }

  public TableView table() {
    return table;
  }

  public LensView lens() {
    return lens;
  }

  public ScriptCard card() {
    return card;
  }

  public DialDrawer drawer() {
    return drawer;
  }
}
