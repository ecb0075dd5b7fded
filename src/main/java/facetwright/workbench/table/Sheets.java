package facetwright.workbench.table;

import facetwright.draw.Drawing;
import facetwright.draw.GlueMarks;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.fold.making.GlueOrder;
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

  /**
   * @param order in which the net is made up, which tells the face that takes the glue
   */
  static Sheets of(Laid laid, GlueOrder order, TableLook look) {
    GlueMarks gluing = look.glue() ? GlueMarks.faces(order) : GlueMarks.NONE;
    if (look.inside()) {
      gluing = gluing.turnedOver(laid.net());
    }
    List<Drawing> drawings = new ArrayList<>();
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      Drawing drawing = NetDrawing.of(SheetPart.of(laid, i), look.content(), gluing);
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
