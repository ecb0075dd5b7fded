package facetwright.workbench.lens;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import facetwright.workbench.table.Camera;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/**
 * The folded form in a round glass. Dragging turns it, the wheel zooms, a click selects; the rim is
 * the way from flat to made.
 */
public final class LensView extends Region {
  private static final double RIM = 9;
  private static final double TURN = 0.011;
  private static final double WHEEL = 1.0018;
  private static final double KEY_TURN = Math.toRadians(10);
  private static final double KEY_STEP = 0.05;

  /** The rim's slider begins at the lower left and ends at the lower right, in degrees. */
  private static final double FIRST = 225;

  private static final double ALL = 270;

  private final Desk desk;
  private final FrameSource frames;
  private final Canvas canvas = new Canvas();
  private final DoubleProperty made = new SimpleDoubleProperty(1);
  private final BooleanProperty layers = new SimpleBooleanProperty(true);
  private final BooleanProperty round = new SimpleBooleanProperty(true);
  private final ObjectProperty<Shade> shade = new SimpleObjectProperty<>(Shade.LIGHT);
  private Viewpoint from = Viewpoint.USUAL;
  private double zoom = 1;
  private List<Mark.Patch> patches = List.of();
  private Camera camera = new Camera(1, 0, 0);
  private FoldedDrawing drawing;
  private double lastX;
  private double lastY;
  private boolean dragged;
  private boolean onRim;

  /**
   * @param desk what is shown
   * @param aside runs work beside the window
   * @param ui runs work on the window's thread
   */
  public LensView(Desk desk, Executor aside, Executor ui) {
    this.desk = desk;
    this.frames = new FrameSource(aside, ui, this::show);
    getStyleClass().add("lens");
    getChildren().add(canvas);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText("The folded form");
    desk.design()
        .addListener(
            (_, _, design) -> frames.of(design.net(), design.folded(), layers.get(), made.get()));
    desk.selection().addListener((_, _, _) -> paint());
    made.addListener((_, _, t) -> frames.at(t.doubleValue()));
    layers.addListener((_, _, on) -> frames.layers(on));
    shade.addListener((_, _, _) -> paint());
    round.addListener((_, _, _) -> requestLayout());
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(this::release);
    setOnScroll(this::wheel);
    setOnKeyPressed(this::key);
  }

  /** How far it is folded, 0 flat to 1 made. */
  public DoubleProperty made() {
    return made;
  }

  /** Whether decorative layers show. */
  public BooleanProperty layers() {
    return layers;
  }

  /** Whether it is a round glass with a rim, or fills its place. */
  public BooleanProperty round() {
    return round;
  }

  public ObjectProperty<Shade> shade() {
    return shade;
  }

  private void show(FoldedDrawing next) {
    drawing = next;
    look();
  }

  private void look() {
    patches = drawing == null ? List.of() : drawing.seen(from);
    place();
    paint();
  }

  private void place() {
    if (drawing == null || getWidth() < 1) {
      return;
    }
    double margin = round.get() ? Math.min(getWidth(), getHeight()) * 0.16 : 40;
    Box2 box = drawing.bounds(from);
    Camera fit = Camera.showing(box, getWidth(), getHeight(), margin);
    // While it turns it keeps its size: the scale comes of its longest extent.
    double reach = drawing.reach();
    double scale =
        Math.min(getWidth() - 2 * margin, getHeight() - 2 * margin) / Math.max(reach, 1e-6);
    double s = Math.max(scale, Math.min(fit.scale(), scale * 1.6)) * zoom;
    camera =
        new Camera(
            s, getWidth() / 2 - box.centre().x() * s, getHeight() / 2 + box.centre().y() * s);
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    place();
    paint();
  }

  private double radius() {
    return Math.min(getWidth(), getHeight()) / 2 - RIM;
  }

  private void paint() {
    GraphicsContext on = canvas.getGraphicsContext2D();
    on.clearRect(0, 0, getWidth(), getHeight());
    if (getWidth() < 2 * RIM + 2) {
      return;
    }
    double cx = getWidth() / 2;
    double cy = getHeight() / 2;
    double r = radius();
    on.save();
    if (round.get()) {
      on.setFill(shade.get().shadow());
      on.fillOval(cx - r - RIM + 1, cy - r - RIM + 4, 2 * (r + RIM), 2 * (r + RIM));
      on.setFill(shade.get().ground().deriveColor(0, 1, shade.get().isDark() ? 1.25 : 1.03, 1));
      on.fillOval(cx - r - RIM, cy - r - RIM, 2 * (r + RIM), 2 * (r + RIM));
      on.beginPath();
      on.arc(cx, cy, r, r, 0, 360);
      on.clip();
    } else {
      on.setFill(shade.get().ground());
      on.fillRect(0, 0, getWidth(), getHeight());
    }
    new Pen(on, camera, false).paintAll(patches);
    halo(on);
    on.restore();
    if (round.get()) {
      rim(on, cx, cy, r + RIM / 2);
    }
  }

  private void halo(GraphicsContext on) {
    Selection selection = desk.selection().get();
    on.setStroke(shade.get().selection());
    on.setLineWidth(3);
    on.setLineDashes();
    on.setLineJoin(StrokeLineJoin.ROUND);
    on.setLineCap(StrokeLineCap.ROUND);
    Net net = drawing == null ? null : drawing.net();
    for (int p = 0; net != null && p < net.panels().size(); p++) {
      if (selection.hasPanel(p)) {
        List<Vec2> seen = drawing.outline(p, from);
        on.beginPath();
        on.moveTo(camera.screenX(seen.getFirst()), camera.screenY(seen.getFirst()));
        seen.subList(1, seen.size()).forEach(v -> on.lineTo(camera.screenX(v), camera.screenY(v)));
        on.closePath();
        on.setFill(shade.get().selection().deriveColor(0, 1, 1, 0.16));
        on.fill();
        on.stroke();
      }
    }
    for (int s = 0; net != null && s < net.scores().size(); s++) {
      if (selection.hasScore(s)) {
        List<Vec2> seen = drawing.side(net.scores().get(s).a(), from);
        on.strokeLine(
            camera.screenX(seen.getFirst()),
            camera.screenY(seen.getFirst()),
            camera.screenX(seen.getLast()),
            camera.screenY(seen.getLast()));
      }
    }
  }

  private void rim(GraphicsContext on, double cx, double cy, double r) {
    on.setLineCap(StrokeLineCap.ROUND);
    on.setLineDashes();
    on.setLineWidth(3);
    on.setStroke(shade.get().edge());
    on.strokeArc(cx - r, cy - r, 2 * r, 2 * r, FIRST - ALL, ALL, ArcType.OPEN);
    on.setStroke(shade.get().selection());
    on.strokeArc(
        cx - r, cy - r, 2 * r, 2 * r, FIRST - ALL * made.get(), ALL * made.get(), ArcType.OPEN);
    double at = Math.toRadians(FIRST - ALL * made.get());
    double x = cx + r * Math.cos(at);
    double y = cy - r * Math.sin(at);
    on.setFill(shade.get().paper());
    on.fillOval(x - 8, y - 8, 16, 16);
    on.setStroke(shade.get().selection());
    on.setLineWidth(2.5);
    on.strokeOval(x - 8, y - 8, 16, 16);
    if (isFocused()) {
      on.setStroke(shade.get().words());
      on.setLineWidth(1);
      on.strokeOval(x - 11, y - 11, 22, 22);
    }
  }

  private boolean isOnRim(double x, double y) {
    double off = Math.hypot(x - getWidth() / 2, y - getHeight() / 2);
    return round.get() && off > radius() - RIM;
  }

  private void press(MouseEvent e) {
    requestFocus();
    lastX = e.getX();
    lastY = e.getY();
    dragged = false;
    onRim = isOnRim(e.getX(), e.getY());
    if (onRim) {
      slide(e.getX(), e.getY());
    }
    e.consume();
  }

  private void slide(double x, double y) {
    double angle = Math.toDegrees(Math.atan2(getHeight() / 2 - y, x - getWidth() / 2));
    double along = Math.floorMod(Math.round((FIRST - angle) * 100), 36000L) / 100.0;
    // In the gap below, the nearer end.
    made.set(along > ALL ? (along > ALL + (360 - ALL) / 2 ? 0 : 1) : along / ALL);
  }

  private void drag(MouseEvent e) {
    if (onRim) {
      slide(e.getX(), e.getY());
    } else {
      dragged |= Math.hypot(e.getX() - lastX, e.getY() - lastY) > 3;
      if (dragged) {
        from = from.moved(-TURN * (e.getX() - lastX), TURN * (e.getY() - lastY));
        lastX = e.getX();
        lastY = e.getY();
        look();
      }
    }
    e.consume();
  }

  private void release(MouseEvent e) {
    e.consume();
    if (onRim || dragged || e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    Vec2 place = camera.plane(e.getX(), e.getY());
    for (Mark.Patch patch : patches.reversed()) {
      long around = patch.rings().stream().filter((Polygon2 ring) -> ring.contains(place)).count();
      if (around % 2 == 1) {
        desk.selection().set(new Selection.OfPanel(patch.part()));
        return;
      }
    }
    desk.selection().set(Selection.nothing());
  }

  private void wheel(ScrollEvent e) {
    zoom = Math.clamp(zoom * Math.pow(WHEEL, e.getDeltaY()), 0.3, 12);
    place();
    paint();
    e.consume();
  }

  private void turn(double by, double tilt) {
    from = from.moved(by, tilt);
    look();
  }

  private void key(KeyEvent e) {
    switch (e.getCode()) {
      case LEFT -> turn(KEY_TURN, 0);
      case RIGHT -> turn(-KEY_TURN, 0);
      case UP -> turn(0, -KEY_TURN);
      case DOWN -> turn(0, KEY_TURN);
      case PAGE_UP -> made.set(Math.min(1, made.get() + KEY_STEP));
      case PAGE_DOWN -> made.set(Math.max(0, made.get() - KEY_STEP));
      case HOME -> {
        from = Viewpoint.USUAL;
        zoom = 1;
        look();
      }
      default -> {
        return;
      }
    }
    e.consume();
  }
}
