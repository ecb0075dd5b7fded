package facetwright.workbench.papers;

import facetwright.draw.Drawing;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.workbench.focus.FocusRing;
import facetwright.workbench.key.Key;
import facetwright.workbench.key.Where;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/**
 * One page as it will be printed. The wheel zooms, dragging moves, a double click shows it whole.
 */
public final class PageView extends Region {
  private static final double MARGIN = 24;
  private static final double STEP = 60;
  private static final double WHEEL = 1.0018;

  /** As many words as make a line. */
  private static final String LINE = "(.{50}\\S*)\\s+";

  private final Canvas canvas = new Canvas();
  private final ObjectProperty<Shade> shade = new SimpleObjectProperty<>(Shade.LIGHT);
  private Drawing page;
  private String otherwise = "";
  private Camera camera = new Camera(1, 0, 0);
  private boolean fitted = true;
  private double lastX;
  private double lastY;

  PageView() {
    getChildren().addAll(canvas, new FocusRing(this));
    setFocusTraversable(true);
    setMinSize(100, 100);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText("The page");
    shade.addListener((_, _, _) -> paint());
    setOnScroll(this::wheel);
    setOnKeyPressed(this::key);
    setOnMousePressed(
        e -> {
          requestFocus();
          lastX = e.getX();
          lastY = e.getY();
          if (e.getClickCount() == 2) {
            fit();
          }
        });
    setOnMouseDragged(this::drag);
  }

  public ObjectProperty<Shade> shade() {
    return shade;
  }

  /** Shows a page, or words where there is none. */
  void show(Drawing drawing, String words) {
    boolean sameSize =
        page != null
            && drawing != null
            && page.width() == drawing.width()
            && page.height() == drawing.height();
    page = drawing;
    otherwise = words;
    fitted |= !sameSize;
    layoutChildren();
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    if (fitted && page != null) {
      camera =
          Camera.showing(
              new Box2(0, 0, page.width(), page.height()), getWidth(), getHeight(), MARGIN);
    }
    paint();
  }

  private void paint() {
    GraphicsContext on = canvas.getGraphicsContext2D();
    on.setFill(shade.get().ground());
    on.fillRect(0, 0, getWidth(), getHeight());
    if (page == null) {
      on.setFill(shade.get().quiet());
      on.setFont(Pen.Type.regular(15 * shade.get().type()));
      on.setTextAlign(TextAlignment.CENTER);
      on.setTextBaseline(VPos.CENTER);
      on.fillText(otherwise.replaceAll(LINE, "$1\n"), getWidth() / 2, getHeight() / 2);
      return;
    }
    double left = camera.screenX(Vec2.ZERO);
    double top = camera.screenY(new Vec2(0, page.height()));
    double wide = page.width() * camera.scale();
    double high = page.height() * camera.scale();
    on.setFill(shade.get().shadow());
    on.fillRect(left + 3, top + 4, wide, high);
    on.setFill(Color.WHITE);
    on.fillRect(left, top, wide, high);
    on.save();
    on.beginPath();
    on.rect(left, top, wide, high);
    on.clip();
    new Pen(on, camera, true).paint(page, Vec2.ZERO);
    on.restore();
  }

  private void wheel(ScrollEvent e) {
    turnTo(camera.zoomed(Math.pow(WHEEL, e.getDeltaY()), e.getX(), e.getY()));
    e.consume();
  }

  private void nearer(double factor) {
    turnTo(camera.zoomed(factor, getWidth() / 2, getHeight() / 2));
  }

  private void fit() {
    fitted = true;
    layoutChildren();
  }

  private void turnTo(Camera next) {
    camera = next;
    fitted = false;
    paint();
  }

  private void key(KeyEvent e) {
    switch (Key.of(Where.PAGE, e).orElse(null)) {
      case PAGE_MOVE -> turnTo(camera.moved(-STEP * Key.across(e), -STEP * Key.down(e)));
      case PAGE_NEARER -> nearer(1.25);
      case PAGE_FARTHER -> nearer(0.8);
      case PAGE_WHOLE -> fit();
      case null, default -> {
        return;
      }
    }
    e.consume();
  }

  private void drag(MouseEvent e) {
    turnTo(camera.moved(e.getX() - lastX, e.getY() - lastY));
    lastX = e.getX();
    lastY = e.getY();
  }
}
