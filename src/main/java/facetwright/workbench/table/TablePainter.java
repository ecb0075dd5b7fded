package facetwright.workbench.table;

import facetwright.draw.Ink;
import facetwright.geom.Box2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.TextAlignment;

/** Paints the table. */
final class TablePainter {
  private static final double HALO = 3;
  private static final double PIN = 10;

  private final GraphicsContext on;
  private final Camera camera;
  private final Shade shade;
  private final Laid laid;
  private final boolean inside;
  private final List<Vec2> pinned = new ArrayList<>();

  /**
   * @param inside whether the inside of the card lies up: every sheet is turned over where it lies
   */
  TablePainter(GraphicsContext on, Camera camera, Shade shade, Laid laid, boolean inside) {
    this.on = on;
    this.camera = camera;
    this.shade = shade;
    this.laid = laid;
    this.inside = inside;
  }

  /** A place of the net where it shows. */
  static Vec2 shown(Laid laid, boolean inside, Vec2 place) {
    if (!inside) {
      return place;
    }
    Box2 box = laid.sheet(laid.sheetAt(place));
    return new Vec2(box.minX() + box.maxX() - place.x(), place.y());
  }

  private double x(Vec2 place) {
    return camera.screenX(shown(laid, inside, place));
  }

  private double y(Vec2 place) {
    return camera.screenY(place);
  }

  void nets(Sheets sheets) {
    Pen pen = new Pen(on, camera, false);
    for (int i = 0; i < sheets.drawings().size(); i++) {
      pen.paint(sheets.drawings().get(i), sheets.corners().get(i));
    }
  }

  void halo(Selection selection) {
    Net net = laid.net();
    on.setStroke(shade.selection());
    on.setLineWidth(HALO);
    on.setLineDashes();
    on.setLineCap(StrokeLineCap.ROUND);
    for (int p = 0; p < net.panels().size(); p++) {
      if (selection.hasPanel(p)) {
        on.setFill(shade.selection().deriveColor(0, 1, 1, 0.16));
        trace(net.panels().get(p).outline().corners());
        on.closePath();
        on.fill();
        on.stroke();
      }
    }
    for (int s = 0; s < net.scores().size(); s++) {
      if (selection.hasScore(s)) {
        line(net.segment(net.scores().get(s).a()));
      }
    }
    selection.lone().forEach(side -> line(net.segment(side)));
  }

  void hover(Spot spot) {
    Net net = laid.net();
    Color faint = shade.selection().deriveColor(0, 1, 1, 0.5);
    on.setStroke(faint);
    on.setLineWidth(2);
    on.setLineDashes();
    switch (spot) {
      case Spot.Bare _ -> {}
      case Spot.OnPanel(int p) -> {
        on.setLineWidth(1.5);
        trace(net.panels().get(p).outline().corners());
        on.closePath();
        on.stroke();
      }
      case Spot.OnScore(int s) -> line(net.segment(net.scores().get(s).a()));
      case Spot.OnCut(EdgeRef side) -> line(net.segment(side));
    }
  }

  /** A numbered pin at a place, or beside those that are there already. */
  void pin(Vec2 place, int number, boolean error) {
    double r = PIN * shade.type();
    double middle = x(laid.sheet(laid.sheetAt(place)).centre());
    Vec2 free = Pins.beside(pinned, new Vec2(x(place), y(place)), 2 * r, x(place) <= middle);
    pinned.add(free);
    double x = free.x();
    double y = free.y();
    on.setFill(error ? Color.web("#A3291F") : Pen.colour(Ink.OCHRE));
    on.fillOval(x - r, y - r, 2 * r, 2 * r);
    on.setStroke(Color.WHITE);
    on.setLineWidth(1.5);
    on.setLineDashes();
    on.strokeOval(x - r, y - r, 2 * r, 2 * r);
    on.setFill(Color.WHITE);
    on.setFont(Pen.Type.bold(12 * shade.type()));
    on.setTextAlign(TextAlignment.CENTER);
    on.setTextBaseline(VPos.CENTER);
    on.fillText(Integer.toString(number), x, y);
  }

  void measured(Measuring measuring, Unit unit) {
    if (measuring.from() == null) {
      return;
    }
    double x1 = x(measuring.from());
    double y1 = y(measuring.from());
    double x2 = x(measuring.to());
    double y2 = y(measuring.to());
    on.setStroke(shade.selection());
    on.setFill(shade.selection());
    on.setLineWidth(1.5);
    on.setLineDashes();
    on.strokeLine(x1, y1, x2, y2);
    on.fillOval(x1 - 3.5, y1 - 3.5, 7, 7);
    on.fillOval(x2 - 3.5, y2 - 3.5, 7, 7);
    double length = measuring.from().distance(measuring.to());
    if (length > 0) {
      label(SpotText.both(length, unit), (x1 + x2) / 2, (y1 + y2) / 2);
    }
  }

  /** The corner that one measures at by keys; null for none. */
  void corner(Vec2 at) {
    if (at != null) {
      on.setLineDashes();
      on.setLineWidth(5);
      on.setStroke(shade.paper());
      on.strokeOval(x(at) - 8, y(at) - 8, 16, 16);
      on.setLineWidth(2);
      on.setStroke(shade.selection());
      on.strokeOval(x(at) - 8, y(at) - 8, 16, 16);
    }
  }

  private void label(String words, double x, double y) {
    on.setFont(Pen.Type.bold(13 * shade.type()));
    javafx.scene.text.Text probe = new javafx.scene.text.Text(words);
    probe.setFont(on.getFont());
    double wide = probe.getLayoutBounds().getWidth() + 14;
    double high = 20 * shade.type();
    on.setFill(shade.paper());
    on.fillRoundRect(x - wide / 2, y - 6 - high, wide, high, 6, 6);
    on.setStroke(shade.selection());
    on.setLineWidth(1);
    on.strokeRoundRect(x - wide / 2, y - 6 - high, wide, high, 6, 6);
    on.setFill(Pen.colour(Ink.BLACK));
    on.setTextAlign(TextAlignment.CENTER);
    on.setTextBaseline(VPos.CENTER);
    on.fillText(words, x, y - 6 - high / 2);
  }

  private void line(Segment2 segment) {
    on.strokeLine(x(segment.from()), y(segment.from()), x(segment.to()), y(segment.to()));
  }

  private void trace(List<Vec2> points) {
    on.beginPath();
    on.moveTo(x(points.getFirst()), y(points.getFirst()));
    points.subList(1, points.size()).forEach(p -> on.lineTo(x(p), y(p)));
  }
}
