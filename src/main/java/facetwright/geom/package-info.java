/**
 * Points, rigid motions, polygons, lengths and tolerances.
 *
 * <p>Coordinates are doubles in millimetres. In the plane, x runs to the right and y runs up; a
 * polygon's corners run counter-clockwise. In space the axes are right-handed. Two tolerances exist
 * and are different types: {@link facetwright.geom.LengthTolerance} in millimetres and {@link
 * facetwright.geom.AngleTolerance} in radians, so that one can't be handed in for the other.
 *
 * <p>Exact {@code equals} of these records compares doubles; nearness is asked of a tolerance.
 */
package facetwright.geom;
