package facetwright.net.wrap;

import facetwright.geom.Vec2;
import java.util.List;

/** Where a cell of a wrap lies. */
record CellFrame(Vec2 low, Vec2 highCorner) {
  double width() {
    return highCorner.x() - low.x();
  }

  Vec2 middle() {
    return low.toward(highCorner, 0.5);
  }

  double height() {
    return highCorner.y() - low.y();
  }

  Vec2 lowerRight() {
    return new Vec2(highCorner.x(), low.y());
  }

  Vec2 upperLeft() {
    return new Vec2(low.x(), highCorner.y());
  }

  /** Counter-clockwise from the lower left. */
  List<Vec2> corners() {
    return List.of(low, lowerRight(), highCorner, upperLeft());
  }
}
