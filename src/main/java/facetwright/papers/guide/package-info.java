/**
 * Small guides that save measuring the same thing again and again.
 *
 * <p>Words. A <em>tick strip</em> is a strip of card with ticks along an edge, laid on paper to
 * mark it. A <em>score strip</em> is the same for the scores of a blank. A <em>punch guide</em> is
 * a small rectangle of card whose corner and edges are laid flush with those of a panel; where its
 * <em>centre lines</em> cross, the hole goes.
 */
package facetwright.papers.guide;
