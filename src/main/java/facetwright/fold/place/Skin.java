package facetwright.fold.place;

import facetwright.fold.pose.Standing;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;

/**
 * What is seen of a part from without.
 *
 * @param faces its facets and gussets, counter-clockwise from without; no tabs, and nothing that a
 *     lap hides
 * @param mouths its openings
 */
record Skin(List<List<Vec3>> faces, List<Mouth> mouths) {
  /** Corners that turn less than this turn nowhere. */
  private static final double STRAIGHT = Math.toRadians(1);

  Skin {
    faces = List.copyOf(faces);
    mouths = List.copyOf(mouths);
  }

  /** Of some panels of a net. */
  static Skin of(Net net, List<Motion3> poses, List<Integer> panels) {
    Set<Integer> hidden = new HashSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap lap) {
        hidden.add(lap.under());
      }
    }
    List<List<Vec3>> faces = new ArrayList<>();
    for (int p : panels) {
      if (net.panels().get(p).role() != PanelRole.TAB && !hidden.contains(p)) {
        Motion3 pose = poses.get(p);
        faces.add(net.panels().get(p).outline().corners().stream().map(pose::apply).toList());
      }
    }
    List<Mouth> mouths =
        FreeSides.rings(FreeSides.of(net, poses, panels)).stream()
            .map(Mouth::of)
            .flatMap(Optional::stream)
            .toList();
    return new Skin(faces, mouths);
  }

  /** The same moved. */
  Skin moved(Motion3 by) {
    return new Skin(
        faces.stream().map(f -> f.stream().map(by::apply).toList()).toList(),
        mouths.stream()
            .map(
                m -> {
                  Vec3 out = by.direction(m.out());
                  return new Mouth(
                      m.ring().stream().map(by::apply).toList(),
                      out,
                      m.at() + by.origin().dot(out));
                })
            .toList());
  }

  /** How far it reaches in a direction. */
  double reach(Vec3 direction) {
    double most = Double.NEGATIVE_INFINITY;
    for (List<Vec3> face : faces) {
      for (Vec3 corner : face) {
        most = Math.max(most, corner.dot(direction));
      }
    }
    return most;
  }

  /** Its outline looked at along an axis; none of what has no width there. */
  Optional<Polygon2> outline(Frame frame) {
    List<List<Vec2>> shapes =
        Stream.concat(faces.stream(), mouths.stream().map(Mouth::ring))
            .map(r -> r.stream().map(frame::flat).toList())
            .toList();
    Optional<Polygon2> largest = largest(shapes);
    if (largest.isEmpty() || shapes.stream().allMatch(s -> lies(s, largest.get()))) {
      return largest;
    }
    List<Polygon2> all = shapes.stream().flatMap(s -> wide(s).stream()).toList();
    Geometry seen = Planar.union(all);
    // Things side by side take the room between them, too.
    boolean areApart = Planar.outlines(seen).size() > 1;
    return Planar.outlines(areApart ? seen.convexHull() : seen).stream()
        .max(Comparator.comparingDouble(Polygon2::area))
        .map(p -> plain(p.corners()));
  }

  /** The outline of the end that it shows there, where it ends square to the axis. */
  Optional<Polygon2> end(Frame frame) {
    double far = reach(frame.axis());
    return largest(
        Stream.concat(faces.stream(), mouths.stream().map(Mouth::ring))
            .filter(
                r -> r.stream().allMatch(c -> far - frame.depth(c) <= LengthTolerance.UNSEEN.mm()))
            .map(r -> r.stream().map(frame::flat).toList())
            .toList());
  }

  private static Optional<Polygon2> largest(List<List<Vec2>> shapes) {
    Polygon2 largest = null;
    for (List<Vec2> shape : shapes) {
      Polygon2 one = wide(shape).orElse(null);
      // What is larger by less than rounding is not.
      if (one != null
          && (largest == null || one.area() > largest.area() + LengthTolerance.UNSEEN.mm())) {
        largest = one;
      }
    }
    return Optional.ofNullable(largest);
  }

  /** A shape with an inside, its corners that turn nowhere left out. */
  private static Optional<Polygon2> wide(List<Vec2> shape) {
    double twice = 0;
    double round = 0;
    for (int i = 0; i < shape.size(); i++) {
      Vec2 next = shape.get((i + 1) % shape.size());
      twice += shape.get(i).cross(next);
      round += shape.get(i).distance(next);
    }
    return Math.abs(twice) > LengthTolerance.UNSEEN.mm() * round
        ? Optional.of(plain(shape))
        : Optional.empty();
  }

  private static Polygon2 plain(List<Vec2> shape) {
    List<Vec2> distinct = Polygon2.distinct(shape);
    List<Vec2> kept = new ArrayList<>();
    int n = distinct.size();
    for (int i = 0; i < n; i++) {
      Vec2 in = distinct.get(i).minus(distinct.get((i + n - 1) % n));
      Vec2 out = distinct.get((i + 1) % n).minus(distinct.get(i));
      if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) >= STRAIGHT) {
        kept.add(distinct.get(i));
      }
    }
    return Polygon2.ofEitherSense(kept.size() < 3 ? distinct : kept);
  }

  private static boolean lies(List<Vec2> shape, Polygon2 within) {
    return shape.stream().allMatch(c -> Room.inside(within.corners(), c) >= -Room.LEAST.mm());
  }

  /**
   * How much of it lies beyond a plane, in mm³, its openings closed by cones to their middles.
   *
   * @param axis square to the plane, of length 1
   * @param from how far along the axis the plane lies, in mm
   */
  double volumeBeyond(Vec3 axis, double from) {
    Vec3 apex = axis.times(from);
    double volume = 0;
    for (List<Vec3> face : faces) {
      volume += cone(face, axis, from, apex);
    }
    for (Mouth mouth : mouths) {
      List<Vec3> ring = mouth.ring();
      Vec3 middle =
          ring.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / Math.max(1, ring.size()));
      for (int i = 0; i < ring.size(); i++) {
        List<Vec3> cap = List.of(ring.get((i + 1) % ring.size()), ring.get(i), middle);
        volume += cone(cap, axis, from, apex);
      }
    }
    return volume;
  }

  /** The volume between an apex on the plane and what of a face lies beyond the plane. */
  private static double cone(List<Vec3> face, Vec3 axis, double from, Vec3 apex) {
    List<Vec3> beyond = new ArrayList<>();
    for (int i = 0; i < face.size(); i++) {
      Vec3 here = face.get(i);
      Vec3 next = face.get((i + 1) % face.size());
      double a = here.dot(axis) - from;
      double b = next.dot(axis) - from;
      if (a >= 0) {
        beyond.add(here);
      }
      if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
        beyond.add(here.toward(next, a / (a - b)));
      }
    }
    return beyond.size() < 3 ? 0 : Standing.normal(beyond).dot(beyond.getFirst().minus(apex)) / 6;
  }
}
