package facetwright.fold.place;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Parts.Placing;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts that are together already, as one of them stands by itself.
 *
 * @param parts indices of the parts; the first stands as it does by itself
 * @param poses for each of them, where it is
 * @param up what is above when all stands on the table
 * @param along what goes to the right then, to one who looks at the front
 */
record Cluster(List<Integer> parts, List<Motion3> poses, Vec3 up, Vec3 along) {
  Cluster {
    parts = List.copyOf(parts);
    poses = List.copyOf(poses);
  }

  static Cluster of(int part) {
    return new Cluster(List.of(part), List.of(Motion3.NONE), Vec3.Z, Vec3.X);
  }

  Motion3 pose(int part) {
    return poses.get(parts.indexOf(part));
  }

  /** All faces of its parts, as this one of them stands by itself. */
  List<List<Vec3>> faces(int asOf, List<Skin> skins, List<Integer> without) {
    Motion3 back = pose(asOf).inverse();
    List<List<Vec3>> faces = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (!without.contains(parts.get(i))) {
        Motion3 pose = poses.get(i).then(back);
        for (List<Vec3> face : skins.get(parts.get(i)).faces()) {
          faces.add(face.stream().map(pose::apply).toList());
        }
      }
    }
    return faces;
  }

  /**
   * A part with all that lies by it, itself first: these go in together.
   *
   * @param mates what stands beside another or lies with it
   */
  List<Integer> sideBySide(int part, List<Placing> mates) {
    List<Integer> all = new ArrayList<>(List.of(part));
    for (int i = 0; i < all.size(); i++) {
      for (Placing placing : mates) {
        int at = all.get(i);
        int mate =
            placing.part() == at ? placing.onto() : placing.onto() == at ? placing.part() : at;
        if (parts.contains(mate) && !all.contains(mate)) {
          all.add(mate);
        }
      }
    }
    return all;
  }

  /** Some of its parts as one, as one of them stands by itself. */
  Skin skin(int asOf, List<Skin> skins, List<Integer> some) {
    Motion3 back = pose(asOf).inverse();
    List<Skin> all = some.stream().map(p -> skins.get(p).moved(pose(p).then(back))).toList();
    return new Skin(
        all.stream().flatMap(s -> s.faces().stream()).toList(),
        all.stream().flatMap(s -> s.mouths().stream()).toList());
  }

  /**
   * Another cluster come to this one.
   *
   * @param part one of the other's parts
   * @param onto one of this one's
   * @param motion from how the part stands to where it is, as {@code onto} stands by itself
   * @param isLaid whether all lies down, so that the part stands as by itself
   */
  Cluster with(Cluster other, int part, int onto, Motion3 motion, boolean isLaid) {
    Motion3 way = other.pose(part).inverse().then(motion).then(pose(onto));
    List<Integer> all = new ArrayList<>(parts);
    all.addAll(other.parts);
    List<Motion3> places = new ArrayList<>(poses);
    other.poses.forEach(p -> places.add(p.then(way)));
    return isLaid
        ? new Cluster(all, places, motion.direction(Vec3.Z), motion.direction(Vec3.X))
        : new Cluster(all, places, up, along);
  }
}
