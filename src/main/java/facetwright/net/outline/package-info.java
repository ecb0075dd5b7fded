/**
 * Outlines that a maker gives by name or by corners, changes and asks before anything is made of
 * them.
 *
 * <p>An <em>outline</em> has straight sides; a <em>corner</em> of it is sharp or <em>rounded</em>,
 * by an arc that meets both its sides. It is <em>set off</em> by a distance when each side moves so
 * far outward, below 0 inward, and corners stay as they are: sharp or round about one middle. Side
 * 1 runs from corner 1 to corner 2; corners run counter-clockwise.
 */
package facetwright.net.outline;
