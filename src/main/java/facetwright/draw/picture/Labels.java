package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Words on a picture: none lies on another, and none runs off. */
final class Labels {
  static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);

  /** Of capitals and figures, in mm. */
  static final double HIGH = SIZE * Lettering.CAP_HEIGHT;

  /** Round a number that is ringed, in mm. */
  static final double RING = 2.3;

  /** Round a ring that stands on what it is of, in radii of it, so that the glue shows. */
  private static final double ROOMY = 1.7;

  /** A patch of lines alone has an area that is not seen, in mm. */
  private static final double SPECK = 0.02;

  private static final int WAYS = 24;

  /** Of what is drawn over a piece and is none of its panels. */
  static final int NO_PART = -1;

  /** Kept clear round words, in mm. */
  private static final double CLEAR = 0.25;

  /** How far from its place a word may stand, nearest first, in mm. */
  private static final double[] AWAY = {0.8, 1.6, 2.6, 4, 5.5, 7, 9, 12, 15};

  /** From here on a line leads from the word to its place. */
  private static final double LED = 2.2;

  private static final double[] BESIDE = {0, 0.5, 1, 0.25, 0.75};

  private final Box2 bounds;
  private final List<Mark> marks;
  private final List<Box2> taken = new ArrayList<>();

  /**
   * @param bounds of the picture
   * @param marks to which words are added
   */
  Labels(Box2 bounds, List<Mark> marks) {
    this.bounds = bounds;
    this.marks = marks;
  }

  static double wide(String text, Weight weight) {
    return Lettering.width(text, weight, SIZE);
  }

  /** Keeps a place free of words. */
  void take(Box2 box) {
    taken.add(box);
  }

  private boolean isFree(Box2 box) {
    return bounds.holds(box, LengthTolerance.FINE)
        && taken.stream().noneMatch(box.grown(CLEAR)::meets);
  }

  /**
   * Level words in the middle of a place.
   *
   * @return whether they find room there
   */
  boolean level(String text, Vec2 middle, Weight weight, Ink ink) {
    double wide = wide(text, weight);
    Box2 box = around(middle, wide, HIGH);
    Vec2 start = new Vec2(box.minX(), box.minY());
    return set(box, new Text(start, SIZE, 0, Anchor.START, weight, ink, text));
  }

  /** Words that run up the page, in the middle of a place. */
  boolean upright(String text, Vec2 middle, Weight weight, Ink ink) {
    double length = wide(text, weight);
    Box2 box = around(middle, /* wide= */ HIGH, /* high= */ length);
    Vec2 start = new Vec2(box.maxX(), box.minY());
    return set(box, new Text(start, SIZE, 90, Anchor.START, weight, ink, text));
  }

  private boolean set(Box2 box, Text text) {
    boolean isFree = isFree(box);
    if (isFree) {
      taken.add(box);
      marks.add(text);
    }
    return isFree;
  }

  private static Box2 around(Vec2 middle, double wide, double high) {
    return new Box2(
        middle.x() - wide / 2, middle.y() - high / 2, middle.x() + wide / 2, middle.y() + high / 2);
  }

  /**
   * A number in a ring: on what it is of where that has room enough about it, else beside it, away
   * from a middle if that goes; a line leads to it.
   *
   * @param of outline of what it is of
   * @param place on it with the most room
   * @param far how far from there it may stand, in mm
   * @return whether it finds room at all
   */
  boolean ringed(String text, Polygon2 of, Vec2 place, Vec2 middle, double far) {
    double room =
        IntStream.range(0, of.size()).mapToDouble(i -> of.side(i).distance(place)).min().orElse(0);
    if (room > ROOMY * RING && ring(text, place)) {
      return true;
    }
    Vec2 out = place.minus(middle);
    double ahead = out.length() == 0 ? Math.PI / 2 : Math.atan2(out.y(), out.x());
    for (double away = RING; away < far; away += RING / 2) {
      for (int i = 0; i < WAYS; i++) {
        int aside = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
        Vec2 at = place.plus(Vec2.polar(away, ahead + 2 * Math.PI * aside / WAYS));
        boolean isBeside =
            !of.contains(at)
                && IntStream.range(0, of.size())
                    .allMatch(s -> of.side(s).distance(at) > RING + CLEAR);
        if (isBeside && ring(text, at)) {
          Vec2 toward = place.minus(at).unit();
          marks.add(over(List.of(Stroke.line(at.plus(toward.times(RING)), place, LineKind.GUIDE))));
          return true;
        }
      }
    }
    return false;
  }

  /** A number without a ring, at a place or near it with a line that leads to it. */
  void plain(String text, Vec2 place) {
    if (level(text, place, Weight.REGULAR, Ink.BLACK)) {
      return;
    }
    double wide = wide(text, Weight.REGULAR);
    for (double away : AWAY) {
      for (Box2 box : round(place, away, wide, HIGH)) {
        if (isFree(box)) {
          taken.add(box);
          if (away >= LED) {
            Stroke line = Stroke.line(nearest(box, place), place, LineKind.DONE);
            marks.add(over(List.of(line)));
          }
          Vec2 start = new Vec2(box.minX(), box.minY());
          marks.add(new Text(start, SIZE, 0, Anchor.START, Weight.REGULAR, Ink.BLACK, text));
          return;
        }
      }
    }
  }

  /** Lines over a picture of patches, which would hide them. */
  static Mark.Patch over(List<Stroke> lines) {
    Polygon2 speck = Polygon2.regular(lines.getFirst().points().getFirst(), 3, SPECK, 0);
    return new Mark.Patch(List.of(speck), Ink.BLACK, lines, NO_PART);
  }

  private boolean ring(String text, Vec2 middle) {
    Box2 box = around(middle, 2 * RING, 2 * RING);
    if (!isFree(box)) {
      return false;
    }
    taken.add(box);
    marks.add(
        new Mark.Patch(
            List.of(Polygon2.regular(middle, 24, RING, 0)),
            Ink.CARD,
            List.of(Stroke.around(Polygon2.regular(middle, 24, RING, 0), LineKind.GUIDE)),
            NO_PART));
    Vec2 foot = middle.minus(new Vec2(0, HIGH / 2));
    marks.add(new Text(foot, SIZE, 0, Anchor.MIDDLE, Weight.BOLD, Ink.BLACK, text));
    return true;
  }

  /**
   * Words as near to a place as they find room; from farther off a line leads to it.
   *
   * @param patch whether lines behind them are covered
   * @return whether they find room at all
   */
  boolean near(String text, Vec2 place, Weight weight, boolean patch) {
    return near(text, place, weight, patch, Optional.empty());
  }

  /**
   * The same beside something.
   *
   * @param off what the words keep off
   */
  boolean near(String text, Vec2 place, Weight weight, boolean patch, Optional<Box2> off) {
    double wide = wide(text, weight);
    for (double away : AWAY) {
      for (Box2 box : round(place, away, wide, HIGH)) {
        if (isFree(box) && off.filter(box::meets).isEmpty()) {
          taken.add(box);
          if (patch) {
            Box2 under = box.grown(CLEAR);
            marks.add(
                new Mark.Patch(
                    List.of(
                        Polygon2.rectangle(
                            under.minX(), under.minY(), under.width(), under.height())),
                    Ink.CARD,
                    List.of(),
                    0));
          }
          if (away >= LED) {
            marks.add(Stroke.line(nearest(box, place), place, LineKind.DONE));
          }
          Vec2 start = new Vec2(box.minX(), box.minY());
          marks.add(new Text(start, SIZE, 0, Anchor.START, weight, Ink.BLACK, text));
          return true;
        }
      }
    }
    return false;
  }

  /** Places for words so far from a place: above, below, right and left of it. */
  private static List<Box2> round(Vec2 p, double away, double wide, double high) {
    List<Box2> all = new ArrayList<>();
    for (double part : BESIDE) {
      double left = p.x() - away + (part - 1) * wide + (1 - part) * 2 * away;
      all.add(new Box2(left, p.y() + away, left + wide, p.y() + away + high));
      all.add(new Box2(left, p.y() - away - high, left + wide, p.y() - away));
      double low = p.y() - away + (part - 1) * high + (1 - part) * 2 * away;
      all.add(new Box2(p.x() + away, low, p.x() + away + wide, low + high));
      all.add(new Box2(p.x() - away - wide, low, p.x() - away, low + high));
    }
    return all;
  }

  private static Vec2 nearest(Box2 box, Vec2 p) {
    return new Vec2(
        Math.clamp(p.x(), box.minX(), box.maxX()), Math.clamp(p.y(), box.minY(), box.maxY()));
  }
}
