package facetwright.workbench.table;

import facetwright.draw.Drawing;
import facetwright.draw.NetDrawing;
import facetwright.geom.Box2;
import facetwright.geom.Unit;
import facetwright.geom.Vec2;
import facetwright.net.Laid;
import facetwright.script.Design;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.look.Shade;
import java.util.ArrayList;
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
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;

/** The net on its sheet. Wheel zooms to the pointer, dragging moves, a click selects. */
public final class TableView extends Region {
  /** Round the sheets there is room for ruler marks, and for their numbers at the usual size. */
  private static final double EDGE = 34;

  private static final double NUMBERS = 22;
  private static final double REACH = 6;
  private static final double STEP = 60;
  private static final double WHEEL = 1.0018;

  /** The net may be so much smaller for the sake of what lies over the table. */
  private static final double WORTH = 0.75;

  private final Desk desk;
  private final Canvas canvas = new Canvas();
  private final ObjectProperty<TableLook> look = new SimpleObjectProperty<>(TableLook.USUAL);
  private final ObjectProperty<Shade> shade = new SimpleObjectProperty<>(Shade.LIGHT);
  private final ObjectProperty<Boolean> measures = new SimpleObjectProperty<>(false);
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private final DoubleProperty kept = new SimpleDoubleProperty();
  private List<Drawing> drawings = List.of();
  private List<Vec2> corners = List.of();
  private Camera camera = new Camera(1, 0, 0);
  private boolean fitted = true;
  private Measuring measuring = Measuring.NONE;
  private Spot under = new Spot.Bare();
  private double lastX;
  private double lastY;
  private boolean dragged;
  private long paints;

  public TableView(Desk desk) {
    this.desk = desk;
    getStyleClass().add("table");
    getChildren().add(canvas);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText("The net on its sheet");
    desk.design().addListener((_, _, _) -> drawn());
    desk.selection().addListener((_, _, _) -> paint());
    look.addListener((_, _, _) -> drawn());
    shade.addListener((_, _, _) -> layoutChildren());
    kept.addListener((_, _, _) -> layoutChildren());
    measures.addListener(
        (_, _, on) -> {
          measuring = Measuring.NONE;
          setCursor(on ? Cursor.CROSSHAIR : Cursor.DEFAULT);
          paint();
        });
    setOnScroll(this::wheel);
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(this::release);
    setOnMouseMoved(this::move);
    setOnMouseExited(_ -> point(new Spot.Bare(), ""));
    setOnKeyPressed(this::key);
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

  /** The distance measured last, in mm; 0 where none was. */
  public double measured() {
    return measuring.done() ? measuring.from().distance(measuring.to()) : 0;
  }

  /** How often it was painted so far. */
  public long paints() {
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
    turnTo(camera.zoomed(factor, getWidth() / 2, getHeight() / 2));
  }

  private void turnTo(Camera next) {
    camera = next;
    fitted = false;
    paint();
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    if (fitted && desk.design().get() != null) {
      double margin = EDGE + NUMBERS * shade.get().type();
      Camera full = Camera.showing(whole(), getWidth(), getHeight(), margin);
      Camera beside =
          Camera.showing(whole(), Math.max(1, getWidth() - kept.get()), getHeight(), margin);
      camera = beside.scale() > WORTH * full.scale() ? beside : full;
    }
    paint();
  }

  private Box2 whole() {
    Laid laid = desk.design().get().laid();
    Box2 box = laid.sheet(0).union(laid.sheet(laid.sheets() - 1));
    return box.union(laid.net().box());
  }

  private void drawn() {
    Design design = desk.design().get();
    if (design != null) {
      List<Drawing> sheets = new ArrayList<>();
      List<Vec2> places = new ArrayList<>();
      for (int i = 0; i < design.laid().sheets(); i++) {
        Drawing drawing = NetDrawing.of(design.laid(), i, look.get().content());
        Vec2 corner = NetDrawing.cornerOf(design.laid(), i);
        if (look.get().inside()) {
          Box2 sheet = design.laid().sheet(i);
          double right = corner.x() + drawing.width();
          corner = new Vec2(sheet.minX() + sheet.maxX() - right, corner.y());
          drawing = drawing.turnedOver();
        }
        sheets.add(drawing);
        places.add(corner);
      }
      drawings = sheets;
      corners = places;
      under = new Spot.Bare();
    }
    layoutChildren();
  }

  private void paint() {
    GraphicsContext on = canvas.getGraphicsContext2D();
    on.setFill(shade.get().ground());
    on.fillRect(0, 0, getWidth(), getHeight());
    Design design = desk.design().get();
    if (design == null || getWidth() < 1) {
      return;
    }
    TablePainter painter =
        new TablePainter(on, camera, shade.get(), design.laid(), look.get().inside());
    painter.sheets(design.unit());
    painter.nets(drawings, corners);
    painter.halo(desk.selection().get());
    painter.hover(under);
    for (int i = 0; i < design.findings().size(); i++) {
      var finding = design.findings().get(i);
      painter.pin(
          Pins.place(design.laid(), finding),
          i + 1,
          finding.severity() == facetwright.check.Finding.Severity.ERROR);
    }
    painter.measured(measuring, design.unit());
    paints++;
  }

  private Vec2 place(double x, double y) {
    Vec2 plane = camera.plane(x, y);
    Design design = desk.design().get();
    // Turning over twice changes nothing, so the same mirror leads back.
    return design == null ? plane : TablePainter.shown(design.laid(), look.get().inside(), plane);
  }

  private void wheel(ScrollEvent e) {
    if (e.getDeltaY() != 0) {
      turnTo(camera.zoomed(Math.pow(WHEEL, e.getDeltaY()), e.getX(), e.getY()));
    }
    e.consume();
  }

  private void press(MouseEvent e) {
    requestFocus();
    lastX = e.getX();
    lastY = e.getY();
    dragged = false;
  }

  private void drag(MouseEvent e) {
    if (!dragged && Math.hypot(e.getX() - lastX, e.getY() - lastY) < 4) {
      return;
    }
    dragged = true;
    turnTo(camera.moved(e.getX() - lastX, e.getY() - lastY));
    lastX = e.getX();
    lastY = e.getY();
  }

  private void release(MouseEvent e) {
    Design design = desk.design().get();
    if (dragged || design == null || e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    Vec2 place = place(e.getX(), e.getY());
    if (measures.get()) {
      measuring =
          measuring.choosing(Measuring.snapped(design.net(), place, REACH / camera.scale()));
      paint();
      return;
    }
    if (e.getClickCount() == 2) {
      fit();
      return;
    }
    desk.selection()
        .set(
            switch (Spot.at(design.net(), place, REACH / camera.scale())) {
              case Spot.OnPanel(int p) -> new Selection.OfPanel(p);
              case Spot.OnScore(int s) -> new Selection.OfScore(s);
              case Spot.OnCut(var side) -> new Selection.OfPanel(side.panel());
              case Spot.Bare _ -> Selection.nothing();
            });
  }

  private void move(MouseEvent e) {
    Design design = desk.design().get();
    if (design == null) {
      return;
    }
    Vec2 place = place(e.getX(), e.getY());
    if (measures.get()) {
      Measuring next =
          measuring.following(Measuring.snapped(design.net(), place, REACH / camera.scale()));
      if (!next.equals(measuring)) {
        measuring = next;
        paint();
      }
    }
    Spot spot = Spot.at(design.net(), place, REACH / camera.scale());
    Unit unit = design.unit();
    Box2 sheet = design.laid().sheet(0);
    String from =
        "From the corner: "
            + Told.both(place.x() - sheet.minX(), unit)
            + " across, "
            + Told.both(place.y() - sheet.minY(), unit)
            + " up";
    String what = Told.about(design.net(), spot, unit);
    point(spot, what.isEmpty() ? from : what + "    " + from);
  }

  private void point(Spot spot, String words) {
    told.set(words);
    if (!spot.equals(under)) {
      under = spot;
      paint();
    }
  }

  private void key(KeyEvent e) {
    switch (e.getCode()) {
      case LEFT -> turnTo(camera.moved(STEP, 0));
      case RIGHT -> turnTo(camera.moved(-STEP, 0));
      case UP -> turnTo(camera.moved(0, STEP));
      case DOWN -> turnTo(camera.moved(0, -STEP));
      case PLUS, ADD, EQUALS -> zoom(1.25);
      case MINUS, SUBTRACT -> zoom(0.8);
      case HOME, DIGIT0, F -> fit();
      case ESCAPE -> {
        measures.set(false);
        desk.selection().set(Selection.nothing());
      }
      default -> {
        return;
      }
    }
    e.consume();
  }
}
