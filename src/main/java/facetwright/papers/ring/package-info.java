/**
 * Several copies of a piece seated in a circle.
 *
 * <p>Words. A <em>seat</em> is a flat side of the finished piece with all of the piece behind it;
 * one seat of a copy meets another seat of its neighbour. The <em>ring axis</em> runs through the
 * middle of the circle, square to it. A piece is <em>tipped</em> by the angle between the ring axis
 * and the upright of the piece as it stands alone. A ring is <em>flush</em> where seats meet
 * without a gap; otherwise a <em>spacer</em>, a thin wedge, goes between them.
 *
 * <p>In a ring of n each copy fills 360°/n. Two seats whose outward normals make the angle α take
 * 180° − α of that, so they seat flush where α = 180° − 360°/n.
 */
package facetwright.papers.ring;
