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
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The place where one works: table and lens, drawer, findings and script. */
public final class Room extends BorderPane {
  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  /** So much of the height the dials may take, and the notes, so that the net keeps its room. */
  private static final double DIALS = 0.28;

  /** So much while something is asked of the design, so that the answer can be read. */
  private static final double ASKING = 0.37;

  /** So many pixels stay for the net and all else even then, where there are as many. */
  private static final double REST = 430;

  private static final double NOTES = 0.14;

  /** So much for the first note, so that it can be read whole. */
  private static final double FIRST = 0.18;

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
  private final VBox left;
  private final VBox dials;
  private final FindingsList findings;
  private final Node boxes;
  private final Tray notes;
  private SweepView sweep;
  private final List<Bar> bars = new ArrayList<>();

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
    notes =
        new Tray(
            findings, () -> NOTES, () -> Math.min(findings.first(), left().getHeight() * FIRST));
    over = new StackPane(top);
    boxes = stripOfButtons();
    dials = new VBox(flags, drawer);
    left = new VBox(boxes, over, told(), new Tray(dials, this::forDials, () -> 0), notes);
    VBox.setVgrow(over, Priority.ALWAYS);
    split.setOrientation(Orientation.HORIZONTAL);
    split.getItems().setAll(left, card);
    split.setDividerPositions(0.66);
    SplitPane.setResizableWithParent(card, false);
    fold = new CardFold(split, card);
    table.onScript(
        () -> {
          fold.away().set(false);
          card.area().requestFocus();
        });
    setCenter(fold);
  }

  /** The part of the height that the dials may take. */
  private double forDials() {
    double spare = 1 - REST / Math.max(REST, left.getHeight());
    boolean asking = bars.stream().anyMatch(Node::isVisible);
    return asking ? Math.clamp(spare, DIALS, ASKING) : DIALS;
  }

  private Node told() {
    Label told = new Label();
    told.getStyleClass().add("told");
    told.setMaxWidth(Double.MAX_VALUE);
    told.textProperty().bind(table.told());
    return told;
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

  private VBox left() {
    return left;
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
                Part.of(notes),
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
    for (Bar bar : bars) {
      dials.getChildren().add(dials.getChildren().indexOf(drawer), bar);
      bar.onOpening(() -> bars.forEach(Bar::close));
    }
    findings.onMend(goals::open);
    findings.onLast(() -> first().requestFocus());
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
