package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.List;

/**
 * Marks made smaller or larger about the origin. Lines keep their width and their dashes; words are
 * left out, since they would not stay readable. Corners that would be seen by less than 0.01 mm are
 * left out, too: of a hole's 48 a small picture shows a dozen.
 */
public final class Scaling {
  /** Round what is fitted, for lines to keep their width, in mm. */
  private static final double ROOM = 1;

  /** A line that is off by less looks the same at the finest print, in mm. */
  private static final double UNSEEN = 0.01;

  /** What goes so often into its place, or more, is shown larger than life. */
  private static final double SMALL = 3;

  private static final double WORDS = Lettering.pt(Lettering.SMALLEST_PT);

  /** No more corners in a row are left out. */
  private static final int ROW = 32;

  private final double factor;

  public Scaling(double factor) {
    this.factor = factor;
  }

  /**
   * How large a picture is shown beside life: a thing that finds room in its place is not made
   * larger, but for one so small that it would be lost there.
   *
   * @param room how many times the thing goes into its place
   * @return {@code room} where it is under 1, a whole number from 2 up for what is small, else 1
   */
  static double shown(double room) {
    return room < SMALL ? Math.min(1, room) : Math.floor(room);
  }

  /** A picture that is larger than life, with words that say so beneath it; any other as it is. */
  static Block told(Block picture, double scale, Telling tell) {
    if (scale <= 1) {
      return picture;
    }
    String words = tell.say("page.larger", "times", (int) Math.round(scale));
    double wide = Lettering.width(words, Mark.Weight.REGULAR, WORDS);
    double width = Math.max(picture.width(), wide);
    Vec2 shift = new Vec2((width - picture.width()) / 2, WORDS * Block.LINE);
    List<Mark> marks = new ArrayList<>();
    picture.marks().forEach(m -> marks.add(m.moved(Motion2.shift(shift))));
    marks.add(
        new Mark.Text(
            new Vec2(width / 2, WORDS * Lettering.DESCENT),
            WORDS,
            0,
            Mark.Anchor.MIDDLE,
            Mark.Weight.REGULAR,
            Ink.BLACK,
            words));
    return new Block(width, picture.height() + shift.y(), marks);
  }

  /** What lies in a box, made about as large as so wide and high, see {@link #shown}. */
  public static Block fitted(
      List<? extends Mark> marks, Box2 box, double width, double height, Telling tell) {
    Fit fit = Fit.of(box, width, height);
    return told(new Block(fit.width(), fit.height(), fit.of(marks)), fit.scale(), tell);
  }

  /**
   * How a box is made to fit a place.
   *
   * @param box what is to be shown, in mm
   * @param scale see {@link #shown}
   */
  record Fit(Box2 box, double scale) {
    static Fit of(Box2 box, double width, double height) {
      double wide = (width - 2 * ROOM) / Math.max(box.width(), LengthTolerance.UNSEEN.mm());
      double high = (height - 2 * ROOM) / Math.max(box.height(), LengthTolerance.UNSEEN.mm());
      return new Fit(box, shown(Math.min(wide, high)));
    }

    double width() {
      return box.width() * scale + 2 * ROOM;
    }

    double height() {
      return box.height() * scale + 2 * ROOM;
    }

    Vec2 at(Vec2 place) {
      return place.times(scale).plus(shift());
    }

    private Vec2 shift() {
      return new Vec2(ROOM - box.minX() * scale, ROOM - box.minY() * scale);
    }

    public List<Mark> of(List<? extends Mark> marks) {
      Motion2 motion = Motion2.shift(shift());
      return new Scaling(scale).of(marks).stream().map(m -> m.moved(motion)).toList();
    }
  }

  public List<Mark> of(List<? extends Mark> marks) {
    List<Mark> scaled = new ArrayList<>();
    for (Mark mark : marks) {
      Pace.step();
      switch (mark) {
        case Mark.Stroke s -> scaled.add(stroke(s));
        case Mark.Circle c ->
            scaled.add(new Mark.Circle(c.centre().times(factor), c.radius() * factor, c.kind()));
        case Mark.Fill f -> scaled.add(new Mark.Fill(rings(f.rings()), f.kind()));
        case Mark.Patch p ->
            scaled.add(
                new Mark.Patch(
                    rings(p.rings()),
                    p.ink(),
                    p.edges().stream().map(this::stroke).toList(),
                    p.part()));
        case Mark.Text _ -> {}
      }
    }
    return scaled;
  }

  private Mark.Stroke stroke(Mark.Stroke s) {
    return new Mark.Stroke(points(s.points()), s.closed(), s.kind());
  }

  private List<Vec2> points(List<Vec2> points) {
    return seen(points.stream().map(p -> p.times(factor)).toList());
  }

  private List<Polygon2> rings(List<Polygon2> rings) {
    return rings.stream().map(this::ring).toList();
  }

  private Polygon2 ring(Polygon2 ring) {
    return Polygon2.wide(points(ring.corners()))
        .orElseGet(() -> new Polygon2(ring.corners().stream().map(p -> p.times(factor)).toList()));
  }

  /** Without the corners that are not seen; first and last stay. */
  private static List<Vec2> seen(List<Vec2> points) {
    if (points.size() < 3) {
      return points;
    }
    List<Vec2> kept = new ArrayList<>(List.of(points.getFirst()));
    int from = 0;
    for (int i = 1; i + 1 < points.size(); i++) {
      Segment2 across = new Segment2(points.get(from), points.get(i + 1));
      boolean isSeen =
          i - from >= ROW
              || points.subList(from + 1, i + 1).stream()
                  .anyMatch(p -> across.distance(p) > UNSEEN);
      if (isSeen) {
        kept.add(points.get(i));
        from = i;
      }
    }
    kept.add(points.getLast());
    return kept;
  }
}
