package facetwright.form;

import facetwright.geom.Vec3;
import java.io.Serializable;
import java.util.List;

/** The upright box around a form, in mm. */
public record Bounds(Vec3 low, Vec3 high) implements Serializable {

  static Bounds around(List<Vec3> points) {
    Vec3 low = points.getFirst();
    Vec3 high = low;
    for (Vec3 p : points) {
      low = new Vec3(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()), Math.min(low.z(), p.z()));
      high =
          new Vec3(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()), Math.max(high.z(), p.z()));
    }
    return new Bounds(low, high);
  }

  /** Width, depth and height. */
  public Vec3 size() {
    return high.minus(low);
  }
}
