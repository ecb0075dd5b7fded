package facetwright.workbench.table;

import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.script.design.Design;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.focus.FocusRing;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Shade;
import facetwright.workbench.pick.Picking;
import java.util.List;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/** The net on its sheet. Wheel zooms to the pointer, dragging moves, a click selects. */
public final class TableView extends Region {
  private final Desk desk;
  private final Picking picking;
  private final Mat mat = new Mat();
  private final Canvas canvas = new Canvas();
  private final TableKeys keys;
  private final TableHand hand;
  private final ObjectProperty<TableLook> look = new SimpleObjectProperty<>(TableLook.USUAL);
  private final ObjectProperty<Shade> shade = new SimpleObjectProperty<>(Shade.LIGHT);
  private final ObjectProperty<Boolean> measures = new SimpleObjectProperty<>(false);
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private final DoubleProperty kept = new SimpleDoubleProperty();
  private Sheets sheets = Sheets.NONE;
  private Camera camera = new Camera(1, 0, 0);
  private boolean fitted = true;
  private final Measurer measurer = new Measurer(told::set);
  private long paints;

  /**
   * @param desk what is shown
   * @param picking what its facets are called
   */
  public TableView(Desk desk, Picking picking) {
    this.desk = desk;
    this.picking = picking;
    getStyleClass().add("table");
    keys = new TableKeys(this, desk);
    hand = new TableHand(this, desk);
    getChildren().addAll(mat, canvas, new FocusRing(this));
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    desk.design().addListener((_, _, _) -> drawn());
    desk.fault().addListener((_, _, _) -> empty());
    desk.selection().addListener((_, _, _) -> paint());
    look.addListener((_, _, _) -> drawn());
    shade.addListener((_, _, _) -> layoutChildren());
    kept.addListener((_, _, _) -> layoutChildren());
    measures.addListener(
        (_, _, on) -> {
          measurer.forget();
          setCursor(on ? Cursor.CROSSHAIR : Cursor.DEFAULT);
          paint();
        });
    setOnKeyPressed(keys::pressed);
    picking.onPoint(p -> tell(about(new Spot.OnPanel(p))), () -> selected(""));
    desk.selection().addListener((_, _, _) -> selected(told.get()));
    told.addListener((_, _, _) -> say());
    say();
    drawn();
  }

  /** What of the net is shown. */
  public ObjectProperty<TableLook> look() {
    return look;
  }

  public ObjectProperty<Shade> shade() {
    return shade;
  }

  /** Whether clicks measure. */
  public ObjectProperty<Boolean> measures() {
    return measures;
  }

  /** Room at the right that something else lies on, in pixels. */
  public DoubleProperty kept() {
    return kept;
  }

  /** What lies under the pointer, in words. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** The distance measured last, in mm; 0 where none was. Tests watch by it. */
  public double measured() {
    return measurer.measured();
  }

  /** How often it was painted so far. Tests watch by it. */
  long paints() {
    return paints;
  }

  /** Where a place of the net is in this view, in pixels. */
  public javafx.geometry.Point2D onScreen(Vec2 place) {
    Design design = desk.design().get();
    Vec2 shown =
        design == null ? place : TablePainter.shown(design.laid(), look.get().inside(), place);
    return new javafx.geometry.Point2D(camera.screenX(shown), camera.screenY(shown));
  }

  /** Shows the sheets whole. */
  public void fit() {
    fitted = true;
    layoutChildren();
  }

  /** Nearer or farther about the middle. */
  public void zoom(double factor) {
    zoom(factor, getWidth() / 2, getHeight() / 2);
  }

  /** Nearer or farther about a point of this view. */
  void zoom(double factor, double x, double y) {
    turnTo(camera.zoomed(factor, x, y));
  }

  /** How long a pixel is, in mm of the net. */
  double pixel() {
    return 1 / camera.scale();
  }

  void move(double dx, double dy) {
    turnTo(camera.moved(dx, dy));
  }

  /** Moves the sheet where a place of the net is not in sight, so that it is in the middle. */
  void bring(Vec2 place) {
    javafx.geometry.Point2D at = onScreen(place);
    if (at.getX() < 0 || at.getY() < 0 || at.getX() > getWidth() || at.getY() > getHeight()) {
      move(getWidth() / 2 - at.getX(), getHeight() / 2 - at.getY());
    }
  }

  /** The place of the net in the middle of the view. */
  Vec2 middle() {
    return place(getWidth() / 2, getHeight() / 2);
  }

  Measurer measurer() {
    return measurer;
  }

  /** Measures on at a corner, by keys. */
  void stand(Vec2 at) {
    measurer.stand(at, desk.design().get().unit());
    bring(at);
    paint();
  }

  /** Measures from or to a place. */
  void choose(Vec2 at) {
    measurer.choose(at, desk.design().get().unit());
    paint();
  }

  /** Says something in words under the table. */
  public void tell(String words) {
    told.set(words);
  }

  /** What is at a spot, in words: what it measures, and what a facet is called. */
  String about(Spot spot) {
    Design design = desk.design().get();
    String what = SpotText.about(design.net(), spot, design.unit());
    String words = spot instanceof Spot.OnPanel(int p) ? picking.words(p) : "";
    return words.isEmpty() ? what : what + "    " + words;
  }

  /** Offers to write what a panel is called. */
  void menu(int panel, double x, double y) {
    picking.menu(this, panel, x, y);
  }

  /** What is selected anywhere is told here; else the words given. */
  void selected(String otherwise) {
    boolean isPanel = desk.selection().get() instanceof Selection.OfPanel;
    tell(
        isPanel && desk.design().get() != null
            ? about(Steps.spot(desk.selection().get()))
            : otherwise);
    say();
  }

  /** For those who hear the window read. */
  private void say() {
    setAccessibleText("The net on its sheet" + (told.get().isEmpty() ? "" : ". " + told.get()));
  }

  /** Who goes on in the script, at what is selected. */
  public void onScript(Runnable going) {
    keys.onScript(going);
  }

  private void turnTo(Camera next) {
    camera = next;
    fitted = false;
    paint();
  }

  @Override
  protected void layoutChildren() {
    mat.setWidth(getWidth());
    mat.setHeight(getHeight());
    if (fitted && desk.design().get() != null) {
      camera =
          Fitting.of(
              desk.design().get().laid(), getWidth(), getHeight(), kept.get(), shade.get().type());
    }
    paint();
  }

  private void drawn() {
    Design design = desk.design().get();
    if (design != null) {
      sheets = Sheets.of(design.laid(), design.gluing(), look.get());
    } else {
      measurer.forget();
    }
    hand.forget();
    empty();
    layoutChildren();
  }

  /** Says why there is nothing to see. */
  private void empty() {
    if (desk.design().get() == null) {
      tell(desk.fault().get() == null ? "" : "There is no net of this design yet.");
    }
  }

  void paint() {
    Design design = desk.design().get();
    mat.show(
        camera,
        shade.get(),
        design == null ? List.of() : design.laid().sheetBoxes(),
        design == null ? Unit.MM : design.unit());
    GraphicsContext on = canvas.getGraphicsContext2D();
    if (design == null || getWidth() < 1) {
      on.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
      return;
    }
    Field field = field(design.laid());
    canvas.relocate(field.left(), field.top());
    canvas.setWidth(field.width());
    canvas.setHeight(field.height());
    on.clearRect(0, 0, field.width(), field.height());
    Camera there = camera.moved(-field.left(), -field.top());
    TablePainter painter =
        new TablePainter(on, there, shade.get(), design.laid(), look.get().inside());
    painter.nets(sheets);
    painter.halo(desk.selection().get());
    painter.hover(hand.under());
    for (int i = 0; i < design.findings().size(); i++) {
      var finding = design.findings().get(i);
      painter.pin(
          Pins.place(design.laid(), finding),
          i + 1,
          finding.severity() == facetwright.check.finding.Finding.Severity.ERROR);
    }
    painter.measured(measurer.now(), design.unit());
    painter.corner(measurer.corner());
    paints++;
  }

  /** Where there is something to paint; one may measure anywhere. */
  private Field field(Laid laid) {
    return measurer.now().from() == null && measurer.corner() == null
        ? Field.about(laid, camera, getWidth(), getHeight(), shade.get().type())
        : Field.whole(getWidth(), getHeight());
  }

  /** The place of the net at a point of this view. */
  Vec2 place(double x, double y) {
    Vec2 plane = camera.plane(x, y);
    Design design = desk.design().get();
    // Turning over twice changes nothing, so the same mirror leads back.
    return design == null ? plane : TablePainter.shown(design.laid(), look.get().inside(), plane);
  }
}
