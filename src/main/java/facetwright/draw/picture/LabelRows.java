package facetwright.draw.picture;

import facetwright.draw.LabelSetting;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Labels of paper at true size, level, in rows to be cut out. */
public final class LabelRows {
  private LabelRows() {}

  /**
   * @param copies how often each is printed
   * @param width of a row, in mm; a label that is wider stands in a row by itself
   * @param gap between two of them, in mm
   */
  public static List<Block> of(List<LabelSetting> labels, int copies, double width, double gap) {
    List<Block> all = new ArrayList<>();
    labels.forEach(l -> all.addAll(Collections.nCopies(copies, level(l))));
    List<Block> rows = new ArrayList<>();
    List<Block> row = new ArrayList<>();
    for (Block one : all) {
      double taken = row.stream().mapToDouble(b -> b.width() + gap).sum();
      if (!row.isEmpty() && taken + one.width() > width) {
        rows.add(beside(row, gap));
        row.clear();
      }
      row.add(one);
    }
    if (!row.isEmpty()) {
      rows.add(beside(row, gap));
    }
    return rows;
  }

  /** Turned back from how it lies in the net, its lower left corner at the origin. */
  private static Block level(LabelSetting set) {
    Vec2 along = set.outline().side(0).direction();
    Motion2 back = Motion2.turn(-Math.atan2(along.y(), along.x()));
    Polygon2 outline = back.apply(set.outline());
    Box2 box = outline.box();
    Motion2 motion = back.then(Motion2.shift(new Vec2(-box.minX(), -box.minY())));
    List<Mark> marks = new ArrayList<>();
    marks.add(Stroke.around(motion.apply(set.outline()), LineKind.CUT));
    set.lines().forEach(t -> marks.add(t.moved(motion)));
    return new Block(box.width(), box.height(), marks);
  }

  private static Block beside(List<Block> row, double gap) {
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    double tall = 0;
    for (Block one : row) {
      Motion2 shift = Motion2.shift(new Vec2(x, 0));
      one.marks().forEach(m -> marks.add(m.moved(shift)));
      x += one.width() + gap;
      tall = Math.max(tall, one.height());
    }
    return new Block(x - gap, tall, marks);
  }
}
