package facetwright.form;

import facetwright.geom.Newell;
import facetwright.geom.Vec3;
import java.util.List;

/** Volume, centre, fold angles and convexity of a form. */
public final class FormMeasure {
  private FormMeasure() {}

  static double area(Form form) {
    double area = 0;
    for (int f = 0; f < form.facets().size(); f++) {
      area += Newell.normal(form.outline(f)).length() / 2;
    }
    return area;
  }

  /** Divergence theorem: a sixth of the sum of the triple products of the facets' triangles. */
  static double volume(Form form) {
    FormCheck.require(
        form.isClosed(), "an open form encloses no volume: close it, or ask its area instead");
    Vec3 o = Newell.middle(form.corners());
    double six = 0;
    for (int f = 0; f < form.facets().size(); f++) {
      List<Vec3> loop = form.outline(f);
      six += Newell.normal(loop).dot(loop.getFirst().minus(o));
    }
    return six / 6;
  }

  static Vec3 centre(Form form) {
    Vec3 o = Newell.middle(form.corners());
    if (!form.isClosed()) {
      return o;
    }
    double six = 0;
    Vec3 moment = Vec3.ZERO;
    for (int f = 0; f < form.facets().size(); f++) {
      List<Vec3> loop = form.outline(f);
      Vec3 a = loop.getFirst().minus(o);
      for (int i = 1; i + 1 < loop.size(); i++) {
        Vec3 b = loop.get(i).minus(o);
        Vec3 c = loop.get(i + 1).minus(o);
        double part = a.dot(b.cross(c));
        six += part;
        moment = moment.plus(a.plus(b).plus(c).times(part / 4));
      }
    }
    return o.plus(moment.times(1 / six));
  }

  /** How far the edge is folded, in radians: 0 flat, over 0 at a convex edge, under at a hollow. */
  public static double fold(Form form, FormEdge edge) {
    FormCheck.require(!edge.isRim(), "an edge at the rim has one facet only, so no dihedral");
    Vec3 left = Newell.normal(form.outline(edge.left())).unit();
    Vec3 right = Newell.normal(form.outline(edge.right())).unit();
    Vec3 along = form.corners().get(edge.to()).minus(form.corners().get(edge.from())).unit();
    return Math.atan2(left.cross(right).dot(along), left.dot(right));
  }

  static boolean isConvex(Form form) {
    if (!form.isClosed()) {
      return false;
    }
    for (int f = 0; f < form.facets().size(); f++) {
      List<Vec3> loop = form.outline(f);
      Vec3 normal = Newell.normal(loop).unit();
      Vec3 on = Newell.middle(loop);
      for (Vec3 corner : form.corners()) {
        if (corner.minus(on).dot(normal) > FormCheck.FLAT.mm()) {
          return false;
        }
      }
    }
    return true;
  }
}
