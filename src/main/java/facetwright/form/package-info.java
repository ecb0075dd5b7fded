/**
 * Polyhedral forms: made, changed, and unfolded to a flat net.
 *
 * <p>Words. A <em>form</em> is a skin of flat <em>facets</em> that share <em>corners</em> and
 * <em>edges</em>; it is closed when every edge belongs to two facets, open otherwise (a lampshade,
 * a box without a lid). Facets list their corners counter-clockwise seen from outside. The
 * <em>dihedral</em> of an edge is the angle between its two facets measured inside the form: under
 * 180° at a convex edge, over 180° at a hollow one. A <em>bevel</em> cuts an edge or a corner back.
 * The <em>dual</em> swaps corners and facets.
 *
 * <p>To <em>unfold</em> is to choose which edges stay as scores (they make a tree) and which are
 * cut. Each cut edge becomes a seam of the net, with a <em>tab</em> on one of its two sides where
 * one fits. A <em>strip</em> runs round the form's waist and carries the rest as caps;
 * <em>petals</em> spread from the base; <em>gores</em> are columns from bottom to top that hang
 * together at the waist.
 */
package facetwright.form;
