package facetwright.workbench.lens;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.fold.Vertices;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import facetwright.workbench.table.Camera;
import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;

/** Paints the lens. */
record LensPainter(
    GraphicsContext on,
    Camera camera,
    Shade shade,
    Viewpoint from,
    double width,
    double height,
    boolean round) {
  private static final double TYPE = 12;

  /** How much of the rim's end its knob covers, in pixels. */
  private static final double KNOB = 14;

  /** How wide the longer of the words at the rim's ends is, with some space, in its lettering. */
  private static final double WORD = 2.8;

  /**
   * What the form stands on; until {@link #clear} none of these patches is painted beyond it. Such
   * a bound is dear, so it is set only where one of them would be.
   */
  void glass(double radius, double rim, List<Mark.Patch> patches) {
    on.save();
    if (!round) {
      on.setFill(shade.ground());
      on.fillRect(0, 0, width, height);
      return;
    }
    double cx = width / 2;
    double cy = height / 2;
    double whole = radius + rim;
    on.setFill(shade.ground().deriveColor(0, 1, shade.isDark() ? 1.3 : 1.03, 1));
    on.fillOval(cx - whole, cy - whole, 2 * whole, 2 * whole);
    Vec2 middle = camera.plane(cx, cy);
    double reach = radius / camera.scale();
    boolean beyond =
        patches.stream()
            .flatMap(patch -> patch.rings().stream())
            .flatMap(ring -> ring.corners().stream())
            .anyMatch(corner -> corner.distance(middle) > reach);
    if (beyond) {
      on.beginPath();
      on.arc(cx, cy, radius, radius, 0, 360);
      on.clip();
    }
  }

  void clear() {
    on.restore();
  }

  void form(List<Mark.Patch> patches, FoldedDrawing drawing, Selection selection) {
    new Pen(on, camera, false).paintAll(patches);
    if (drawing != null) {
      halo(drawing, selection);
    }
  }

  private void halo(FoldedDrawing drawing, Selection selection) {
    on.setStroke(shade.selection());
    on.setLineWidth(3);
    on.setLineDashes();
    on.setLineJoin(StrokeLineJoin.ROUND);
    on.setLineCap(StrokeLineCap.ROUND);
    Net net = drawing.net();
    for (int p = 0; p < net.panels().size(); p++) {
      if (selection.hasPanel(p)) {
        List<Vec2> seen = drawing.outline(p, from);
        on.beginPath();
        on.moveTo(x(seen.getFirst()), y(seen.getFirst()));
        seen.subList(1, seen.size()).forEach(v -> on.lineTo(x(v), y(v)));
        on.closePath();
        on.setFill(shade.selection().deriveColor(0, 1, 1, 0.16));
        on.fill();
        on.stroke();
      }
    }
    for (int s = 0; s < net.scores().size(); s++) {
      if (selection.hasScore(s)) {
        side(drawing, net.scores().get(s).a());
      }
    }
    selection.lone().forEach(side -> side(drawing, side));
  }

  private void side(FoldedDrawing drawing, EdgeRef side) {
    List<Vec2> seen = drawing.side(side, from);
    on.strokeLine(x(seen.getFirst()), y(seen.getFirst()), x(seen.getLast()), y(seen.getLast()));
  }

  /** Dihedral angles at the scores in sight, and angle sums at the vertices in sight. */
  void angles(FoldedDrawing drawing, Teaching teaching) {
    Net net = drawing.net();
    for (int s = 0; s < net.scores().size(); s++) {
      Score score = net.scores().get(s);
      boolean tab =
          net.panels().get(score.a().panel()).role() == PanelRole.TAB
              || net.panels().get(score.b().panel()).role() == PanelRole.TAB;
      boolean inSight =
          drawing.isOutsideSeen(score.a().panel(), from)
              && drawing.isOutsideSeen(score.b().panel(), from);
      if (!tab && inSight) {
        List<Vec2> seen = drawing.side(score.a(), from);
        Vec2 middle = seen.getFirst().toward(seen.getLast(), 0.5);
        label(degrees(teaching.dihedrals().get(s)), middle, Color.web("#0B6463"));
      }
    }
    for (Vertices.Vertex vertex : teaching.vertices()) {
      boolean inSight =
          vertex.closed()
              && vertex.corners().stream().anyMatch(c -> drawing.isOutsideSeen(c.panel(), from));
      if (inSight) {
        label("Σ " + degrees(vertex.angleSum()), from.seen(vertex.place()), Color.web("#7A3E7A"));
      }
    }
  }

  private static String degrees(double angle) {
    return String.format(Locale.ROOT, "%.1f°", angle);
  }

  private void label(String words, Vec2 place, Color colour) {
    on.setFont(Pen.Type.bold(TYPE * shade.type()));
    on.setTextAlign(TextAlignment.CENTER);
    on.setTextBaseline(VPos.CENTER);
    double wide = 7.2 * shade.type() * words.length() + 6;
    double high = 18 * shade.type();
    on.setFill(Color.web("#FCFAF5", 0.92));
    on.fillRoundRect(x(place) - wide / 2, y(place) - high / 2, wide, high, 6, 6);
    on.setFill(colour);
    on.fillText(words, x(place), y(place));
  }

  /** The way from flat to made, as a slider round the glass. */
  void rim(double r, double first, double all, double made, boolean focused) {
    double cx = width / 2;
    double cy = height / 2;
    on.setLineCap(StrokeLineCap.ROUND);
    on.setLineDashes();
    on.setLineWidth(3);
    on.setStroke(shade.edge());
    on.strokeArc(cx - r, cy - r, 2 * r, 2 * r, first - all, all, ArcType.OPEN);
    on.setStroke(shade.selection());
    on.strokeArc(cx - r, cy - r, 2 * r, 2 * r, first - all * made, all * made, ArcType.OPEN);
    double at = Math.toRadians(first - all * made);
    double x = cx + r * Math.cos(at);
    double y = cy - r * Math.sin(at);
    on.setFill(shade.paper());
    on.fillOval(x - 8, y - 8, 16, 16);
    on.setStroke(focused ? shade.words() : shade.selection());
    on.setLineWidth(2.5);
    on.strokeOval(x - 8, y - 8, 16, 16);
    ends(cx, cy, r, Math.toRadians(first));
  }

  /** What the rim's ends mean, inside of its knob; in a small glass there is no room for it. */
  private void ends(double cx, double cy, double r, double low) {
    double size = TYPE * shade.type();
    double off = r * Math.cos(low) + KNOB;
    if (-off < WORD * size) {
      return;
    }
    on.setFill(shade.quiet());
    on.setFont(Pen.Type.regular(size));
    on.setTextBaseline(VPos.BOTTOM);
    double down = cy - r * Math.sin(low) + 16 * shade.type();
    on.setTextAlign(TextAlignment.LEFT);
    on.fillText("flat", cx + off, down);
    on.setTextAlign(TextAlignment.RIGHT);
    on.fillText("made", cx - off, down);
  }

  private double x(Vec2 p) {
    return camera.screenX(p);
  }

  private double y(Vec2 p) {
    return camera.screenY(p);
  }
}
