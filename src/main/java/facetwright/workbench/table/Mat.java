package facetwright.workbench.table;

import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Shade;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;

/**
 * What lies under the net: the mat, the bare sheets with their shadows, and their rulers. It is
 * painted anew only when something of it changes, which is seldom while a script is written.
 */
final class Mat extends Canvas {
  private Look painted = Look.NONE;

  /** All that its picture depends on. */
  private record Look(
      double width, double height, Camera camera, Shade shade, List<Box2> sheets, Unit unit) {
    static final Look NONE = new Look(0, 0, new Camera(1, 0, 0), Shade.LIGHT, List.of(), Unit.MM);
  }

  /** Shows these sheets as they lie in the plane of the net. */
  void show(Camera camera, Shade shade, List<Box2> sheets, Unit unit) {
    Look look = new Look(getWidth(), getHeight(), camera, shade, List.copyOf(sheets), unit);
    if (look.equals(painted)) {
      return;
    }
    painted = look;
    GraphicsContext on = getGraphicsContext2D();
    on.setFill(shade.ground());
    on.fillRect(0, 0, getWidth(), getHeight());
    SheetRuler ruler = new SheetRuler(on, camera, shade, unit);
    for (Box2 sheet : sheets) {
      sheet(on, sheet);
      ruler.along(sheet);
    }
  }

  private void sheet(GraphicsContext on, Box2 sheet) {
    Camera camera = painted.camera();
    Shade shade = painted.shade();
    double left = camera.screenX(new Vec2(sheet.minX(), 0));
    double top = camera.screenY(new Vec2(0, sheet.maxY()));
    double wide = sheet.width() * camera.scale();
    double high = sheet.height() * camera.scale();
    on.setFill(shade.shadow());
    for (int s = 1; s <= 4; s++) {
      on.fillRoundRect(left + s - 2, top + 1.5 * s, wide + 4 - s, high + 2 - s / 2.0, 4, 4);
    }
    on.setFill(shade.paper());
    on.fillRect(left, top, wide, high);
    on.setStroke(shade.edge());
    on.setLineWidth(0.5);
    on.setLineDashes();
    on.strokeRect(left, top, wide, high);
  }
}
