package facetwright.net.sheet;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;

/**
 * The outline of a whole piece, for laying it on a sheet. What takes long to find is found where it
 * is asked for: a piece alone on its sheet needs no more than its corners.
 */
final class PieceShape {
  /** How near the boundary two pieces with no gap may be taken to touch. */
  private static final LengthTolerance TOUCH = new LengthTolerance(1e-5);

  private final Net net;
  private final List<Integer> numbers;
  private final List<Polygon2> panels;
  private final Map<Boolean, List<Turned>> turns = new HashMap<>();
  private Geometry outline;
  private Turned asItLies;

  private PieceShape(Net net, List<Integer> numbers) {
    this.net = net;
    this.numbers = numbers;
    panels = numbers.stream().map(p -> net.panels().get(p).outline()).toList();
  }

  /** A piece turned, its lower left corner at the origin. */
  final class Turned {
    private final Motion2 motion;
    private final Box2 box;
    private final Map<Double, Geometry> reach = new HashMap<>();
    private Geometry at;

    private Turned(Motion2 motion, Box2 box) {
      this.motion = motion;
      this.box = box;
    }

    /** From where the piece lies in the net to here. */
    Motion2 motion() {
      return motion;
    }

    double width() {
      return box.maxX();
    }

    double height() {
      return box.maxY();
    }

    /** The true outline. */
    Geometry outline() {
      if (at == null) {
        at = Planar.moved(PieceShape.this.outline(), motion);
      }
      return at;
    }

    /** The outline grown by a gap, in mm: no other piece's outline may meet it. */
    Geometry reach(double gap) {
      return reach.computeIfAbsent(
          gap, g -> BufferOp.bufferOp(outline(), g > TOUCH.mm() ? g : -TOUCH.mm()));
    }
  }

  static List<PieceShape> of(Net net) {
    int[] pieceOfPanel = net.pieceOfPanel();
    List<PieceShape> shapes = new ArrayList<>();
    for (int piece = 0; piece < net.pieces(); piece++) {
      List<Integer> numbers = new ArrayList<>();
      for (int p = 0; p < pieceOfPanel.length; p++) {
        if (pieceOfPanel[p] == piece) {
          numbers.add(p);
        }
      }
      shapes.add(new PieceShape(net, numbers));
    }
    return shapes;
  }

  private Geometry outline() {
    if (outline == null) {
      outline = PieceOutline.of(net, numbers);
    }
    return outline;
  }

  /** What it covers, in mm². */
  double area() {
    return outline().getArea();
  }

  /** All its panels' area in whole mm²: found quickly, and more where one lies on another. */
  long size() {
    return Math.round(panels.stream().mapToDouble(Polygon2::area).sum());
  }

  /** How wide it is as it lies, in mm. */
  double width() {
    return asItLies().width();
  }

  /** How high it is as it lies, in mm. */
  double height() {
    return asItLies().height();
  }

  double longer() {
    return Math.max(width(), height());
  }

  double shorter() {
    return Math.min(width(), height());
  }

  private Turned asItLies() {
    if (asItLies == null) {
      asItLies = turned(0);
    }
    return asItLies;
  }

  /** The directions to try, as given first; the same for all sheets that it is tried on. */
  List<Turned> turns(boolean mayTurn) {
    return turns.computeIfAbsent(mayTurn, this::tried);
  }

  private List<Turned> tried(boolean mayTurn) {
    List<Double> angles = new ArrayList<>(List.of(0.0));
    if (mayTurn) {
      angles.add(Math.PI / 2);
      angles.addAll(PieceOutline.aligning(outline()));
      angles.add(Math.PI);
      angles.add(3 * Math.PI / 2);
    }
    return angles.stream().map(a -> a == 0 ? asItLies() : turned(a)).toList();
  }

  private Turned turned(double angle) {
    Motion2 turn = Motion2.turn(angle);
    List<Vec2> corners = panels.stream().flatMap(p -> p.corners().stream()).toList();
    Box2 box = turn.boxOf(corners);
    Motion2 whole = turn.then(Motion2.shift(new Vec2(-box.minX(), -box.minY())));
    return new Turned(whole, whole.boxOf(corners));
  }
}
