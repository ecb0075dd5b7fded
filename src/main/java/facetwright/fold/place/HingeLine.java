package facetwright.fold.place;

import facetwright.fold.touch.Collision;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The line about which a part opens: the edge of it nearest the other part that lies farthest to
 * the side where it is hinged.
 *
 * @param from one end
 * @param to its other end, so that what opens turns counter-clockwise about the way to it
 * @param away the direction in which it comes off the other, of length 1
 */
record HingeLine(Vec3 from, Vec3 to, Vec3 away) {
  /** A strip of card bridges no wider gap, in mm; common practice, no source. */
  private static final double BRIDGED = 3;

  /** Where along it the gap is measured, from either end: its ends may stand over. */
  private static final double QUARTER = 0.25;

  /** Directions that lean this little toward each other, as a cosine, are square. */
  private static final double SQUARE = 0.01;

  /**
   * @param part what is hinged, as it lies shut
   * @param host the faces of what it is hinged to
   * @param away the direction in which it comes off
   */
  static HingeLine of(Net net, Placing.Hinged hinged, Skin part, List<List<Vec3>> host, Vec3 away)
      throws NoWay {
    Vec3 out = out(hinged.edge());
    String side = hinged.edge().name().toLowerCase(Locale.ROOT);
    if (Math.abs(out.dot(away)) > SQUARE) {
      throw new NoWay(
          Message.of(
              "%s comes off to the side of %s: it can't be hinged at its %s",
              Way.name(net, hinged.part()), Way.name(net, hinged.onto()), side),
          Message.text("Hinge it at another side."));
    }
    HingeLine line = edge(part, out, away);
    if (line == null) {
      throw new NoWay(
          Message.of(
              "%s has no straight edge at the %s to be hinged by",
              Way.name(net, hinged.part()), side),
          Message.text("Hinge it at another side, or turn both parts so that an edge lies there."));
    }
    double off =
        Math.max(
            Near.of(line.from.toward(line.to, QUARTER), host),
            Near.of(line.to.toward(line.from, QUARTER), host));
    if (off > BRIDGED) {
      throw new NoWay(
          Message.of(
              "the edge of %s at the %s lies %s off %s: a strip bridges %s",
              Way.name(net, hinged.part()),
              side,
              Value.length(off),
              Way.name(net, hinged.onto()),
              Value.length(BRIDGED)),
          Message.text("Let its edge there lie along an edge of the other."));
    }
    return line;
  }

  private static Vec3 out(Side side) {
    return switch (side) {
      case RIGHT -> Vec3.X;
      case LEFT -> Vec3.X.times(-1);
      case FRONT -> Vec3.Y.times(-1);
      case BACK -> Vec3.Y;
    };
  }

  private static HingeLine edge(Skin part, Vec3 out, Vec3 away) {
    double near = -part.reach(away.times(-1)) + Collision.HELD;
    List<Vec3> foot = new ArrayList<>();
    part.faces().forEach(f -> f.stream().filter(c -> c.dot(away) <= near).forEach(foot::add));
    double far = foot.stream().mapToDouble(c -> c.dot(out)).max().orElse(0) - Collision.HELD;
    HingeLine longest = null;
    for (List<Vec3> face : part.faces()) {
      for (int i = 0; i < face.size(); i++) {
        Vec3 a = face.get(i);
        Vec3 b = face.get((i + 1) % face.size());
        boolean isThere =
            a.dot(away) <= near && b.dot(away) <= near && a.dot(out) >= far && b.dot(out) >= far;
        if (isThere && (longest == null || a.distance(b) > longest.length() + Collision.HELD)) {
          // What opens lies inward of the hinge and turns away from the other.
          boolean isAlong = b.minus(a).cross(out.times(-1)).dot(away) > 0;
          longest = isAlong ? new HingeLine(a, b, away) : new HingeLine(b, a, away);
        }
      }
    }
    return longest != null && longest.length() > Collision.HELD ? longest : null;
  }

  private double length() {
    return from.distance(to);
  }
}
