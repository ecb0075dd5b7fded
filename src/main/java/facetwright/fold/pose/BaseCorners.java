package facetwright.fold.pose;

import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;

/** The three corners of a panel that tell best how it lies. */
public final class BaseCorners {
  private BaseCorners() {}

  /** Three corners far from each other, counter-clockwise; the first two are the farthest. */
  public static int[] of(Polygon2 outline) {
    int n = outline.size();
    int a = 0;
    int b = 1;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        if (outline.corner(i).distance(outline.corner(j))
            > outline.corner(a).distance(outline.corner(b)) * (1 + RoundOff.PART)) {
          a = i;
          b = j;
        }
      }
    }
    int c = -1;
    double far = 0;
    Vec2 along = outline.corner(b).minus(outline.corner(a));
    for (int i = 0; i < n; i++) {
      double off = Math.abs(along.cross(outline.corner(i).minus(outline.corner(a))));
      if (off > far * (1 + RoundOff.PART)) {
        far = off;
        c = i;
      }
    }
    double side = along.cross(outline.corner(c).minus(outline.corner(a)));
    return side > 0 ? new int[] {a, b, c} : new int[] {b, a, c};
  }

  /** The size by which strain is told: the distance of the farthest corners, in mm. */
  public static double size(Polygon2 outline) {
    int[] base = of(outline);
    return outline.corner(base[0]).distance(outline.corner(base[1]));
  }
}
