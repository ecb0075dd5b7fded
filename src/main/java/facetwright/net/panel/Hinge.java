package facetwright.net.panel;

import facetwright.net.FoldAngle;
import facetwright.net.Sense;

/**
 * Where and how a panel hangs on an edge. Along an edge one measures from left to right, looking
 * from outside with the edge at the bottom of what is attached.
 *
 * @param width how much of the edge it takes, in mm; NaN for all of it
 * @param offset from the edge's left end, in mm; NaN to centre it
 * @param sense as seen on the outside of the form
 * @param angle how far the score is folded
 * @param perforated whether the score is perforated
 */
public record Hinge(double width, double offset, Sense sense, FoldAngle angle, boolean perforated) {

  /** Along the whole edge. */
  public static Hinge whole(Sense sense, FoldAngle angle) {
    return new Hinge(Double.NaN, Double.NaN, sense, angle, false);
  }

  /** Along part of the edge, in its middle. */
  public static Hinge centred(double width, Sense sense, FoldAngle angle) {
    return new Hinge(width, Double.NaN, sense, angle, false);
  }

  /** Along part of the edge. */
  public static Hinge at(double offset, double width, Sense sense, FoldAngle angle) {
    return new Hinge(width, offset, sense, angle, false);
  }

  /** The same, perforated. */
  public Hinge asPerforation() {
    return new Hinge(width, offset, sense, angle, true);
  }
}
