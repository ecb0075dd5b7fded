package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/** Marks that are placed on a page together; their lower left corner is the origin. */
public record Block(double width, double height, List<Mark> marks) {
  static final double LINE = 1.3;

  public Block {
    marks = List.copyOf(marks);
  }

  /** Paragraphs under each other, the first line bold where a heading is wanted. */
  public static Block text(String heading, List<String> paragraphs, double width) {
    record Line(String text, Weight weight, double size, double space) {}
    double size = Lettering.pt(8.5);
    double large = Lettering.pt(heading.length() > 60 ? 10 : 13);
    List<Line> lines = new ArrayList<>();
    for (String line : Lettering.wrap(heading, Weight.BOLD, large, width)) {
      if (!line.isEmpty()) {
        lines.add(new Line(line, Weight.BOLD, large, 0));
      }
    }
    for (String paragraph : paragraphs) {
      double space = lines.isEmpty() ? 0 : 0.9;
      for (String line : Lettering.wrap(paragraph, Weight.REGULAR, size, width)) {
        lines.add(new Line(line, Weight.REGULAR, size, space));
        space = 0;
      }
    }
    double height = lines.stream().mapToDouble(l -> l.size * LINE + l.space).sum();
    double widest =
        lines.stream().mapToDouble(l -> Lettering.width(l.text, l.weight, l.size)).max().orElse(1);
    List<Mark> marks = new ArrayList<>();
    double y = height;
    for (Line line : lines) {
      y -= line.size * LINE + line.space;
      marks.add(
          new Text(
              new Vec2(0, y + line.size * (Lettering.DESCENT + 0.1)),
              line.size,
              0,
              Anchor.START,
              line.weight,
              Ink.BLACK,
              line.text));
    }
    return new Block(widest, height, marks);
  }

  /** The marks at their place; turned a quarter to the left where they run up the page. */
  public List<Mark> at(Box2 place, boolean upright) {
    Motion2 motion =
        upright
            ? Motion2.turn(Math.PI / 2).then(Motion2.shift(new Vec2(place.maxX(), place.minY())))
            : Motion2.shift(new Vec2(place.minX(), place.minY()));
    return marks.stream().map(m -> m.moved(motion)).toList();
  }
}
