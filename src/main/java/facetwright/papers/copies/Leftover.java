package facetwright.papers.copies;

import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;

/** What a pattern leaves of a sheet, tried at many places for one copy more. */
final class Leftover {
  private static final int PLACES = 32;
  private static final double SLACK = 1e-6;

  private final Geometry shape;
  private final List<Double> angles;
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

  /** The copies, and such as go in beside them. */
  List<Motion2> fill(List<Motion2> copies) {
    List<Motion2> all = new ArrayList<>(copies);
    List<PreparedGeometry> taken = new ArrayList<>();
    copies.forEach(m -> taken.add(taken(m)));
    double free = width * height - copies.size() * shape.getArea();
    for (double angle : angles) {
      for (double end : new double[] {0, Math.PI}) {
        Blank blank = Blank.of(shape, angle + end, gap);
        Optional<Motion2> more = free < shape.getArea() ? Optional.empty() : place(blank, taken);
        while (more.isPresent()) {
          all.add(more.get());
          taken.add(taken(more.get()));
          more = place(blank, taken);
        }
      }
    }
    return all;
  }

  private PreparedGeometry taken(Motion2 m) {
    return PreparedGeometryFactory.prepare(Blank.moved(shape, m));
  }

  private Optional<Motion2> place(Blank blank, List<PreparedGeometry> taken) {
    double freeX = width - blank.width();
    double freeY = height - blank.height();
    if (freeX < -SLACK || freeY < -SLACK) {
      return Optional.empty();
    }
    // Touching is no overlap, so the reach is drawn in by a hair.
    Geometry reach = BufferOp.bufferOp(blank.reach(), -SLACK);
    for (int j = 0; j <= PLACES; j++) {
      for (int i = 0; i <= PLACES; i++) {
        double x = Math.max(0, freeX) * i / PLACES;
        double y = Math.max(0, freeY) * j / PLACES;
        Geometry at = AffineTransformation.translationInstance(x, y).transform(reach);
        if (taken.stream().noneMatch(t -> t.intersects(at))) {
          return Optional.of(blank.motion().then(Motion2.shift(new Vec2(x, y))));
        }
      }
    }
    return Optional.empty();
  }
}
