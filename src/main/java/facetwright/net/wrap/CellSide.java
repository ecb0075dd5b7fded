package facetwright.net.wrap;

/** The sides of a wrap's cell, seen on the outside. */
public enum CellSide {
  BOTTOM,
  RIGHT,
  TOP,
  LEFT
}
