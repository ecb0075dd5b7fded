package facetwright.net;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What the blade or punch takes out of the inside of a panel. What is no {@link Hole} is drawn,
 * told and cut along its outline.
 */
public sealed interface Opening extends Serializable {
  /**
   * The narrowest that a knife takes a strip of card out, in mm: two strokes nearer than this meet;
   * common practice, no source.
   */
  double NARROWEST = 1;

  Site site();

  /** What a maker calls it. */
  default String word() {
    return switch (this) {
      case Hole _ -> "hole";
      case Window _ -> "window";
      case Slot _ -> "slot";
    };
  }

  /** What is glued behind it; often nothing. */
  default List<Backing> behind() {
    return this instanceof Window w ? w.backing : List.of();
  }

  /** Whence it was measured. */
  Datum datum();

  /** The outline taken away; a hole's is a polygon of 48 sides around it (0.2 % in radius). */
  Polygon2 outline();

  /** The same when its panel is moved. */
  Opening moved(Motion2 motion);

  /** As seen in a mirror; the first side of an outline stays it. */
  Opening mirrored();

  /** The same when its panel is made larger about the origin. */
  Opening scaled(double factor);

  /** How much card is left between it and a line outside it, in mm. */
  double room(Segment2 line);

  /** In mm². */
  double area();

  /** A place that lies in it or on its edge. */
  Vec2 place();

  /**
   * Cut with the knife.
   *
   * @param backing what is glued behind it; often nothing
   */
  record Window(Polygon2 outline, Datum datum, List<Backing> backing, Site site)
      implements Opening {
    public Window {
      backing = List.copyOf(backing);
    }

    /** One with nothing behind it. */
    public Window(Polygon2 outline, Datum datum, Site site) {
      this(outline, datum, List.of(), site);
    }

    /** One measured where it lies. */
    public Window(Polygon2 outline, Site site) {
      this(outline, Datum.HERE, site);
    }

    /** The same with this behind it, in place of what was. */
    public Window backed(Backing with) {
      return new Window(outline, datum, List.of(with), site);
    }

    @Override
    public Window moved(Motion2 motion) {
      return new Window(motion.apply(outline), datum.then(motion), backing, site);
    }

    @Override
    public Window mirrored() {
      return new Window(outline.mirrored(), datum.mirrored(), backing, site);
    }

    @Override
    public Window scaled(double factor) {
      return new Window(outline.taken(c -> c.times(factor)), datum.scaled(factor), backing, site);
    }

    @Override
    public double room(Segment2 line) {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < outline.size() && least > 0; i++) {
        least = Math.min(least, outline.side(i).distance(line));
      }
      return least > 0
              && outline.box().meets(Box2.around(List.of(line.from())))
              && outline.contains(line.from())
          ? 0
          : least;
    }

    @Override
    public double area() {
      return outline.area();
    }

    @Override
    public Vec2 place() {
      return outline.corner(0);
    }
  }

  /**
   * Cut with the knife for a tongue to go through: a rectangle, or where it would be narrower than
   * a knife cuts a single line, which gives way to card that is no thicker than that.
   *
   * @param outline its first side runs along it
   */
  record Slot(Polygon2 outline, Datum datum, Site site) implements Opening {

    /** One along a line, half of its width on either side. */
    public static Slot along(Segment2 line, double width, Site site) {
      Vec2 half = line.direction().left().times(width / 2);
      return new Slot(
          new Polygon2(
              List.of(
                  line.from().minus(half),
                  line.to().minus(half),
                  line.to().plus(half),
                  line.from().plus(half))),
          Datum.HERE,
          site);
    }

    /** The line along its middle. */
    public Segment2 line() {
      return new Segment2(outline.side(3).middle(), outline.side(1).middle());
    }

    /** Whether it is cut as a single line. */
    public boolean isLine() {
      return width() < NARROWEST - LengthTolerance.FINE.mm();
    }

    /** How thick the card may be that goes through, in mm. */
    public double passes() {
      return isLine() ? NARROWEST : width();
    }

    /** How wide it is, in mm; as a single line how far it opens. */
    public double width() {
      return outline.side(1).length();
    }

    @Override
    public Slot moved(Motion2 motion) {
      return new Slot(motion.apply(outline), datum.then(motion), site);
    }

    @Override
    public Slot mirrored() {
      return new Slot(outline.mirrored(), datum.mirrored(), site);
    }

    @Override
    public Slot scaled(double factor) {
      return new Slot(outline.taken(c -> c.times(factor)), datum.scaled(factor), site);
    }

    @Override
    public double room(Segment2 line) {
      return new Window(outline, site).room(line);
    }

    @Override
    public double area() {
      return outline.area();
    }

    @Override
    public Vec2 place() {
      return outline.corner(0);
    }
  }

  /**
   * Punched.
   *
   * @param diameter over 0, in mm
   */
  record Hole(Vec2 centre, double diameter, Datum datum, Site site) implements Opening {
    private static final int SIDES = 48;

    /** The corners about the origin, at a radius of 1: asked for too often to be reckoned anew. */
    private static final List<Vec2> ROUND =
        IntStream.range(0, SIDES).mapToObj(i -> Vec2.polar(1, 2 * Math.PI * i / SIDES)).toList();

    public Hole {
      if (!(diameter > 0) || Double.isInfinite(diameter)) {
        throw new IllegalArgumentException("a hole's diameter must be over 0 mm, not " + diameter);
      }
    }

    /** One measured where it lies. */
    public Hole(Vec2 centre, double diameter, Site site) {
      this(centre, diameter, Datum.HERE, site);
    }

    @Override
    public Polygon2 outline() {
      double radius = diameter / 2 / Math.cos(Math.PI / SIDES);
      return new Polygon2(ROUND.stream().map(c -> centre.plus(c.times(radius))).toList());
    }

    @Override
    public Hole moved(Motion2 motion) {
      return new Hole(motion.apply(centre), diameter, datum.then(motion), site);
    }

    @Override
    public Hole mirrored() {
      return new Hole(centre.mirrored(), diameter, datum.mirrored(), site);
    }

    @Override
    public Hole scaled(double factor) {
      return new Hole(centre.times(factor), diameter * factor, datum.scaled(factor), site);
    }

    @Override
    public double room(Segment2 line) {
      return Math.max(0, line.distance(centre) - diameter / 2);
    }

    /** That of its outline. */
    @Override
    public double area() {
      return SIDES * Math.tan(Math.PI / SIDES) * diameter * diameter / 4;
    }

    @Override
    public Vec2 place() {
      return centre;
    }
  }
}
