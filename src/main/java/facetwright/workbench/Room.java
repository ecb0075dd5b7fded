package facetwright.workbench;

import facetwright.workbench.card.ScriptCard;
import facetwright.workbench.command.Commands;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.drawer.DialDrawer;
import facetwright.workbench.drawer.SettingFlags;
import facetwright.workbench.findings.FindingsList;
import facetwright.workbench.focus.Parts.Part;
import facetwright.workbench.goal.Bar;
import facetwright.workbench.goal.GoalBar;
import facetwright.workbench.lens.LensView;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import facetwright.workbench.pick.Picking;
import facetwright.workbench.sweep.SweepView;
import facetwright.workbench.table.TableLook;
import facetwright.workbench.table.TableView;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The place where one works: table and lens, drawer, findings and script. */
public final class Room extends BorderPane {
  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  private final Desk desk;
  private final Picking picking;
  private final TableView table;
  private final LensView lens;
  private final ScriptCard card;
  private final DialDrawer drawer;
  private final BooleanProperty dark = new SimpleBooleanProperty();
  private final ObjectProperty<Shade> shade = new SimpleObjectProperty<>(Shade.LIGHT);
  private final CheckBox layers = new CheckBox("Layers");
  private final CheckBox names = new CheckBox("Names");
  private final CheckBox glue = new CheckBox("Glue");
  private final ToggleButton inside = new ToggleButton("Inside up");
  private final ToggleButton measure = new ToggleButton("Measure");
  private final SplitPane split = new SplitPane();
  private final CardFold fold;
  private final LensCorner corner;
  private final SettingFlags flags;
  private final StackPane over;
  private final Band band;
  private final FindingsList findings;
  private final Node boxes;
  private SweepView sweep;
  private final List<Bar> bars = new ArrayList<>();

  /**
   * @param aside runs work beside the window
   * @param ui runs work on the window's thread
   */
  public Room(Desk desk, Executor aside, Executor ui) {
    this.desk = desk;
    Pen.Type.ready();
    getStylesheets().add(Room.class.getResource("room.css").toExternalForm());
    getStyleClass().add("room");
    picking = new Picking(desk);
    table = new TableView(desk, picking);
    lens = new LensView(desk, picking, aside, ui);
    card = new ScriptCard(desk);
    drawer = new DialDrawer(desk);
    flags = new SettingFlags(desk);
    findings = new FindingsList(desk);
    dark.addListener(
        (_, _, on) -> {
          pseudoClassStateChanged(DARK, on);
          shade.set(Shade.of(on).lettered(shade.get().type()));
        });
    table.shade().bind(shade);
    lens.shade().bind(shade);
    setTop(new VerdictBar(desk));
    corner = new LensCorner(table, lens);
    corner.swapped().addListener((_, _, _) -> table.requestLayout());
    Node top = corner;
    over = new StackPane(top);
    boxes = stripOfButtons();
    band = new Band(flags, drawer, findings);
    VBox left = new VBox(boxes, over, told(ui), band);
    VBox.setVgrow(over, Priority.ALWAYS);
    split.setOrientation(Orientation.HORIZONTAL);
    split.getItems().setAll(left, card);
    split.setDividerPositions(0.66);
    SplitPane.setResizableWithParent(card, false);
    fold = new CardFold(split, card);
    picking.onWrite(
        word -> {
          fold.away().set(false);
          card.write(word);
        });
    table.onScript(
        () -> {
          fold.away().set(false);
          card.area().requestFocus();
        });
    setCenter(fold);
  }

  /** What is pointed at, and what is being worked on. */
  private Node told(Executor ui) {
    Label told = new Label();
    told.getStyleClass().add("told");
    told.setMaxWidth(Double.MAX_VALUE);
    told.textProperty().bind(table.told());
    HBox.setHgrow(told, Priority.ALWAYS);
    HBox line = new HBox(told, new Underway(desk, Later.on(ui)));
    line.getStyleClass().add("told-line");
    return line;
  }

  /** What shows on the table. */
  private Node stripOfButtons() {
    layers.setSelected(true);
    names.setSelected(true);
    glue.setSelected(true);
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
    FlowPane strip = new FlowPane(10, 4, inside, measure, layers, names, glue);
    strip.getStyleClass().add("strip");
    strip.setAlignment(Pos.CENTER_LEFT);
    strip.setMinHeight(Region.USE_PREF_SIZE);
    return strip;
  }

  /** Writes into the script what the facet that is selected is called there. */
  void writeFacet() {
    if (!picking.write()) {
      table.tell("Select a facet first, on the net or on the folded form: its word is written.");
    }
  }

  /** What has the focus to begin with: the script, or the net when the script is folded away. */
  Node first() {
    return fold.away().get() ? table : card.area();
  }

  /** The parts one leaps to, in the order in which one reads them. */
  Stream<Part> parts() {
    return Stream.of(
            Stream.of(
                Part.of(boxes), Part.of(sweep), Part.of(table), corner.form(), Part.of(flags)),
            bars.stream().map(Part::of),
            Stream.of(
                Part.of(drawer),
                Part.of(band.notes()),
                new Part(card.area(), List.of(card)),
                Part.of(fold.sliver())))
        .flatMap(parts -> parts);
  }

  /** Whether the room is dark. */
  BooleanProperty dark() {
    return dark;
  }

  /** The colours and the lettering of what is painted in the room. */
  ObjectProperty<Shade> shade() {
    return shade;
  }

  /** Lets the controls above the table tell what they do, and their keys. */
  void explain(Commands commands) {
    commands.explain(inside, "inside");
    commands.explain(measure, "measure");
    commands.explain(layers, "layers");
    commands.explain(names, "names");
    commands.explain(glue, "glue");
    corner.explain(commands);
    card.explain(find -> commands.explain(find, "find"));
  }

  /** What shows on the table, and whether clicks there measure. */
  Strip strip() {
    return new Strip(
        inside.selectedProperty(),
        measure.selectedProperty(),
        layers.selectedProperty(),
        names.selectedProperty(),
        glue.selectedProperty());
  }

  /** What can be turned on and off above the table. */
  record Strip(
      BooleanProperty inside,
      BooleanProperty measure,
      BooleanProperty layers,
      BooleanProperty names,
      BooleanProperty glue) {}

  /** Lets the drawer show a dial over its range, in place of the table. */
  void sweepWith(SweepView view) {
    sweep = view;
    over.getChildren().add(sweep);
    // What it lies over is not to be reached.
    corner.visibleProperty().bind(sweep.visibleProperty().not());
    drawer.onCompare(sweep::show);
  }

  /** Puts lines that ask something of the design above the drawer; one shows at a time. */
  void askWith(GoalBar goals, Bar... others) {
    bars.add(goals);
    bars.addAll(List.of(others));
    band.askWith(bars);
    for (Bar bar : bars) {
      bar.onOpening(() -> bars.forEach(Bar::close));
    }
    findings.onMend(goals::open);
    findings.onLast(() -> first().requestFocus());
  }

  /** Where notices show while one is here. */
  VBox notices() {
    return band.notices();
  }

  /** The script's card, and whether it is folded away. */
  CardFold fold() {
    return fold;
  }

  LensCorner corner() {
    return corner;
  }

  TableView table() {
    return table;
  }

  LensView lens() {
    return lens;
  }

  public ScriptCard card() {
    return card;
  }

  public DialDrawer drawer() {
    return drawer;
  }
}
