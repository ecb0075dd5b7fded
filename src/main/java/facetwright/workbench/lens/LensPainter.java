package facetwright.workbench.lens;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Ink;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.fold.pose.Vertices;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Pen;
import facetwright.workbench.look.Shade;
import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
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

  /** What the end of the way is called: of one thing, and of parts that come together. */
  private static final String MADE = "made";

  private static final String WHOLE = "whole";

  /** How large the stop is drawn at which parts are made and stand apart, in pixels. */
  private static final double STOP = 4;

  /** In so many straight pieces the slider is drawn; none is seen as such. */
  private static final int PIECES = 90;

  /** How much of the slider's end its knob covers, in pixels. */
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
      boolean inSight =
          drawing.isOutsideSeen(score.a().panel(), from)
              && drawing.isOutsideSeen(score.b().panel(), from);
      if (!score.isOfTab(net) && inSight) {
        List<Vec2> seen = drawing.side(score.a(), from);
        Vec2 middle = seen.getFirst().toward(seen.getLast(), 0.5);
        label(degrees(teaching.dihedrals().get(s)), middle, Pen.colour(Ink.TEAL));
      }
    }
    for (Vertices.Vertex vertex : teaching.vertices()) {
      boolean inSight =
          vertex.closed()
              && vertex.corners().stream().anyMatch(c -> drawing.isOutsideSeen(c.panel(), from));
      if (inSight) {
        label("Σ " + degrees(vertex.angleSum()), from.seen(vertex.place()), Pen.colour(Ink.PLUM));
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
    on.setFill(Pen.colour(Ink.CARD, 0.92));
    on.fillRoundRect(x(place) - wide / 2, y(place) - high / 2, wide, high, 6, 6);
    on.setFill(colour);
    on.fillText(words, x(place), y(place));
  }

  /**
   * The way from flat to made, as a slider.
   *
   * @param gathers whether parts come together on its last stretch
   */
  void way(FoldSlider way, double made, boolean focused, boolean gathers) {
    on.setLineCap(StrokeLineCap.ROUND);
    on.setLineJoin(StrokeLineJoin.ROUND);
    on.setLineDashes();
    on.setLineWidth(3);
    rail(way, 1, shade.edge());
    rail(way, made, shade.selection());
    if (gathers) {
      Vec2 apart = way.at(FoldPath.APART);
      on.setFill(made < FoldPath.APART ? shade.edge() : shade.selection());
      on.fillOval(apart.x() - STOP, apart.y() - STOP, 2 * STOP, 2 * STOP);
    }
    Vec2 knob = way.at(made);
    on.setFill(shade.paper());
    on.fillOval(knob.x() - 8, knob.y() - 8, 16, 16);
    on.setStroke(focused ? shade.words() : shade.selection());
    on.setLineWidth(2.5);
    on.strokeOval(knob.x() - 8, knob.y() - 8, 16, 16);
    on.setFill(shade.quiet());
    on.setFont(Pen.Type.regular(TYPE * shade.type()));
    switch (way) {
      case Rim rim -> insideOf(rim, gathers ? WHOLE : MADE);
      case Rule rule -> beside(rule, gathers ? WHOLE : MADE);
    }
  }

  /** The part of the way that leads from flat so far. */
  private void rail(FoldSlider way, double to, Color colour) {
    on.setStroke(colour);
    on.beginPath();
    Vec2 start = way.at(0);
    on.moveTo(start.x(), start.y());
    for (int i = 1; i <= PIECES; i++) {
      Vec2 next = way.at(to * i / PIECES);
      on.lineTo(next.x(), next.y());
    }
    on.stroke();
  }

  /** What the rim's ends mean, inside of its knob; in a small glass there is no room for it. */
  private void insideOf(Rim rim, String last) {
    double size = TYPE * shade.type();
    Vec2 flat = rim.at(0);
    double x = flat.x() + KNOB;
    if (width / 2 - x < WORD * size) {
      return;
    }
    on.setTextBaseline(VPos.BOTTOM);
    ends(x, width - x, flat.y() + 16 * shade.type(), TextAlignment.LEFT, last, TextAlignment.RIGHT);
  }

  /** What the rule's ends mean, before and after it. */
  private void beside(Rule rule, String last) {
    Vec2 flat = rule.at(0);
    on.setTextBaseline(VPos.CENTER);
    double made = rule.at(1).x() + KNOB;
    ends(flat.x() - KNOB, made, flat.y(), TextAlignment.RIGHT, last, TextAlignment.LEFT);
  }

  private void ends(
      double flat, double made, double y, TextAlignment first, String end, TextAlignment last) {
    on.setTextAlign(first);
    on.fillText("flat", flat, y);
    on.setTextAlign(last);
    on.fillText(end, made, y);
  }

  private double x(Vec2 p) {
    return camera.screenX(p);
  }

  private double y(Vec2 p) {
    return camera.screenY(p);
  }
}
