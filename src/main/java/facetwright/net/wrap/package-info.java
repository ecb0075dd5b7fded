/**
 * The way in by columns and rows: a band of panels that is wrapped round, pinched where rows are
 * told to meet.
 */
package facetwright.net.wrap;
