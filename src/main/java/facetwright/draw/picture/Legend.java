package facetwright.draw.picture;

import facetwright.draw.Areas;
import facetwright.draw.FillKind;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import java.util.ArrayList;
import java.util.List;

/** Which line means what. */
public final class Legend {
  private static final double SAMPLE = 15;
  private static final double ROW = 4.6;
  private static final double GAP = 5;
  private static final double SIZE = Lettering.pt(8.5);

  private Legend() {}

  /** The kinds in this many columns, row by row. */
  public static Block of(List<LineKind> kinds, int columns, Telling tell) {
    int rows = (kinds.size() + columns - 1) / columns;
    double[] widths = new double[columns];
    for (int i = 0; i < kinds.size(); i++) {
      widths[i / rows] =
          Math.max(
              widths[i / rows],
              SAMPLE + 2 + Lettering.width(label(kinds.get(i), tell), Weight.REGULAR, SIZE));
    }
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < rows && column * rows + row < kinds.size(); row++) {
        entry(marks, kinds.get(column * rows + row), new Vec2(x, (rows - row - 0.5) * ROW), tell);
      }
      x += widths[column] + (widths[column] > 0 && column + 1 < columns ? GAP : 0);
    }
    return new Block(x, rows * ROW, marks);
  }

  /** The same in so many columns, or in fewer where so many are too wide; in one at least. */
  public static Block within(List<LineKind> kinds, int columns, double width, Telling tell) {
    Block legend = of(kinds, columns, tell);
    return columns == 1 || legend.width() <= width
        ? legend
        : within(kinds, columns - 1, width, tell);
  }

  /** The same in so many columns as there may be room for, the narrowest first. */
  public static List<Block> inColumns(List<LineKind> kinds, Telling tell) {
    return List.of(4, 3, 2, 1).stream()
        .map(columns -> of(kinds, Math.min(columns, Math.max(1, kinds.size())), tell))
        .sorted((a, b) -> Double.compare(a.width(), b.width()))
        .toList();
  }

  private static void entry(List<Mark> marks, LineKind kind, Vec2 middle, Telling tell) {
    if (kind == LineKind.GLUE) {
      Polygon2 patch = Polygon2.rectangle(middle.x(), middle.y() - 1.5, SAMPLE, 3);
      marks.add(new Fill(List.of(patch), FillKind.GLUE));
      marks.addAll(Areas.hatch(List.of(patch), 2.5, kind));
    } else {
      double length = kind == LineKind.TICK ? 4 : SAMPLE;
      marks.add(Stroke.line(middle, middle.plus(new Vec2(length, 0)), kind));
    }
    marks.add(
        new Text(
            middle.plus(new Vec2(SAMPLE + 2, -SIZE * Lettering.CAP_HEIGHT / 2)),
            SIZE,
            0,
            Anchor.START,
            Weight.REGULAR,
            Ink.BLACK,
            label(kind, tell)));
  }

  private static String label(LineKind kind, Telling tell) {
    return tell.say("page.line", "kind", kind.id().replace("-", ""));
  }
}
