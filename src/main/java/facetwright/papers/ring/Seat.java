package facetwright.papers.ring;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** A flat side of the finished piece with all of the piece behind it. */
record Seat(Net net, FoldedForm form, List<Integer> panels, Vec3 normal) {
  /** Reaching over a seat by this much still counts as behind it, in mm. */
  static final double BEHIND = 0.05;

  /** Panels whose normals differ by less, and that lie in one plane, are one side. */
  private static final AngleTolerance ONE_PLANE = new AngleTolerance(1e-4);

  /** The seats of a body. */
  static List<Seat> of(Net net, FoldedForm form, List<Integer> body, List<Vec3> points) {
    List<Seat> seats = new ArrayList<>();
    boolean[] done = new boolean[net.panels().size()];
    for (int p : body) {
      Pace.step(1 + points.size() / 16);
      if (done[p] || net.panels().get(p).role() == PanelRole.TAB) {
        continue;
      }
      Vec3 normal = form.poses().get(p).ez();
      double level = normal.dot(form.corners(net, p).getFirst());
      if (points.stream().anyMatch(x -> normal.dot(x) > level + BEHIND)) {
        continue;
      }
      List<Integer> side = new ArrayList<>();
      for (int q : body) {
        Motion3 pose = form.poses().get(q);
        if (net.panels().get(q).role() != PanelRole.TAB
            && pose.ez().minus(normal).length() < ONE_PLANE.radians()
            && Math.abs(normal.dot(form.corners(net, q).getFirst()) - level) < BEHIND) {
          side.add(q);
          done[q] = true;
        }
      }
      seats.add(new Seat(net, form, List.copyOf(side), normal));
    }
    return seats;
  }

  String name() {
    return panels.stream().map(p -> net.panels().get(p).name()).collect(Collectors.joining(" + "));
  }

  /** How far the seat runs in a direction: least and most. */
  double[] run(Vec3 direction) {
    double[] run = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (int p : panels) {
      for (Vec3 corner : form.corners(net, p)) {
        run[0] = Math.min(run[0], direction.dot(corner));
        run[1] = Math.max(run[1], direction.dot(corner));
      }
    }
    return run;
  }

  /** The card of the seat, in coordinates along two directions that lie in it. */
  Geometry area(Vec3 along, double origin, Vec3 up) {
    Geometry all = Planar.factory().createPolygon();
    for (int p : panels) {
      Motion3 pose = form.poses().get(p);
      Polygon region = net.panels().get(p).region();
      LinearRing[] holes = new LinearRing[region.getNumInteriorRing()];
      for (int h = 0; h < holes.length; h++) {
        holes[h] = ring(region.getInteriorRingN(h), pose, along, origin, up);
      }
      all =
          all.union(
              Planar.factory()
                  .createPolygon(ring(region.getExteriorRing(), pose, along, origin, up), holes));
    }
    return all;
  }

  private static LinearRing ring(
      LinearRing ring, Motion3 pose, Vec3 along, double origin, Vec3 up) {
    Coordinate[] seen = new Coordinate[ring.getNumPoints()];
    for (int i = 0; i < seen.length; i++) {
      Coordinate c = ring.getCoordinateN(i);
      Vec3 place = pose.apply(new Vec2(c.x, c.y));
      seen[i] = new Coordinate(along.dot(place) - origin, up.dot(place));
    }
    seen[seen.length - 1] = seen[0].copy();
    return Planar.factory().createLinearRing(seen);
  }
}
