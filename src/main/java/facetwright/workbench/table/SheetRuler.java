package facetwright.workbench.table;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/** Rulers along the lower and the left edge of a sheet, in the unit of the design. */
final class SheetRuler {
  private static final double BETWEEN_MARKS = 4;
  private static final double BETWEEN_NUMBERS = 34;
  private static final double OFF = 5;
  private static final double LONG = 11;
  private static final double TYPE = 12;

  private final GraphicsContext on;
  private final Camera camera;
  private final Shade shade;
  private final Division division;

  /**
   * How a ruler is divided at this zoom.
   *
   * @param unit its whole division, in mm
   * @param parts into which the unit is divided
   * @param every so many units a number stands
   * @param perNumber what one unit counts
   */
  record Division(double unit, int parts, int every, double perNumber) {
    /**
     * @param type how large the numbers are against the usual
     */
    static Division at(double scale, Unit unit, double type) {
      double whole = unit.forLarge().mm();
      double perNumber = whole / unit.mm();
      int parts = 1;
      for (int finer : unit.isInFractions() ? new int[] {2, 4, 8, 16, 32} : new int[] {2, 10, 20}) {
        if (whole * scale / finer >= BETWEEN_MARKS) {
          parts = finer;
        }
      }
      int every = 1;
      for (int coarser : new int[] {1, 2, 5, 10, 20, 50}) {
        every = coarser;
        if (whole * scale * coarser >= BETWEEN_NUMBERS * type) {
          break;
        }
      }
      return new Division(whole, parts, every, perNumber);
    }

    /** How far a mark is from the first. */
    double mm(int mark) {
      return mark * unit / parts;
    }

    /** Whether there is such a mark along so much. */
    boolean isOn(int mark, double length) {
      return mm(mark) <= length + LengthTolerance.FINE.mm();
    }

    /** How long a mark is: 1 for a whole unit, less for parts. */
    double length(int mark) {
      if (mark % parts == 0) {
        return 1;
      }
      int step = parts;
      double length = 0.72;
      while (step % 2 == 0) {
        step /= 2;
        if (mark % step == 0) {
          return length;
        }
        length -= 0.13;
      }
      return Math.max(length - 0.13, 0.32);
    }
  }

  SheetRuler(GraphicsContext on, Camera camera, Shade shade, Unit unit) {
    this.on = on;
    this.camera = camera;
    this.shade = shade;
    this.division = Division.at(camera.scale(), unit, shade.type());
  }

  void along(Box2 sheet) {
    on.setStroke(shade.quiet());
    on.setFill(shade.quiet());
    on.setLineWidth(1);
    on.setLineDashes();
    on.setFont(Pen.Type.regular(TYPE * shade.type()));
    bottom(sheet);
    left(sheet);
  }

  private void bottom(Box2 sheet) {
    double y = camera.screenY(new Vec2(0, sheet.minY())) + OFF;
    on.setTextAlign(TextAlignment.CENTER);
    on.setTextBaseline(VPos.TOP);
    for (int i = 0; division.isOn(i, sheet.width()); i++) {
      double at = sheet.minX() + division.mm(i);
      double x = Math.round(camera.screenX(new Vec2(at, 0))) + 0.5;
      on.strokeLine(x, y, x, y + LONG * division.length(i));
      if (isNumbered(i)) {
        on.fillText(number(i), x, y + LONG + 3);
      }
    }
  }

  private void left(Box2 sheet) {
    double x = camera.screenX(new Vec2(sheet.minX(), 0)) - OFF;
    on.setTextAlign(TextAlignment.RIGHT);
    on.setTextBaseline(VPos.CENTER);
    for (int i = 0; division.isOn(i, sheet.height()); i++) {
      double at = sheet.minY() + division.mm(i);
      double y = Math.round(camera.screenY(new Vec2(0, at))) + 0.5;
      on.strokeLine(x, y, x - LONG * division.length(i), y);
      if (isNumbered(i)) {
        on.fillText(number(i), x - LONG - 4, y);
      }
    }
  }

  private boolean isNumbered(int mark) {
    return mark % (division.parts * division.every) == 0;
  }

  private String number(int mark) {
    return Long.toString(Math.round(mark / (double) division.parts * division.perNumber));
  }
}
