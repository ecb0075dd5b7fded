package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.papers.guide.ScoreStrip;
import java.util.ArrayList;
import java.util.List;

/** A score strip at true size, upright, its 0 at the top; its ticks reach both long edges. */
public final class ScoreStripPicture {
  public static final double WIDE = 16;
  private static final double TICK = 4.5;
  private static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double HIGH = SIZE * Lettering.CAP_HEIGHT;

  private ScoreStripPicture() {}

  public static Block of(ScoreStrip strip) {
    double length = strip.length();
    List<Mark> marks = new ArrayList<>();
    marks.add(Stroke.around(Polygon2.rectangle(0, 0, WIDE, length), LineKind.CUT));
    marks.add(word(length - 1 - HIGH, "0"));
    double free = length - 1 - HIGH - 1;
    for (ScoreStrip.Tick tick : strip.ticks()) {
      double y = length - tick.at();
      for (double[] ends : new double[][] {{0, TICK}, {WIDE - TICK, WIDE}}) {
        marks.add(Stroke.line(new Vec2(ends[0], y), new Vec2(ends[1], y), LineKind.TICK));
      }
      // Names keep apart where ticks lie close; they stay in order.
      double base = Math.min(y - HIGH / 2, free - HIGH);
      marks.add(word(base, tick.label()));
      free = base - 0.6;
    }
    return new Block(WIDE, length, marks);
  }

  private static Text word(double base, String content) {
    return new Text(
        new Vec2(WIDE / 2, base), SIZE, 0, Anchor.MIDDLE, Weight.BOLD, Ink.BLACK, content);
  }
}
