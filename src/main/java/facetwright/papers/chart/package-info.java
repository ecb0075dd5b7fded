/**
 * The score chart: how a maker gets from a sheet to a net with a scoring board, a knife and a
 * punch.
 *
 * <p>The <em>blank</em> is the sheet trimmed to the box around one piece. The board has two stops,
 * at the top and at the left; a <em>measure</em> counts from the left stop. How the blank lies
 * against the stops is its <em>placing</em>. A scored line has a label, letters for those that run
 * down the blank as it lies first, numbers for those that run across it; a <em>guide</em> tells one
 * coordinate by a line, an edge, the middle between two or a measure; a <em>spot</em> is a point
 * told by two guides or by its number. Coordinates of the blank are in mm from its lower left
 * corner as it lies first, y up; the outside of the form faces up all the way.
 */
package facetwright.papers.chart;
