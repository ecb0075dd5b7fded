package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.fitting.Extra;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What goes into a piece, or through it, drawn over its picture before the mouth of it. */
final class Things {
  /** How large a thing is drawn of which no size is said, in mm. */
  static final double USUAL = 12;

  /** How flat a round thing looks from a little above. */
  private static final double FLAT = 0.4;

  private static final int AROUND = 24;

  /** How far the ends of a ribbon stand apart, in mm. */
  private static final double ENDS = 3;

  private final Scene scene;
  private final Function<Vec3, Vec2> at;
  private final double scale;

  /**
   * @param at where a place of space is on the picture
   * @param scale of the picture
   */
  Things(Scene scene, Function<Vec3, Vec2> at, double scale) {
    this.scene = scene;
    this.at = at;
    this.scale = scale;
  }

  private Vec2 middle() {
    return at.apply(scene.middle());
  }

  private Vec2 mouth() {
    return at.apply(scene.middle().plus(scene.mouth().orElse(Vec3.Z)));
  }

  private Vec2 out() {
    Vec2 way = mouth().minus(middle());
    return way.length() < 1 ? new Vec2(0, 1) : way.unit();
  }

  /** The way in. */
  List<Vec2> way() {
    return List.of(mouth().plus(out().times(2)), mouth().minus(out().times(WayArrow.SHORT)));
  }

  /**
   * A round thing before the mouth.
   *
   * @param across it, in mm of the piece
   * @param wide how much room there is, in mm of the picture
   */
  Mark.Patch round(double across, double tall, double wide, double high) {
    double half = Math.min(across * scale, wide) / 2;
    Vec2 top = new Vec2(0, Math.min(tall * scale, high));
    List<Vec2> body = new ArrayList<>();
    List<Vec2> rim = new ArrayList<>();
    for (int i = 0; i <= AROUND; i++) {
      double a = 2 * Math.PI * i / AROUND;
      Vec2 on = mouth().plus(new Vec2(half * Math.cos(a), FLAT * half * Math.sin(a)));
      body.add(2 * i <= AROUND ? on.plus(top) : on);
      rim.add(on.plus(top));
    }
    return new Mark.Patch(
        List.of(Polygon2.ofEitherSense(body)),
        Ink.CARD,
        List.of(
            new Mark.Stroke(body, true, LineKind.CUT), new Mark.Stroke(rim, true, LineKind.CUT)),
        Labels.NO_PART);
  }

  /**
   * A ribbon through its holes, one after the other, and both ends out.
   *
   * @param high to where its ends go
   */
  List<Mark> ribbon(Extra.Ribbon ribbon, double high) {
    List<Vec2> through = new ArrayList<>();
    for (int p : ribbon.through()) {
      if (scene.local(p) >= 0) {
        Panel panel = scene.drawing().net().panels().get(scene.local(p));
        Vec2 hole =
            panel.openings().stream()
                .filter(Opening.Hole.class::isInstance)
                .map(o -> ((Opening.Hole) o).centre())
                .findFirst()
                .orElse(panel.outline().centroid());
        through.add(at.apply(scene.at(p, hole)));
      }
    }
    if (through.size() < 2) {
      return List.of();
    }
    through.addFirst(new Vec2(through.getFirst().x() - ENDS, high));
    through.addLast(new Vec2(through.getLast().x() + ENDS, high));
    return List.of(Labels.over(List.of(new Mark.Stroke(through, false, LineKind.NOW))));
  }
}
