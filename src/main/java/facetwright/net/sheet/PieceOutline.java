package facetwright.net.sheet;

import facetwright.geom.AngleTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * What a piece of card covers. Most pieces have one border that can be walked along from side to
 * side; where one meets itself, or has card missing in its midst, its panels are united.
 */
public final class PieceOutline {
  private final Net net;
  private final List<Integer> panels;
  private final Map<EdgeRef, EdgeRef> across = new HashMap<>();

  private PieceOutline(Net net, List<Integer> panels) {
    this.net = net;
    this.panels = panels;
  }

  /** Each piece of a net, in the order of pieces, as it lies there; openings count as card. */
  public static List<Geometry> all(Net net) {
    int[] piece = net.pieceOfPanel();
    return IntStream.range(0, net.pieces())
        .mapToObj(
            n ->
                of(
                    net,
                    IntStream.range(0, piece.length).filter(p -> piece[p] == n).boxed().toList()))
        .toList();
  }

  /**
   * A piece as it lies in the net; openings count as card.
   *
   * @param panels all that hang together in it
   */
  static Geometry of(Net net, List<Integer> panels) {
    return new PieceOutline(net, panels)
        .border()
        .<Geometry>map(Planar::polygon)
        .orElseGet(
            () -> Planar.union(panels.stream().map(p -> net.panels().get(p).outline()).toList()));
  }

  /**
   * The two turns, in radians, after which the smallest rectangle round a shape is upright; none
   * where it is so already. What is off a quarter turn by less than is seen is that quarter turn.
   */
  public static List<Double> aligning(Geometry shape) {
    Coordinate[] corners = MinimumAreaRectangle.getMinimumRectangle(shape).getCoordinates();
    double slant = Math.atan2(corners[1].y - corners[0].y, corners[1].x - corners[0].x);
    return Math.abs(Math.IEEEremainder(slant, Math.PI / 2)) > AngleTolerance.UNSEEN.radians()
        ? List.of(-slant, Math.PI / 2 - slant)
        : List.of();
  }

  private Optional<Polygon2> border() {
    for (Score score : net.scores()) {
      across.put(score.a(), score.b());
      across.put(score.b(), score.a());
    }
    List<EdgeRef> free = new ArrayList<>();
    for (int p : panels) {
      for (int e = 0; e < net.panels().get(p).outline().size(); e++) {
        EdgeRef side = new EdgeRef(p, e);
        if (!across.containsKey(side)) {
          free.add(side);
        }
      }
    }
    Set<EdgeRef> walked = new HashSet<>();
    List<Vec2> corners = new ArrayList<>();
    EdgeRef side = free.getFirst();
    while (walked.add(side)) {
      corners.add(net.segment(side).from());
      side = next(side);
      while (across.containsKey(side)) {
        side = next(across.get(side));
      }
    }
    return walked.size() == free.size()
        ? Polygon2.wide(corners).filter(Polygon2::isSimple)
        : Optional.empty();
  }

  private EdgeRef next(EdgeRef side) {
    int sides = net.panels().get(side.panel()).outline().size();
    return new EdgeRef(side.panel(), (side.edge() + 1) % sides);
  }
}
