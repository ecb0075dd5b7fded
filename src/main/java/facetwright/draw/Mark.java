package facetwright.draw;

import facetwright.geom.Arc;
import facetwright.geom.Leg;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.List;
import java.util.function.UnaryOperator;

/** One thing on a page, in mm. */
public sealed interface Mark {
  /** The same mark, turned and shifted. */
  Mark moved(Motion2 motion);

  /**
   * The same mark on a page turned over about its upright middle: mirrored, mountains become
   * valleys, words stay readable.
   *
   * @param width of the page, in mm
   */
  Mark turnedOver(double width);

  private static Vec2 mirrored(Vec2 p, double width) {
    return new Vec2(width - p.x(), p.y());
  }

  /**
   * A line of straight parts, some of which may stand for arcs.
   *
   * @param points at least two
   * @param closed whether it returns to its first point
   * @param arcs parts of circles that runs of its parts stand for; often none. Who draws the parts
   *     as they are is off by no more than {@link Arc#CHORD}
   */
  record Stroke(List<Vec2> points, boolean closed, LineKind kind, List<Arc> arcs) implements Mark {
    /**
     * @throws IllegalArgumentException when there are fewer than two points
     */
    public Stroke {
      points = List.copyOf(points);
      arcs = List.copyOf(arcs);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a stroke needs at least two points");
      }
    }

    public Stroke(List<Vec2> points, boolean closed, LineKind kind) {
      this(points, closed, kind, List.of());
    }

    public static Stroke line(Vec2 from, Vec2 to, LineKind kind) {
      return new Stroke(List.of(from, to), false, kind);
    }

    public static Stroke around(Polygon2 outline, LineKind kind) {
      return new Stroke(outline.corners(), true, kind, outline.arcs());
    }

    /** A whole circle as one, any other line as it is. */
    public Mark asRound() {
      return closed
          ? Arc.circle(arcs, points.size())
              .<Mark>map(c -> new Circle(c, c.distance(points.getFirst()), kind))
              .orElse(this)
          : this;
    }

    /** Its straight and its round parts, one after another. */
    public List<Leg> legs() {
      return Leg.of(points, closed, arcs);
    }

    @Override
    public Stroke turnedOver(double width) {
      List<Vec2> mirrored = points.stream().map(p -> mirrored(p, width)).toList();
      return new Stroke(mirrored, closed, kind.turnedOver(), taken(p -> mirrored(p, width)));
    }

    @Override
    public Stroke moved(Motion2 motion) {
      return new Stroke(
          points.stream().map(motion::apply).toList(), closed, kind, taken(motion::apply));
    }

    private List<Arc> taken(UnaryOperator<Vec2> to) {
      return arcs.isEmpty()
          ? arcs
          : arcs.stream().map(a -> new Arc(a.first(), a.sides(), to.apply(a.centre()))).toList();
    }
  }

  /** A true circle. */
  record Circle(Vec2 centre, double radius, LineKind kind) implements Mark {
    @Override
    public Circle turnedOver(double width) {
      return new Circle(mirrored(centre, width), radius, kind.turnedOver());
    }

    @Override
    public Circle moved(Motion2 motion) {
      return new Circle(motion.apply(centre), radius, kind);
    }
  }

  /**
   * A filled area.
   *
   * @param rings what an odd number of them encloses is filled
   */
  record Fill(List<Polygon2> rings, FillKind kind) implements Mark {
    public Fill {
      rings = List.copyOf(rings);
    }

    @Override
    public Fill turnedOver(double width) {
      return new Fill(
          rings.stream()
              .map(r -> r.corners().stream().map(p -> mirrored(p, width)).toList())
              .map(Polygon2::ofEitherSense)
              .toList(),
          kind);
    }

    @Override
    public Fill moved(Motion2 motion) {
      return new Fill(rings.stream().map(motion::apply).toList(), kind);
    }
  }

  /**
   * One patch of a picture in space, with those of its edges that are edges of the card. Patches
   * hide each other in the order of their marks.
   *
   * @param rings what an odd number of them encloses is filled
   * @param part which part of the drawn thing it is, such as the number of a panel
   */
  record Patch(List<Polygon2> rings, Ink ink, List<Stroke> edges, int part) implements Mark {
    public Patch {
      rings = List.copyOf(rings);
      edges = List.copyOf(edges);
    }

    @Override
    public Patch turnedOver(double width) {
      return new Patch(
          new Fill(rings, FillKind.CARD).turnedOver(width).rings(),
          ink,
          edges.stream().map(e -> e.turnedOver(width)).toList(),
          part);
    }

    @Override
    public Patch moved(Motion2 motion) {
      return new Patch(
          rings.stream().map(motion::apply).toList(),
          ink,
          edges.stream().map(e -> e.moved(motion)).toList(),
          part);
    }
  }

  /**
   * One line of text.
   *
   * @param at where its base line starts, has its middle or ends, by the anchor
   * @param size of the type in mm, see {@link Lettering#pt}
   * @param angle of the base line in degrees, counter-clockwise
   * @param content printable text, see {@link Lettering#printable}
   */
  record Text(
      Vec2 at, double size, double angle, Anchor anchor, Weight weight, Ink ink, String content)
      implements Mark {
    public double width() {
      return Lettering.width(content, weight, size);
    }

    /** How far before its place it begins, in mm. */
    public double back() {
      return switch (anchor) {
        case START -> 0;
        case MIDDLE -> width() / 2;
        case END -> width();
      };
    }

    @Override
    public Text turnedOver(double width) {
      Anchor other =
          switch (anchor) {
            case START -> Anchor.END;
            case MIDDLE -> Anchor.MIDDLE;
            case END -> Anchor.START;
          };
      return new Text(mirrored(at, width), size, -angle, other, weight, ink, content);
    }

    @Override
    public Text moved(Motion2 motion) {
      double turn = Math.toDegrees(Math.atan2(motion.sin(), motion.cos()));
      return new Text(motion.apply(at), size, angle + turn, anchor, weight, ink, content);
    }
  }

  /** Which part of a line of text stands at its place. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** How heavy the type is. */
  enum Weight {
    REGULAR,
    BOLD
  }
}
