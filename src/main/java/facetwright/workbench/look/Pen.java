package facetwright.workbench.look;

import facetwright.draw.Drawing;
import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * Puts drawings on a canvas.
 *
 * @param trueWidths whether lines are as wide as on paper, or of even width at any zoom
 */
public record Pen(GraphicsContext on, Camera camera, boolean trueWidths) {
  /** Pixels on the screen for a millimetre of dash or width where lines keep their width. */
  private static final double PIXELS = 3.2;

  /**
   * Lettering smaller than this is left out: on paper only specks, on the screen all unreadable.
   */
  private static final double LEAST_SPECK = 3;

  private static final double LEAST_TYPE = 6;

  /** A colour of the screen. */
  public static Color colour(Ink ink) {
    return colour(ink, 1);
  }

  /** The same, seen through: 1 is opaque. */
  public static Color colour(Ink ink, double opacity) {
    return Color.rgb(ink.red(), ink.green(), ink.blue(), opacity);
  }

  /** Paints all marks of a drawing whose lower left corner lies at a place of the plane. */
  public void paint(Drawing drawing, Vec2 corner) {
    Camera there = new Camera(camera.scale(), camera.screenX(corner), camera.screenY(corner));
    new Pen(on, there, trueWidths).paintAll(drawing.marks());
  }

  /** Paints marks where they are. */
  public void paintAll(List<? extends Mark> marks) {
    // Lines of one kind in a row, such as those of a hatch, make one path: painted at one go.
    LineKind open = null;
    for (Mark mark : marks) {
      LineKind kind = mark instanceof Mark.Stroke stroke ? stroke.kind() : null;
      if (open != null && kind != open) {
        on.stroke();
      }
      if (mark instanceof Mark.Stroke stroke) {
        if (kind != open) {
          style(kind);
          on.beginPath();
        }
        trace(stroke);
      } else {
        mark(mark);
      }
      open = kind;
    }
    if (open != null) {
      on.stroke();
    }
  }

  private void mark(Mark mark) {
    switch (mark) {
      case Mark.Stroke stroke -> paintAll(List.of(stroke));
      case Mark.Circle(Vec2 c, double r, LineKind kind) -> {
        style(kind);
        double d = 2 * r * camera.scale();
        on.strokeOval(camera.screenX(c) - d / 2, camera.screenY(c) - d / 2, d, d);
      }
      case Mark.Fill fill -> {
        on.setFill(colour(fill.kind().ink()));
        area(fill.rings());
      }
      case Mark.Patch patch -> {
        on.setFill(colour(patch.ink()));
        area(patch.rings());
        paintAll(patch.edges());
      }
      case Mark.Text text -> text(text);
    }
  }

  private void area(List<Polygon2> rings) {
    on.setFillRule(FillRule.EVEN_ODD);
    on.beginPath();
    for (Polygon2 ring : rings) {
      trace(ring.corners());
      on.closePath();
    }
    on.fill();
  }

  private void trace(Mark.Stroke stroke) {
    trace(stroke.points());
    if (stroke.closed()) {
      on.closePath();
    }
  }

  private void trace(List<Vec2> points) {
    on.moveTo(camera.screenX(points.getFirst()), camera.screenY(points.getFirst()));
    for (Vec2 p : points.subList(1, points.size())) {
      on.lineTo(camera.screenX(p), camera.screenY(p));
    }
  }

  private void style(LineKind kind) {
    double unit = trueWidths ? camera.scale() : PIXELS;
    on.setStroke(colour(kind.ink()));
    on.setLineWidth(Math.max(kind.width() * unit, trueWidths ? 0.25 : 0.6));
    on.setLineCap(StrokeLineCap.BUTT);
    on.setLineJoin(StrokeLineJoin.ROUND);
    double[] dashes = new double[kind.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = kind.dashes().get(i) * unit;
    }
    on.setLineDashes(dashes);
    on.setLineDashOffset(0);
  }

  private void text(Mark.Text text) {
    double size = text.size() * camera.scale();
    if (size < (trueWidths ? LEAST_SPECK : LEAST_TYPE)) {
      return;
    }
    on.save();
    on.translate(camera.screenX(text.at()), camera.screenY(text.at()));
    on.rotate(-text.angle());
    on.setFill(colour(text.ink()));
    on.setFont(text.weight() == Mark.Weight.BOLD ? Type.bold(size) : Type.regular(size));
    on.setTextBaseline(VPos.BASELINE);
    on.setTextAlign(
        switch (text.anchor()) {
          case START -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case END -> TextAlignment.RIGHT;
        });
    on.fillText(text.content(), 0, 0);
    on.restore();
  }

  /** The typefaces that come with the program. */
  public static final class Type {
    private static final String SANS = load("/fonts/FacetwrightSans-Regular.ttf");
    private static final String BOLD = load("/fonts/FacetwrightSans-Bold.ttf");
    private static final String MONO = load("/fonts/FacetwrightMono-Regular.ttf");

    private Type() {}

    private static String load(String resource) {
      Font font = Font.loadFont(Pen.class.getResource(resource).toExternalForm(), 12);
      return font == null ? "System" : font.getFamily();
    }

    /** Loads them, so that style sheets can name them. */
    public static void ready() {
      if (SANS.isEmpty() || BOLD.isEmpty() || MONO.isEmpty()) {
        throw new IllegalStateException("a typeface has no name");
      }
    }

    public static Font regular(double size) {
      return Font.font(SANS, size);
    }

    public static Font bold(double size) {
      return Font.font(BOLD, javafx.scene.text.FontWeight.BOLD, size);
    }
  }
}
