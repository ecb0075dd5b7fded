/**
 * As many copies of a net as one sheet gives.
 *
 * <p>A <em>blank</em> here is the net as it lies, turned and set to the corner: its outline, and
 * its <em>reach</em>, the outline grown by the gap. A <em>row</em> repeats a blank, or a blank and
 * the same turned end for end, at an even distance; a <em>pattern</em> stacks rows, each shifted
 * against the one below. How near two outlines may come is read off their <em>profiles</em>: how
 * far each goes to either side at every height. Coordinates are in mm from the sheet's lower left
 * corner.
 */
package facetwright.papers.copies;
