/**
 * Folding a net: where each panel goes, how far the joins miss, and what the finished form
 * measures.
 *
 * <p>The net lies outside up in the plane z = 0; folding moves each panel by a rigid motion. A
 * mountain score turns its panels away from the viewer, a valley score toward the viewer. The
 * <em>gap</em> of a join is how far its two places miss each other, in mm; the <em>tear</em> of a
 * score is how far its panels miss where scores close a loop. {@link facetwright.fold.Folding} is
 * the front door; {@link facetwright.fold.pose.ScoreAngles} is how angles found elsewhere are
 * handed in.
 */
package facetwright.fold;
