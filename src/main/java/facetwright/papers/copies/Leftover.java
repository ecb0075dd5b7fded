package facetwright.papers.copies;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.index.quadtree.Quadtree;
import org.locationtech.jts.operation.buffer.BufferOp;

/** What a pattern leaves of a sheet, tried at many places for one copy more. */
final class Leftover {
  private static final int PLACES = 32;
  private static final int SOME = 12;

  /** What leaves the sheet by no more lies on it. */
  private static final LengthTolerance SLACK = LengthTolerance.FINE;

  private final Geometry shape;
  private final List<Double> angles;
  private final Quadtree taken = new Quadtree();
  private final double gap;
  private final double width;
  private final double height;

  Leftover(Geometry shape, List<Double> angles, double gap, double width, double height) {
    this.shape = shape;
    this.angles = angles;
    this.gap = gap;
    this.width = width;
    this.height = height;
  }

  /**
   * The copies, and such as go in beside them.
   *
   * @param most no more than these in all
   */
  List<Motion2> fill(List<Motion2> copies, int most) {
    List<Motion2> all = new ArrayList<>(copies);
    copies.forEach(this::take);
    double free = width * height - copies.size() * shape.getArea();
    if (free < shape.getArea()) {
      return all;
    }
    for (double angle : angles) {
      for (double end : new double[] {0, Math.PI}) {
        Blank blank = Blank.of(shape, angle + end, gap);
        Optional<Motion2> more = place(blank);
        while (more.isPresent() && all.size() < most) {
          all.add(more.get());
          take(more.get());
          more = place(blank);
        }
      }
    }
    return all;
  }

  /** A copy that lies there, asked by area and, for a quick no, by place. */
  private record Taken(PreparedGeometry area, IndexedPointInAreaLocator places) {
    boolean holds(double x, double y) {
      return places.locate(new Coordinate(x, y)) == Location.INTERIOR;
    }
  }

  private void take(Motion2 motion) {
    Geometry at = Planar.moved(shape, motion);
    taken.insert(
        at.getEnvelopeInternal(),
        new Taken(PreparedGeometryFactory.prepare(at), new IndexedPointInAreaLocator(at)));
  }

  private Optional<Motion2> place(Blank blank) {
    double freeX = width - blank.width();
    double freeY = height - blank.height();
    if (freeX < -SLACK.mm() || freeY < -SLACK.mm()) {
      return Optional.empty();
    }
    // Touching is no overlap, so the reach is drawn in by a hair.
    Geometry reach = BufferOp.bufferOp(blank.reach(), -SLACK.mm());
    List<Coordinate> some = some(reach);
    for (int j = 0; j <= PLACES; j++) {
      for (int i = 0; i <= PLACES; i++) {
        double x = Math.max(0, freeX) * i / PLACES;
        double y = Math.max(0, freeY) * j / PLACES;
        Envelope box = new Envelope(reach.getEnvelopeInternal());
        box.translate(x, y);
        List<Taken> near = near(box);
        Pace.step(1 + (long) near.size() * some.size() / 10);
        if (near.stream().noneMatch(t -> some.stream().anyMatch(c -> t.holds(c.x + x, c.y + y)))) {
          Geometry at = AffineTransformation.translationInstance(x, y).transform(reach);
          if (near.stream().noneMatch(t -> t.area.intersects(at))) {
            return Optional.of(blank.motion().then(Motion2.shift(new Vec2(x, y))));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The copies that may lie in a box. */
  private List<Taken> near(Envelope box) {
    List<?> found = taken.query(box);
    return found.stream()
        .map(Taken.class::cast)
        .filter(t -> t.area.getGeometry().getEnvelopeInternal().intersects(box))
        .toList();
  }

  /** Some corners, evenly taken, and a place inside. */
  private static List<Coordinate> some(Geometry reach) {
    Coordinate[] corners = reach.getCoordinates();
    List<Coordinate> some = new ArrayList<>(List.of(reach.getInteriorPoint().getCoordinate()));
    for (int i = 0; i < corners.length; i += Math.max(1, corners.length / SOME)) {
      some.add(corners[i]);
    }
    return some;
  }
}
