package facetwright.net.wrap;

import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import java.util.List;

/**
 * Where a cell of a wrap lies: a rectangle, or a trapezoid alike on both sides where its column
 * tapers.
 */
record CellFrame(Vec2 lowerLeft, Vec2 lowerRight, Vec2 upperRight, Vec2 upperLeft) {

  static CellFrame rectangle(Vec2 low, Vec2 high) {
    return new CellFrame(low, new Vec2(high.x(), low.y()), high, new Vec2(low.x(), high.y()));
  }

  /** A rectangle on its upper edge, or one that hangs from its lower edge. */
  CellFrame beside(boolean below, double high) {
    Vec2 up = up().times(high);
    return below
        ? new CellFrame(lowerLeft.minus(up), lowerRight.minus(up), lowerRight, lowerLeft)
        : new CellFrame(upperLeft, upperRight, upperRight.plus(up), upperLeft.plus(up));
  }

  CellFrame moved(Motion2 motion) {
    return new CellFrame(
        motion.apply(lowerLeft),
        motion.apply(lowerRight),
        motion.apply(upperRight),
        motion.apply(upperLeft));
  }

  double lowerWidth() {
    return lowerLeft.distance(lowerRight);
  }

  /** From edge to edge, up its middle. */
  double height() {
    return upperMiddle().distance(lowerMiddle());
  }

  Vec2 lowerMiddle() {
    return lowerLeft.toward(lowerRight, 0.5);
  }

  Vec2 upperMiddle() {
    return upperLeft.toward(upperRight, 0.5);
  }

  Vec2 middle() {
    return lowerMiddle().toward(upperMiddle(), 0.5);
  }

  /** Along its lower edge, of length 1. */
  Vec2 along() {
    return lowerRight.minus(lowerLeft).unit();
  }

  Vec2 up() {
    return along().left();
  }

  /** From where places are measured that count from its middle, x along its lower edge. */
  Motion2 about() {
    return about(middle());
  }

  /** The same from another place. */
  Motion2 about(Vec2 place) {
    Vec2 along = along();
    return new Motion2(along.x(), along.y(), place);
  }

  /** Counter-clockwise from the lower left. */
  List<Vec2> corners() {
    return List.of(lowerLeft, lowerRight, upperRight, upperLeft);
  }
}
