/**
 * Least squares over points in space, for the closing solver.
 *
 * <p>An <em>equation</em> ties a few points together: a distance, a linear combination, a crease
 * angle, a place in a plane. Its <em>misses</em> are in mm. A <em>pull</em> is an equation that
 * only shows the way: its weight fades while the points go home, and is gone at the end. {@link
 * facetwright.fold.solve.LevenbergMarquardt} is the front door.
 */
package facetwright.fold.solve;
