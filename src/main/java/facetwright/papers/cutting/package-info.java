/**
 * Cutting rectangles out of sheets with a trimmer.
 *
 * <p>Words. A trimmer cuts a <em>part</em> edge to edge: first the whole sheet, then each of the
 * two parts the cut leaves, and so on. A <em>wanted</em> rectangle is one a maker needs, so many
 * times; a part that is one is a <em>piece</em>, a part that is left over is <em>waste</em>. The
 * blade may take away a strip as it cuts, the <em>kerf</em>; a trimmer's is 0. A <em>plan</em> says
 * how each sheet is cut, as a tree of cuts.
 *
 * <p>Inside, lengths are whole millionths of a millimetre, so that sums of 1/64 in are exact, and
 * every length is longer by the kerf: then parts side by side just add up.
 */
package facetwright.papers.cutting;
