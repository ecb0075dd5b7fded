/**
 * Whether folded panels pass through each other.
 *
 * <p>Two panels <em>pass through each other</em> when, along a stretch of the line their planes
 * share, card of each lies on both sides of the other, deeper than a tolerance. Everything less is
 * <em>touching</em>: along a score, at a corner, edge on face, face on face. {@link
 * facetwright.fold.touch.Collisions} is the front door.
 */
package facetwright.fold.touch;
