package facetwright.fold;

import facetwright.fold.pose.Dihedrals;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Sectors round a corner inside the sheet, one score between each two. */
final class Fan {
  static final double REACH = 100;

  private Fan() {}

  /** A sector between two directions, in radians, its sides 0 and 3 at the corner. */
  static List<Vec2> sector(double from, double to) {
    return List.of(
        Vec2.ZERO,
        Vec2.polar(REACH, from),
        Vec2.polar(REACH, (from + to) / 2),
        Vec2.polar(REACH, to));
  }

  /**
   * @param directions of the scores, in degrees
   * @param angles of the scores in degrees, valley positive; their signs are the senses
   * @param known of which the angle is given; the others are to be solved
   */
  static Net net(List<Double> directions, List<Double> angles, IntPredicate known) {
    NetDraft draft = new NetDraft();
    int n = directions.size();
    List<PanelDraft> sectors = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double from = Math.toRadians(directions.get(i));
      double to = Math.toRadians(directions.get((i + 1) % n)) + (i + 1 == n ? 2 * Math.PI : 0);
      sectors.add(draft.panel("sector " + i, PanelRole.FACET, sector(from, to), Site.NONE));
    }
    for (int i = 0; i < n; i++) {
      // The score at direction i lies between the sector before it and the sector after it.
      double angle = angles.get(i);
      draft.score(
          sectors.get((i + n - 1) % n).edge(3),
          sectors.get(i).edge(0),
          angle < 0 ? Sense.MOUNTAIN : Sense.VALLEY,
          known.test(i) ? FoldAngle.degrees(Math.abs(angle)) : FoldAngle.TO_SOLVE,
          Site.NONE);
    }
    return draft.build();
  }

  /** The angles of all scores in degrees, valley positive, as panels stand. */
  static List<Double> angles(Net net, List<Motion3> poses) {
    return net.scores().stream()
        .map(
            s ->
                -Math.toDegrees(
                    Dihedrals.turn(
                        poses.get(s.a().panel()), net.segment(s.a()), poses.get(s.b().panel()))))
        .toList();
  }

  /**
   * By how much the product of turns about the scores, in their order round the corner, differs
   * from none: the largest way that a point 1 from the corner, on an axis, is off.
   */
  static double productMisses(List<Double> directions, List<Double> angles) {
    Motion3 product = Motion3.NONE;
    for (int i = 0; i < angles.size(); i++) {
      Vec2 along = Vec2.polar(1, Math.toRadians(directions.get(i)));
      Motion3 turn =
          Motion3.about(
              Vec3.ZERO, new Vec3(along.x(), along.y(), 0), Math.toRadians(angles.get(i)));
      product = turn.then(product);
    }
    double off = 0;
    for (Vec3 axis : List.of(Vec3.X, Vec3.Y, Vec3.Z)) {
      off = Math.max(off, product.apply(axis).distance(axis));
    }
    return off;
  }
}
