package facetwright.papers.chart;

import java.util.Locale;

/** An edge of the blank as it lies first. Its name stays with it when the blank is turned. */
public enum Side {
  LEFT,
  RIGHT,
  TOP,
  BOTTOM;

  /** Such as "top". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it runs down the blank, so that measures from it count across. */
  boolean isUpright() {
    return this == LEFT || this == RIGHT;
  }

  /** The coordinate at this distance from the edge, in a blank of this extent. */
  double coordinate(double distance, double extent) {
    return this == LEFT || this == BOTTOM ? distance : extent - distance;
  }
}
