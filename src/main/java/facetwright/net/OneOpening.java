package facetwright.net;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;

/**
 * One of the openings that a call makes.
 *
 * @param field the panel it lies in, with what has to stay clear
 * @param index of the opening there
 */
record OneOpening(Clearance field, int index) {
  Opening opening() {
    return field.openings().get(index);
  }

  /** Whether panel and openings are the same as this opening and that were measured. */
  boolean isLike(OneOpening other) {
    boolean like =
        index == other.index
            && opening().datum().scale() == other.opening().datum().scale()
            && field.keep().equals(other.field.keep())
            && field.openings().size() == other.field.openings().size()
            && isLike(field.outline(), other, other.field.outline());
    for (int i = 0; like && i < field.openings().size(); i++) {
      Opening mine = field.openings().get(i);
      Opening its = other.field.openings().get(i);
      like =
          (mine instanceof Opening.Hole a && its instanceof Opening.Hole b)
              ? isLike(a.centre(), other, b.centre())
                  && LengthTolerance.FINE.same(a.diameter(), b.diameter())
              : mine.getClass() == its.getClass() && isLike(mine.outline(), other, its.outline());
    }
    return like;
  }

  private boolean isLike(Polygon2 mine, OneOpening other, Polygon2 its) {
    boolean like = mine.size() == its.size();
    for (int c = 0; like && c < mine.size(); c++) {
      like = isLike(mine.corner(c), other, its.corner(c));
    }
    return like;
  }

  private boolean isLike(Vec2 mine, OneOpening other, Vec2 its) {
    return LengthTolerance.FINE.same(
        opening().datum().measured(mine), other.opening().datum().measured(its));
  }
}
