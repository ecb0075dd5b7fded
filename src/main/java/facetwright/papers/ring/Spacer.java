package facetwright.papers.ring;

/**
 * The wedge that goes between two neighbours.
 *
 * @param degrees its angle
 * @param inner how thick it is at the end nearer to the middle of the ring, in mm; 0 for an edge
 * @param outer how thick it is at the other end, in mm
 * @param length from the one end to the other, along the seat, in mm
 * @param height along the ring axis, in mm
 */
public record Spacer(double degrees, double inner, double outer, double length, double height) {}
