package facetwright.workbench.table;

import facetwright.draw.Drawing;
import facetwright.draw.NetDrawing;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.List;

/**
 * A net on its sheets, drawn.
 *
 * @param drawings one a sheet
 * @param corners where the lower left corner of each lies in the plane
 */
record Sheets(List<Drawing> drawings, List<Vec2> corners) {
  static final Sheets NONE = new Sheets(List.of(), List.of());

  Sheets {
    drawings = List.copyOf(drawings);
    corners = List.copyOf(corners);
  }

  static Sheets of(Laid laid, TableLook look) {
    List<Drawing> drawings = new ArrayList<>();
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      Drawing drawing = NetDrawing.of(laid, i, look.content());
      Vec2 corner = NetDrawing.cornerOf(laid, i);
      if (look.inside()) {
        Box2 sheet = laid.sheet(i);
        double right = corner.x() + drawing.width();
        corner = new Vec2(sheet.minX() + sheet.maxX() - right, corner.y());
        drawing = drawing.turnedOver();
      }
      drawings.add(drawing);
      corners.add(corner);
    }
    return new Sheets(drawings, corners);
  }
}
