package facetwright.fold.place;

import facetwright.fold.pose.Together;
import facetwright.geom.Motion3;
import java.util.List;

/** The inner part in the outer one, as the outer stands by itself. */
record Nested(
    Nesting how,
    Motion3 motion,
    double depth,
    double away,
    List<Integer> with,
    Together.Between between,
    double shared,
    Shoulder shoulder) {
  Together.Nest nest(int index, int outer, int inner) {
    return new Together.Nest(
        index,
        outer,
        inner,
        depth,
        how.room().mm(),
        how.isTube(),
        with,
        between,
        shared,
        shoulder.off(depth),
        shoulder.slack(depth));
  }
}
