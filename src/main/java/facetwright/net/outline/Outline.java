package facetwright.net.outline;

import facetwright.geom.Arc;
import facetwright.geom.Box2;
import facetwright.geom.Corner;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundCorners;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.net.Shapes;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A closed outline that neither crosses nor touches itself, its corners counter-clockwise, each
 * sharp or rounded. Immutable; every change is a new one.
 *
 * @param corners of the outline, side {@code i} running from corner {@code i} to the next
 */
public record Outline(List<Corner> corners) implements Serializable {
  public Outline {
    corners = List.copyOf(corners);
  }

  /** One of sharp corners; clockwise ones are turned, the first stays first. */
  public static Outline through(List<Vec2> corners, Site site) {
    return sharp(Shapes.outline("the outline", corners, site).corners());
  }

  /** A rectangle about its middle. */
  public static Outline rectangle(double width, double height, Site site) {
    return through(Polygon2.rectangle(-width / 2, -height / 2, width, height).corners(), site);
  }

  /**
   * Equal sides about the middle, side 1 at the front.
   *
   * @param radius from the middle to a corner, in mm
   */
  public static Outline regular(int sides, double radius, Site site) {
    double first = -Math.PI / 2 - Math.PI / sides;
    return through(Polygon2.regular(Vec2.ZERO, sides, radius, first).corners(), site);
  }

  /** A circle: a square rounded so far that nothing straight is left. */
  public static Outline circle(double across, Site site) {
    return new Outline(
        rectangle(across, across, site).corners.stream()
            .map(c -> new Corner(c.at(), across / 2))
            .toList());
  }

  /**
   * A star about its middle, a point straight up.
   *
   * @param across the circle through its points
   * @param inner how far out the corners between them lie, as a part of that of the points
   */
  public static Outline star(int points, double across, double inner, Site site) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < 2 * points; i++) {
      double radius = across / 2 * (i % 2 == 0 ? 1 : inner);
      corners.add(Vec2.polar(radius, Math.PI / 2 + i * Math.PI / points));
    }
    return through(corners, site);
  }

  static Outline sharp(List<Vec2> corners) {
    return new Outline(corners.stream().map(Corner::new).toList());
  }

  int size() {
    return corners.size();
  }

  Corner corner(int index) {
    return corners.get(Math.floorMod(index, corners.size()));
  }

  /** Whether any corner is rounded. */
  boolean isRound() {
    return corners.stream().anyMatch(Corner::isRound);
  }

  /** Its sides drawn out to sharp corners. */
  public List<Vec2> sharpCorners() {
    return corners.stream().map(Corner::at).toList();
  }

  /** As it is cut: with the arcs that its sides stand for. */
  public Polygon2 polygon() {
    return RoundCorners.polygon(corners).orElseThrow();
  }

  /**
   * Each side set off outward, below 0 inward; a round corner stays round about the same middle and
   * is sharp once that is reached.
   *
   * @throws NetException when a side would vanish or it would cross itself, with the most there is
   */
  public Outline offset(double by, Site site) {
    return Offset.of(this, by, site);
  }

  /**
   * Corners rounded by arcs that meet their sides.
   *
   * @param which of the corners, from 1; all where empty
   * @throws NetException when the arcs do not find room, with the most that do
   */
  public Outline rounded(double radius, List<Integer> which, Site site) {
    which.forEach(c -> Ask.count("a corner of the outline", c, 1, size(), site));
    return Rounding.of(
        this,
        radius,
        IntStream.range(0, size())
            .filter(c -> which.isEmpty() || which.contains(c + 1))
            .boxed()
            .toList(),
        site);
  }

  /** Each round corner made of so many straight sides that meet on its arc. */
  public Outline faceted(int sides) {
    List<Vec2> all = new ArrayList<>();
    for (int c = 0; c < size(); c++) {
      all.addAll(
          corner(c).isRound() ? RoundCorners.places(corners, c, sides) : List.of(corner(c).at()));
    }
    return sharp(Polygon2.distinct(all));
  }

  /** Left to right about the upright line through the middle it is given by. Side 1 stays it. */
  public Outline mirrored() {
    List<Corner> all = new ArrayList<>();
    for (int c = 0; c < size(); c++) {
      Corner from = corner(1 - c);
      all.add(new Corner(from.at().mirrored(), from.radius()));
    }
    return new Outline(all);
  }

  /** Turned counter-clockwise about the middle it is given by. */
  public Outline turned(double degrees) {
    Motion2 turn = Motion2.turn(Math.toRadians(degrees));
    return new Outline(
        corners.stream().map(c -> new Corner(turn.apply(c.at()), c.radius())).toList());
  }

  /** The box around it, arcs and all; its round sides count by their corners, to 0.02 mm. */
  public Box2 box() {
    return polygon().box();
  }

  /** What it encloses, in mm², arcs and all. */
  public double area() {
    return new Polygon2(sharpCorners()).area() - Rounding.lost(this);
  }

  /**
   * Its corners for what is folded along every side.
   *
   * @param what is to be made of it, such as "prism"
   * @throws NetException when a corner is round, or lies on a straight side
   */
  public List<Vec2> folded(String what, Site site) {
    if (isRound()) {
      Polygon2 cut = polygon();
      Arc first = cut.arcs().getFirst();
      int sides = cut.arcs().stream().mapToInt(Arc::sides).sum();
      int round = cut.arcs().size();
      throw new NetException(
          Message.of(
              "a %s is folded along straight sides only, and the %s of this outline would be %s"
                  + " sides of %s: round it by few straight ones, .rounded(radius, { sides: 3 })",
              what,
              Arc.circle(cut.arcs(), cut.size()).isPresent()
                  ? "circle"
                  : round == 1 ? "round corner" : round + " round corners",
              Value.count(sides),
              Value.length(cut.side(first.first()).length())),
          site);
    }
    for (int c = 0; c < size(); c++) {
      if (RoundCorners.isStraight(corners, c)) {
        throw new NetException(
            "corner "
                + (c + 1)
                + " of the outline lies on a straight side, so that "
                + what
                + " has nothing to fold there: leave it out",
            site);
      }
    }
    return sharpCorners();
  }
}
