/**
 * Folding a net: where each panel goes, how far the joins miss, and what the finished form
 * measures.
 *
 * <p>The net lies outside up in the plane z = 0; folding moves each panel by a rigid motion. A
 * mountain score turns its panels away from the viewer, a valley score toward the viewer. The
 * <em>gap</em> of a join is how far its two places miss each other, in mm.
 */
package facetwright.fold;
