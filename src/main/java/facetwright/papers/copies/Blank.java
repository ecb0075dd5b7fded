package facetwright.papers.copies;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.Panel;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * A net turned, its lower left corner at the origin.
 *
 * @param motion from where the net lies to here
 * @param outline all its panels as one
 * @param reach the outline grown by the gap: nothing else may lie there
 */
record Blank(
    Motion2 motion,
    Geometry outline,
    Geometry reach,
    double width,
    double height,
    Profile across,
    Profile up,
    Profile reachAcross,
    Profile reachUp) {
  /** Blanks without a gap may share a line; rounding is no overlap. */
  private static final LengthTolerance TOUCH = LengthTolerance.FINE;

  private static final double MITRE_LIMIT = 2;

  /** A ten-thousandth of a millimetre. */
  private static final PrecisionModel GRID = new PrecisionModel(1e4);

  /**
   * All panels of a net as one shape. Its corners are brought onto a grid far finer than card is
   * cut, so that rounding has no say in how many copies are found.
   */
  static Geometry shape(Net net) {
    return UnaryUnionNG.union(
        Planar.factory()
            .buildGeometry(net.panels().stream().map(Panel::outline).map(Planar::polygon).toList()),
        GRID);
  }

  static Blank of(Geometry shape, double radians, double gap) {
    Motion2 turn = Motion2.turn(radians);
    Envelope box = Planar.moved(shape, turn).getEnvelopeInternal();
    Motion2 motion = turn.then(Motion2.shift(new Vec2(-box.getMinX(), -box.getMinY())));
    Geometry outline = Planar.moved(shape, motion);
    Geometry reach = gap > TOUCH.mm() ? BufferOp.bufferOp(outline, gap, corners()) : outline;
    return new Blank(
        motion,
        outline,
        reach,
        box.getWidth(),
        box.getHeight(),
        Profile.across(outline),
        Profile.up(outline),
        Profile.across(reach),
        Profile.up(reach));
  }

  private static BufferParameters corners() {
    return new BufferParameters(
        BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
        BufferParameters.CAP_FLAT,
        BufferParameters.JOIN_MITRE,
        MITRE_LIMIT);
  }

  /** How far to the right another has to be, {@code by} higher, to be clear of this one. */
  double right(Blank other, double by) {
    return reachAcross.clear(other.across, by);
  }

  /** How far up another has to be, {@code by} farther right, to be clear of this one. */
  double above(Blank other, double by) {
    return reachUp.clear(other.up, by);
  }
}
